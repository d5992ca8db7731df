// Small work on words: splitting at blanks, and the nearest of the known words for "did you mean".
#pragma once
#include <span>
#include <string_view>
#include <vector>

namespace lumwright {
std::vector<std::string_view> words(std::string_view text);
/// The candidate that `word` most likely misspells (Levenshtein, at most a third of its letters wrong), or empty.
std::string_view nearest(std::string_view word, std::span<const std::string_view> candidates);
}  // namespace lumwright
