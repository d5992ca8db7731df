#include "draught/fan.hpp"
#include "matter/air.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>

namespace lumwright::draught {
namespace {
void check_ratios(const FanSimilarity& r) {
  for (const double ratio : {r.speed, r.size, r.density}) require_above_zero("similarity ratio", ratio);
}

void check_points(const std::vector<FanPoint>& points) {
  if (points.size() < 2) throw ModelError("a fan curve needs two points or more");
  for (std::size_t i = 0; i < points.size(); ++i) {
    const auto& [flow, pressure] = points[i];
    require_finite("flow of a fan curve point", flow);
    require_finite("pressure of a fan curve point", pressure);
    const std::string here = "fan curve point at " + format(flow, "l/min") + ", " + format(pressure, "Pa");
    if (i > 0 && !(flow > points[i - 1].flow)) throw ModelError(here + " does not lie beyond the one before it");
    const bool last = i + 1 == points.size();
    if (pressure < 0.0 * Pa || (!last && !(pressure > 0.0 * Pa)))
      throw ModelError(here + " has no pressure, which only the last point may lack");
  }
  if (points.front().flow != 0.0 * m3_per_s)
    throw ModelError("fan curve starts at " + format(points.front().flow, "l/min") +
                     ", where it needs the pressure at zero flow");
}

// A sheet often stops short of free air. The last two points point at it.
std::vector<FanPoint> with_free_air(std::vector<FanPoint> points) {
  const FanPoint last = points.back(), before = points[points.size() - 2];
  if (last.pressure == 0.0 * Pa) return points;
  if (!(last.pressure < before.pressure))
    throw ModelError("fan curve ends at " + format(last.pressure, "Pa") + " without falling towards free air");
  points.push_back({.flow = last.flow + (last.flow - before.flow) * (last.pressure / (before.pressure - last.pressure)),
                    .pressure = 0.0 * Pa});
  return points;
}

numeric::MonotoneCurve through_points(const std::vector<FanPoint>& points) {
  std::vector<double> flows, pressures;
  for (const auto& [flow, pressure] : points) {
    flows.push_back(in(flow, m3_per_s));
    pressures.push_back(in(pressure, Pa));
  }
  return {std::move(flows), std::move(pressures)};
}

std::vector<FanPoint> checked(const std::vector<FanPoint>& points) {
  check_points(points);
  return with_free_air(points);
}

Rotation above_zero(Rotation speed) {
  require_above_zero("fan speed", speed);
  return speed;
}
}  // namespace

FanPoint similar(FanPoint point, FanSimilarity r) {
  check_ratios(r);
  return {.flow = point.flow * (r.speed * r.size * r.size * r.size),
          .pressure = point.pressure * (r.density * r.speed * r.speed * r.size * r.size)};
}

FanCurve::FanCurve(data::FanKind kind, Rotation speed, const std::vector<FanPoint>& points, CurveBasis basis)
    : kind_(kind),
      speed_(above_zero(speed)),
      points_(checked(points)),
      basis_(std::move(basis)),
      curve_(through_points(points_)),
      free_air_(points_.back().flow),
      shut_off_(points_.front().pressure),
      highest_(shut_off_),
      rises_(false) {
  for (std::size_t i = 1; i < points_.size(); ++i) {
    highest_ = std::max(highest_, points_[i].pressure);
    rises_ = rises_ || points_[i].pressure > points_[i - 1].pressure;
  }
  // Same slope on both sides of free air: the monotone curve ends with that of its last piece.
  const FanPoint before = points_[points_.size() - 2];
  const double last_flow = in(free_air_, m3_per_s);
  fall_ = in(before.pressure, Pa) / (last_flow - in(before.flow, m3_per_s)) / (2.0 * last_flow);
}

Pressure FanCurve::static_pressure(VolumeFlow flow) const {
  if (!(flow > 0.0 * m3_per_s)) return shut_off_;
  const double q = in(flow, m3_per_s);
  if (flow < free_air_) return curve_(q) * Pa;
  const double free_air = in(free_air_, m3_per_s);
  return -fall_ * (q - free_air) * (q + free_air) * Pa;
}

FanCurve stretched(const FanCurve& curve, CurveFactors factors) {
  for (const double factor : {factors.pressure, factors.flow}) require_above_zero("fan curve factor", factor);
  std::vector<FanPoint> points = curve.points();
  for (auto& [flow, pressure] : points) {
    flow *= factors.flow;
    pressure *= factors.pressure;
  }
  return {curve.kind(), curve.speed(), points, curve.basis()};
}

RunningFan running(const FanCurve& curve, Rotation speed) {
  const double n = above_zero(speed) / curve.speed();
  return {.static_pressure = [curve, n](VolumeFlow flow) { return n * n * curve.static_pressure(flow / n); },
          .free_air = n * curve.free_air(),
          .highest = n * n * curve.highest(),
          .rises = curve.rises(),
          .kind = curve.kind()};
}

Pressure static_pressure(const RunningFan& fan, VolumeFlow flow, Density inlet) {
  return fan.static_pressure(flow) * (inlet / matter::standard_fan_air);
}
}  // namespace lumwright::draught
