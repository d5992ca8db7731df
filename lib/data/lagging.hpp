// Heat lost through the outside of a boiler, bare and under felt.
#pragma once
#include "quantity/quantity.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
struct BareLoss {
  HeatTransfer coefficient;
  TemperatureRise at;  // of the plates over the air
  double power;        // the coefficient goes with the rise to this
  std::string source;
  std::string standing;
};
const BareLoss& bare_loss();

struct LaggingRow {
  Length thickness;
  HeatTransfer coefficient;  // of plate and felt together
  std::string source;
  std::string standing;
};
/// By rising thickness.
const std::vector<LaggingRow>& laggings();
}  // namespace lumwright::data
