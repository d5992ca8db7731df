// Gross heating values by other formulas than the program's.
#pragma once
#include "data/fuels.hpp"
#include "quantity/quantity.hpp"

namespace lumwright {
/// Dulong; for fuels with up to 10 % of oxygen.
inline SpecificEnergy gross_heat_dulong(const data::FuelAnalysis& f) {
  return (33.8 * f.carbon + 142.8 * (f.hydrogen - f.oxygen / 8.0) + 9.5 * f.sulphur) * MJ_per_kg;
}
/// Boie.
inline SpecificEnergy gross_heat_boie(const data::FuelAnalysis& f) {
  return (34.73 * f.carbon + 115.1 * f.hydrogen + 2.9 * f.nitrogen + 4.2 * f.sulphur - 10.8 * f.oxygen) * MJ_per_kg;
}
}  // namespace lumwright
