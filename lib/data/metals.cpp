#include "data/metals.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<MetalRow>& metals() {
  static const std::vector<MetalRow> all = [] {
    std::vector<MetalRow> found;
    for (const Row& row : rows("metals", "metals"))
      found.push_back({row.text("name"), row.texts("also"), row.optional<Expansion>("expansion"),
                       row.optional<SpecificHeat>("specific_heat"), row.optional<Temperature>("solidus"),
                       row.optional<Density>("density"), row.optional<Conductivity>("conductivity"),
                       row.has("elongation_form") ? std::optional(row.text("elongation_form")) : std::nullopt,
                       row.basis()});
    return found;
  }();
  return all;
}

const std::vector<ElongationForm>& elongation_forms() {
  static const std::vector<ElongationForm> all = [] {
    std::vector<ElongationForm> found;
    for (const Row& row : rows("metals", "elongation_forms"))
      found.push_back({row.text("id"), row.numbers("celsius_coefficients"), row.quantity<Temperature>("from"),
                       row.quantity<Temperature>("to"), row.basis()});
    return found;
  }();
  return all;
}
}  // namespace lumwright::data
