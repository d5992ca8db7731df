#include "power/detail/efficiency_points.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <map>

namespace lumwright::power {
namespace {
using Line = std::map<double, double>;  // share against output power
using Grid = std::map<double, Line>;    // by input voltage

Grid grid_of(const std::vector<EfficiencyPoint>& points) {
  if (points.empty()) throw ModelError("a table of efficiencies needs one point or more");
  Grid grid;
  for (const EfficiencyPoint& p : points) {
    require_above_zero("input of an efficiency point", p.input, "V");
    require_above_zero("output of an efficiency point", p.output, "W");
    require_share("step-up efficiency", p.share);
    if (!grid[in(p.input, V)].emplace(in(p.output, W), p.share).second)
      throw ModelError("efficiency at " + format(p.input, "V") + ", " + format(p.output, "W") + " is given twice");
  }
  return grid;
}

double level_beyond(const numeric::LinearCurve& curve, double x) {
  return curve(std::clamp(x, curve.x().front(), curve.x().back()));
}
}  // namespace

EfficiencyAtInput::EfficiencyAtInput(const std::vector<EfficiencyPoint>& points, Power output) : share_({0.0}, {0.0}) {
  const double w = in(output, W);
  std::vector<double> shares;
  bool inside_one = false;
  for (const auto& [volts, line] : grid_of(points)) {
    std::vector<double> x, y;
    for (const auto& [power, share] : line) {
      x.push_back(power);
      y.push_back(share);
    }
    constexpr double slack = 1e-9;  // 1.8 W written and 12 V times 0.15 A are one power
    inside_one |= w >= x.front() * (1 - slack) && w <= x.back() * (1 + slack);
    volts_.push_back(volts);
    shares.push_back(level_beyond(numeric::LinearCurve(x, y), w));
  }
  beyond_power_ = !inside_one;
  share_ = numeric::LinearCurve(volts_, shares);
}
double EfficiencyAtInput::operator()(Voltage input) const { return level_beyond(share_, in(input, V)); }
bool EfficiencyAtInput::beyond(Voltage input) const {
  return beyond_power_ || in(input, V) < volts_.front() || in(input, V) > volts_.back();
}
std::vector<Voltage> EfficiencyAtInput::inputs() const {
  std::vector<Voltage> out;
  for (const double volts : volts_) out.push_back(volts * V);
  return out;
}
}  // namespace lumwright::power
