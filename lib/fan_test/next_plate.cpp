#include "data/limits.hpp"
#include "fan_test/fan_test.hpp"
#include "numeric/root.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::fan_test {
namespace {
using draught::CurveBandPoint;
/// Where the curve meets a plate that passes `flow` at `depression`: p = k q^2 against straight pieces of the curve.
/// Nothing where they do not meet.
std::optional<CurveBandPoint> met(const std::vector<CurveBandPoint>& curve, const draught::PlannedPlate& plate) {
  const auto over = [&](const CurveBandPoint& at) -> Pressure {
    const double share = at.flow / plate.flow;
    return plate.depression * (share * share) - at.pressure;
  };
  for (std::size_t i = 0; i + 1 < curve.size(); ++i) {
    const CurveBandPoint &one = curve[i], &other = curve[i + 1];
    if (over(one) > 0.0 * Pa || over(other) < 0.0 * Pa) continue;
    const auto at = [&](double t) {
      const auto between = [t](auto a, auto b) { return a + t * (b - a); };
      return CurveBandPoint{between(one.flow, other.flow), between(one.pressure, other.pressure),
                            between(one.low, other.low), between(one.high, other.high), one.beyond || other.beyond};
    };
    return at(numeric::bracketed_root([&](double t) { return in(over(at(t)), Pa); }, 0.0, 1.0, "plate on the curve"));
  }
  return std::nullopt;
}
bool read_near(const FanTest& test, VolumeFlow flow) {
  static const double near = data::limit<double>("fan_test.next_plate near");
  return std::any_of(test.points.begin(), test.points.end(), [&](const TestedPoint& p) {
    return p.left_out.empty() && std::abs(p.point.flow / flow - 1.0) < near;
  });
}
}  // namespace

std::optional<NextPlate> next_plate(const FanTest& test, const draught::TestBox& box) {
  std::optional<NextPlate> widest;
  for (const draught::PlannedPlate& plate : box.plates) {
    const auto at = met(test.curve, plate);
    if (!at || !(at->pressure > 0.0 * Pa) || read_near(test, at->flow)) continue;
    const double width = (at->high - at->low) / at->pressure;
    if (!widest || width > widest->width) widest = NextPlate{plate, *at, width};
  }
  return widest;
}
}  // namespace lumwright::fan_test
