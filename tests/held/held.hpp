// What lumwright reckons for each datum of lib/data/held.yaml, by calling the model that the datum judges.
#pragma once
#include "quantity/band.hpp"
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lumwright::held {
/// In the unit of the row. `measured` where the row's is made of a table in tests/published/: the lowest and the
/// highest.
struct Reckoned {
  Band<double> ours;
  std::optional<std::pair<double, double>> measured{};
};
using Cases = std::map<std::string, Reckoned (*)()>;

/// By the id of the row; a file each.
const Cases& bed_cases();
const Cases& draught_cases();
const Cases& fire_cases();
const Cases& boiler_cases();
const Cases& power_cases();
const Cases& whole_cases();

/// The band of a usual value (lib/data/typical.yaml), a pure number.
Band<double> usual(std::string_view key);
/// Slope of log y against log x through all points.
double power_through(const std::vector<double>& x, const std::vector<double>& y);
inline std::pair<double, double> span(const std::vector<double>& values) {
  double low = values.front(), high = values.front();
  for (const double v : values) low = v < low ? v : low, high = v > high ? v : high;
  return {low, high};
}
}  // namespace lumwright::held
