// Where a number or a rule comes from, and how sure that is.
#pragma once
#include <string>
#include <string_view>

namespace lumwright::data {
/// `unsaid` where a finding rests on no rule. What each means: report/detail/standing.hpp.
enum class Standing { unsaid, standard, secondary, derived, measured, memory, practice, estimate };
struct Basis {
  Standing standing = Standing::unsaid;
  std::string source{};
};
/// "derived"; nothing for `unsaid`.
std::string_view word_of(Standing standing);
/// Throws std::logic_error for a word that is no standing.
Standing standing_of(std::string_view word);
}  // namespace lumwright::data
