// What readings of a lighting-up are worth, which factors of the model they may move, and how a season is fitted.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <string_view>
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
  std::optional<double> day_to_day, drift;  // single standard deviations over the value
  std::string anew;                         // the key of `done` that begins its drift again
  Basis basis{};
};
const std::vector<TuneFactor>& tune_factors();
/// A constant of the fit of a season, by the id of its row.
double season_constant(std::string_view id);
}  // namespace lumwright::data
