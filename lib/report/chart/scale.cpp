#include "report/chart/scale.hpp"
#include <cmath>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright::report::chart {
namespace {
void check(Range range, int about) {
  if (!std::isfinite(range.low) || !std::isfinite(range.high) || !(range.low < range.high))
    throw std::logic_error(fmt::format("no axis from {} to {}", range.low, range.high));
  if (about < 2) throw std::logic_error("an axis with fewer than two ticks");
}
struct Step {
  double size;
  int decimals;
};
// 1, 2 or 5 times a power of ten, whichever comes nearest to what is wanted on the scale of ratios.
Step nice_step(double wanted) {
  const double power = std::floor(std::log10(wanted));
  const double lead = wanted / std::pow(10.0, power);
  const double nice = lead < std::sqrt(2.0) ? 1.0 : lead < std::sqrt(10.0) ? 2.0 : lead < std::sqrt(50.0) ? 5.0 : 10.0;
  const int exponent = static_cast<int>(power) + (nice == 10.0 ? 1 : 0);
  return {nice * std::pow(10.0, power), exponent < 0 ? -exponent : 0};
}
}  // namespace

Ticks nice_ticks(Range range, int about) {
  check(range, about);
  const Step step = nice_step((range.high - range.low) / about);
  const double slack = 1e-9 * (range.high - range.low) / step.size;
  Ticks ticks{.at = {}, .decimals = step.decimals};
  const double first = std::ceil(range.low / step.size - slack), last = std::floor(range.high / step.size + slack);
  for (double k = first; k <= last; k += 1.0) ticks.at.push_back(k * step.size);
  return ticks;
}
Range rounded_out(Range range, int about) {
  if (range.low == range.high) {
    const double half = range.low == 0.0 ? 1.0 : 0.1 * std::abs(range.low);
    range = {range.low - half, range.high + half};
  }
  check(range, about);
  const double step = nice_step((range.high - range.low) / about).size;
  return {std::floor(range.low / step + 1e-9) * step, std::ceil(range.high / step - 1e-9) * step};
}
std::string tick_text(double x, int decimals) {
  const std::string text = fmt::format("{:.{}f}", x, decimals);
  return text.find_first_not_of("-0.") == std::string::npos ? text.substr(text[0] == '-' ? 1 : 0) : text;
}
}  // namespace lumwright::report::chart
