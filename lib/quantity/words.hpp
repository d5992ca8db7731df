// Small work on words: counting characters, splitting at blanks, and the nearest of the known words for "did you mean".
#pragma once
#include <cstddef>
#include <span>
#include <string_view>
#include <vector>

namespace lumwright {
inline bool is_digit(char c) { return c >= '0' && c <= '9'; }
/// Characters of UTF-8 text: every byte but those that continue one.
std::size_t characters(std::string_view text);
std::vector<std::string_view> words(std::string_view text, char between = ' ');
/// The candidate that `word` most likely misspells, or empty. Letters wrong, missing, added or two swapped count one
/// each (optimal string alignment distance), letter case counts nothing; at most a third of the letters, one in a short
/// word.
std::string_view nearest(std::string_view word, std::span<const std::string_view> candidates);
}  // namespace lumwright
