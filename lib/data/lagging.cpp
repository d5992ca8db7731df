#include "data/lagging.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const BareLoss& bare_loss() {
  static const BareLoss row = [] {
    const Row bare = section("lagging", "bare");
    return BareLoss{.coefficient = bare.quantity<HeatTransfer>("coefficient"),
                    .at = bare.quantity<TemperatureRise>("at"),
                    .power = bare.number("power"),
                    .basis = bare.basis()};
  }();
  return row;
}

const std::vector<LaggingRow>& laggings() {
  static const std::vector<LaggingRow> table = [] {
    std::vector<LaggingRow> out;
    for (const Row& row : rows("lagging", "lagged"))
      out.push_back({.thickness = row.quantity<Length>("thickness"),
                     .coefficient = row.quantity<HeatTransfer>("coefficient"),
                     .basis = row.basis()});
    return out;
  }();
  return table;
}
}  // namespace lumwright::data
