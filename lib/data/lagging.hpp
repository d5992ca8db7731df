// Heat lost through the outside of a boiler, bare and under felt.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
struct BareLoss {
  HeatTransfer coefficient;
  TemperatureRise at;  // of the plates over the air
  double power;        // the coefficient goes with the rise to this
  Basis basis{};
};
const BareLoss& bare_loss();

struct LaggingRow {
  Length thickness;
  HeatTransfer coefficient;  // of plate and felt together
  Basis basis{};
};
/// By rising thickness.
const std::vector<LaggingRow>& laggings();
}  // namespace lumwright::data
