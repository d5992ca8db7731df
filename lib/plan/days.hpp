// A long time in words: days as far as somebody counts them.
#pragma once
#include "quantity/quantity.hpp"
#include <fmt/format.h>
#include <string>

namespace lumwright::plan {
/// "in 24 days", "after years".
inline std::string after_days(Duration time) {
  constexpr double counted = 730.0;
  const double days = in(time, 24.0 * hour);
  return days > counted ? "after years" : fmt::format("in {:.0f} days", days);
}
}  // namespace lumwright::plan
