#include "data/basis.hpp"
#include <algorithm>
#include <array>
#include <stdexcept>

namespace lumwright::data {
namespace {
constexpr std::array<std::string_view, 8> standing_words = {"",         "standard", "secondary", "derived",
                                                            "measured", "memory",   "practice",  "estimate"};
}  // namespace

std::string_view word_of(Standing standing) { return standing_words.at(static_cast<std::size_t>(standing)); }
Standing standing_of(std::string_view word) {
  const auto found = std::find(standing_words.begin() + 1, standing_words.end(), word);
  if (found == standing_words.end()) throw std::logic_error("no standing is called `" + std::string(word) + "`");
  return static_cast<Standing>(found - standing_words.begin());
}
}  // namespace lumwright::data
