// A suction as its owner reads it, in a height of water, and behind it what that is in pascal.
#pragma once
#include "model/solved.hpp"
#include "plan/assessment.hpp"
#include "quantity/format.hpp"
#include <string>

namespace lumwright::plan {
/// As a U-tube on the smokebox shows it: in millimetres of water, or in the height of water that the page has already.
inline model::Measure on_u_tube(Pressure suction, const description::PageUnits& page) {
  const std::string of = page.of(suction);
  return {AnyQuantity(suction), of.ends_with("H2O") ? of : "mmH2O"};
}
/// "3.2 mmH2O (31.4 Pa)"; inches of water where all units are imperial. A millimetre of water is 9.80665 Pa.
inline std::string u_tube_reading(const model::Measure& reading, UnitSystem system, int digits) {
  const std::string height = system == UnitSystem::imperial ? "inH2O" : reading.unit;
  return format(reading.quantity, height, digits) + " (" + format(reading.quantity, "Pa", digits) + ")";
}
}  // namespace lumwright::plan
