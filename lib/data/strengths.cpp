#include "data/strengths.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"

namespace lumwright::data {
const std::vector<StrengthRow>& strengths() {
  static const std::vector<StrengthRow> all = [] {
    std::vector<StrengthRow> found;
    for (const Row& row : rows("strengths", "strengths"))
      found.push_back({row.text("metal"), row.quantity<Density>("density"), row.quantity<Pressure>("modulus"),
                       row.quantity<Pressure>("proof"), row.number("hot_share"), row.basis()});
    return found;
  }();
  return all;
}

const StrengthRow& strength(std::string_view metal) {
  for (const StrengthRow& row : strengths())
    if (row.metal == metal) return row;
  throw ModelError("the density and strength of `" + std::string(metal) + "` are not known");
}
}  // namespace lumwright::data
