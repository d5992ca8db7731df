// A suction as its owner reads it, in a height of water, and behind it what that is in pascal.
#pragma once
#include "quantity/format.hpp"
#include "quantity/quantity.hpp"
#include <string>

namespace lumwright {
/// "3.2 mmH2O (31.4 Pa)"; inches of water where all units are imperial. A millimetre of water is 9.80665 Pa.
inline std::string u_tube_reading(Pressure suction, UnitSystem system) {
  const char* height = system == UnitSystem::imperial ? "inH2O" : "mmH2O";
  return format(suction, height, 2) + " (" + format(suction, "Pa") + ")";
}
}  // namespace lumwright
