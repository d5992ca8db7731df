#include "data/fire.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const GlowingBed& glowing_bed() {
  static const GlowingBed bed = [] {
    const Row row = section("fire", "glowing_bed");
    return GlowingBed{row.band<SpecificHeat>("specific_heat"), row.band<Temperature>("temperature"), row.basis()};
  }();
  return bed;
}
}  // namespace lumwright::data
