// The smooth curve under a fan test's readings, without any say about rising or falling: what fan_fit.cpp stands on.
#pragma once
#include "draught/fan_fit.hpp"
#include "numeric/curve.hpp"
#include "numeric/least_squares.hpp"
#include <vector>

// Here x is flow over the free-air flow, and y pressure over the shut-off pressure, of the usual shape that lies
// nearest to the readings.
namespace lumwright::draught {
struct ScaledPoint {
  double x, y;
  double sigma;  // of y
  double flow_with_pressure, flow_sigma;
};
struct FanScales {
  VolumeFlow flow;
  Pressure pressure;
};

/// The curve at evenly spaced nodes, with its covariance.
struct SmoothCurve {
  static constexpr double step = 1.0 / 30.0;
  std::vector<double> y;
  numeric::Matrix covariance;
  double misfit, freedom, used;  // sum of squares in sigmas, what it should be, parameters that the readings determine
  double widened() const;
  double value(double x) const;
  double slope(double x) const;
  double variance(double x) const;
  std::size_t node(double x) const;  // left of x
};

/// Points in rising order of flow. Throws ModelError where fit_fan_curve does.
FanScales fan_scales(const TestedFan& fan);
std::vector<ScaledPoint> scaled_points(const TestedFan& fan, const FanScales& scales);
SmoothCurve smooth_curve(const TestedFan& fan, const FanScales& scales);
}  // namespace lumwright::draught
