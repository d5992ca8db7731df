// Tabled heat capacity of air.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
struct AirHeatCapacity {
  Temperature temperature;
  SpecificHeat value;
  Basis basis{};
};
/// In rising order of temperature.
const std::vector<AirHeatCapacity>& air_heat_capacities();
}  // namespace lumwright::data
