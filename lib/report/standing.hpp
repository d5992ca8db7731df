// How much a source weighs, in words.
#pragma once
#include <string>
#include <string_view>

namespace lumwright {
/// "memory" -> "from memory of the handbook, not re-read". Throws std::logic_error for a word that is no standing.
std::string_view standing_in_words(std::string_view standing);
/// "EN 10202, clause 4 (from memory of the handbook, not re-read)"; the source alone where it says so itself, or where
/// no standing is stated.
std::string source_in_words(std::string_view source, std::string_view standing);
}  // namespace lumwright
