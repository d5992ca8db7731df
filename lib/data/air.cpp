#include "data/air.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<AirHeatCapacity>& air_heat_capacities() {
  static const std::vector<AirHeatCapacity> all = [] {
    std::vector<AirHeatCapacity> read;
    for (const Row& row : rows("air", "heat_capacity"))
      read.push_back({row.quantity<Temperature>("temperature"), row.quantity<SpecificHeat>("value"), row.basis()});
    return read;
  }();
  return all;
}
}  // namespace lumwright::data
