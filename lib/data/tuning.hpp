// What readings of a lighting-up are worth, and which factors of the model they may move.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::data {
/// Expanded uncertainties (k = 2) of readings that come without their own.
struct Instruments {
  TemperatureRise thermometer;
  Pressure gauge, u_tube;
  double multimeter;  // over the reading
  Mass scale;
};
const Instruments& instruments();

struct TuneFactor {
  std::string key;
  std::string name;
  std::string unit;  // in which it is told
  std::string least, most;       // as written: their kind is the key's
  std::optional<double> spread;  // two standard deviations over the value, where no usual band serves
  Basis basis{};
};
const std::vector<TuneFactor>& tune_factors();
}  // namespace lumwright::data
