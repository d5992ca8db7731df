// How much a source weighs, in words.
#pragma once
#include "data/basis.hpp"
#include <string>
#include <string_view>

namespace lumwright::report {
/// "from memory of the handbook, not re-read". Throws std::logic_error for what is unsaid.
std::string_view standing_in_words(data::Standing standing);
/// "EN 10202, clause 4 (from memory of the handbook, not re-read)"; the source alone where it says so itself, or where
/// no standing is stated.
std::string source_in_words(const data::Basis& basis);
}  // namespace lumwright::report
