#include "draught/detail/fan_smooth.hpp"
#include "numeric/root.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::draught {
namespace {
constexpr double shape_step = 0.1;  // of free air: where the bends of usual shapes are taken
constexpr double bend_room = 1.5;   // fans bend otherwise than the usual shape does, by this share of its bends
// How far the usual shape may be off before the readings speak: at shut-off, in slope there, in free air. Vague on
// purpose (estimate): they only matter where nothing was read.
constexpr double height_room = 0.5, slope_room = 0.7, free_air_room = 0.2;
constexpr double shape_doubt = 0.05;  // of the pressure at shut-off, when the usual shape is laid through the readings
constexpr double widest = 4.0;        // x beyond which no curve is followed

using Vector = std::vector<double>;

/// Beyond free air straight on, as the fan is driven.
numeric::MonotoneCurve usual_shape(data::FanKind kind, Length thickness) {
  const data::FanShape& shape = data::fan_shape(kind, thickness);
  return {shape.flow, shape.pressure};
}
/// Root mean square second difference of usual curves a tenth of free air apart; of the roughest depth of frame, since
/// it is the blades that decide.
double roughness(data::FanKind kind) {
  double most = 0.0;
  for (const Length& depth : {20.0 * mm, 30.0 * mm}) {
    const numeric::MonotoneCurve shape = usual_shape(kind, depth);
    double sum = 0.0;
    int count = 0;
    for (double x = shape_step; x < 1.0 - 0.5 * shape_step; x += shape_step, ++count)
      sum += std::pow(shape(x - shape_step) - 2.0 * shape(x) + shape(x + shape_step), 2);
    most = std::max(most, std::sqrt(sum / count));
  }
  return most;
}
std::vector<TestPoint> sorted(std::vector<TestPoint> points) {
  std::stable_sort(points.begin(), points.end(),
                   [](const TestPoint& a, const TestPoint& b) { return a.flow < b.flow; });
  return points;
}
/// The usual shape through the highest reading and the one nearest to free air.
FanScales first_scales(const TestedFan& fan) {
  const std::vector<TestPoint> points = sorted(fan.points);
  if (points.size() < 2 || !(points.back().flow > points.front().flow))
    throw ModelError("a fan's curve needs readings at two flows or more");
  Pressure most = points.front().pressure;
  for (const TestPoint& p : points) most = std::max(most, p.pressure);
  const TestPoint& last = points.back();
  if (!(last.pressure < most))
    throw ModelError("the pressure read at the largest flow, " + format(last.pressure, "Pa") + " at " +
                     format(last.flow, "l/min") + ", is no lower than any other: larger holes are needed");
  const numeric::MonotoneCurve shape = usual_shape(fan.kind, fan.thickness);
  const double share =
      numeric::bracketed_root([&](double x) { return shape(x) - last.pressure / most; }, 0.0, 1.0, "share of free air");
  return {last.flow / share, most};
}
std::size_t nodes_for(const std::vector<ScaledPoint>& points) {
  const double beyond = std::clamp(points.back().x + 0.6, 1.6, widest);
  return static_cast<std::size_t>(std::ceil(beyond / SmoothCurve::step)) + 1;
}

/// A reading as the fit sees it: an error of the pressure moves it along x ~ y^flow_with_pressure, so that it speaks of
/// the curve where the curve crosses that line.
struct Sight {
  double x, y, sigma;
  double off;  // of the reading from the curve
};
Sight sight(const ScaledPoint& p, const SmoothCurve& curve) {
  double x = p.x, on_line = p.y;
  if (p.x > 0.0 && p.flow_with_pressure > 0.0) {
    const auto along = [&](double at) { return p.y * std::pow(at / p.x, 1.0 / p.flow_with_pressure); };
    double low = 0.0, high = SmoothCurve::step * double(curve.y.size() - 1);
    for (int i = 0; i < 40; ++i) {  // the line rises from zero, the curve comes down to it
      x = 0.5 * (low + high);
      (curve.value(x) > along(x) ? low : high) = x;
    }
    on_line = along(x);
  }
  const double slope = std::min(curve.slope(x), 0.0);  // a rise would lessen sigma: not to be relied upon
  const double stretch = 1.0 - (x > 0.0 ? slope * p.flow_with_pressure * x / on_line : 0.0);
  const double off = x == p.x ? p.y - curve.value(x) : (p.y - on_line) * stretch;
  return {x, curve.value(x) + off, std::hypot(p.sigma * stretch, slope * x * p.flow_sigma), off};
}

SmoothCurve sampled(const numeric::MonotoneCurve& shape, std::size_t nodes, double height, double width) {
  SmoothCurve out{.y = {}, .covariance = {}, .misfit = 0.0, .freedom = 0.0, .used = 0.0};
  for (std::size_t j = 0; j < nodes; ++j)
    out.y.push_back(height * shape(SmoothCurve::step * static_cast<double>(j) / width));
  return out;
}

/// Deviation from the usual shape: a line, a change of free air, and bends as of a once integrated random walk (the
/// cubic smoothing spline as a Gaussian process; Wahba 1978).
class Prior {
 public:
  Prior(data::FanKind kind, SmoothCurve shape) : shape_(std::move(shape)) {
    const double bend = bend_room * roughness(kind);
    density_ = 1.5 * bend * bend / std::pow(shape_step, 3);  // a second difference has 2/3 density step^3
  }
  double covariance(double a, double b) const {
    const double less = std::min(a, b), apart = std::abs(a - b);
    const double walk = density_ * less * less * (less / 3.0 + apart / 2.0);
    const double stretch = free_air_room * free_air_room * a * shape_.slope(a) * b * shape_.slope(b);
    return height_room * height_room + slope_room * slope_room * a * b + walk + stretch;
  }
  const SmoothCurve& shape() const { return shape_; }

 private:
  SmoothCurve shape_;
  double density_;
};

SmoothCurve posterior(const Prior& prior, const std::vector<ScaledPoint>& points, const SmoothCurve& before) {
  std::vector<Sight> seen;
  seen.reserve(points.size());
  for (const ScaledPoint& p : points) seen.push_back(sight(p, before));
  const std::size_t n = seen.size(), nodes = before.y.size();
  numeric::Matrix read(n, Vector(n));
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j)
      read[i][j] = prior.covariance(seen[i].x, seen[j].x) + (i == j ? seen[i].sigma * seen[i].sigma : 0.0);
  const numeric::Matrix information = numeric::inverse(read);
  numeric::Matrix cross(nodes, Vector(n)), gain(nodes, Vector(n, 0.0));
  const auto at = [](std::size_t node) { return SmoothCurve::step * static_cast<double>(node); };
  for (std::size_t k = 0; k < nodes; ++k) {
    for (std::size_t i = 0; i < n; ++i) cross[k][i] = prior.covariance(at(k), seen[i].x);
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t j = 0; j < n; ++j) gain[k][i] += cross[k][j] * information[j][i];
  }
  SmoothCurve fit{
      .y = prior.shape().y, .covariance = numeric::Matrix(nodes, Vector(nodes)), .misfit = 0, .freedom = 0, .used = 0};
  for (std::size_t k = 0; k < nodes; ++k) {
    for (std::size_t i = 0; i < n; ++i) fit.y[k] += gain[k][i] * (seen[i].y - prior.shape().value(seen[i].x));
    for (std::size_t l = 0; l < nodes; ++l) {
      fit.covariance[k][l] = prior.covariance(at(k), at(l));
      for (std::size_t i = 0; i < n; ++i) fit.covariance[k][l] -= gain[k][i] * cross[l][i];
    }
  }
  for (std::size_t i = 0; i < n; ++i) {
    const double variance = seen[i].sigma * seen[i].sigma;
    fit.misfit += std::pow(seen[i].y - fit.value(seen[i].x), 2) / variance;
    fit.used += 1.0 - variance * information[i][i];  // trace of the hat matrix
  }
  fit.freedom = static_cast<double>(n) - fit.used;
  return fit;
}
}  // namespace

double SmoothCurve::widened() const { return freedom > 0.5 ? std::max(1.0, std::sqrt(misfit / freedom)) : 1.0; }
std::size_t SmoothCurve::node(double x) const { return std::min(static_cast<std::size_t>(x / step), y.size() - 2); }
double SmoothCurve::value(double x) const {
  const std::size_t j = node(x);
  return y[j] + (x / step - static_cast<double>(j)) * (y[j + 1] - y[j]);
}
double SmoothCurve::slope(double x) const {
  const std::size_t j = node(x);
  return (y[j + 1] - y[j]) / step;
}
double SmoothCurve::variance(double x) const {
  const std::size_t j = node(x);
  const double b = x / step - static_cast<double>(j), a = 1.0 - b;
  const numeric::Matrix& c = covariance;
  return std::max(0.0, a * a * c[j][j] + 2.0 * a * b * c[j][j + 1] + b * b * c[j + 1][j + 1]);
}

std::vector<ScaledPoint> scaled_points(const TestedFan& fan, const FanScales& scales) {
  std::vector<ScaledPoint> out;
  for (const TestPoint& p : sorted(fan.points))
    out.push_back({.x = p.flow / scales.flow,
                   .y = p.pressure / scales.pressure,
                   .sigma = p.pressure_sigma / scales.pressure,
                   .flow_with_pressure = p.flow_with_pressure,
                   .flow_sigma = p.flow_sigma});
  return out;
}

FanScales fan_scales(const TestedFan& fan) {
  const FanScales first = first_scales(fan);
  const std::vector<ScaledPoint> points = scaled_points(fan, first);
  const numeric::MonotoneCurve shape = usual_shape(fan.kind, fan.thickness);
  const auto residuals = [&](const Vector& u) {
    for (const double one : u) require_within("logarithm of a fan's scale", one, {-1.2, 1.2});
    const SmoothCurve curve = sampled(shape, nodes_for(points), std::exp(u[0]), std::exp(u[1]));
    Vector out = u;  // the first guess counts as one reading with a factor of e
    for (const ScaledPoint& p : points) {
      const Sight seen = sight(p, curve);
      out.push_back(seen.off / std::hypot(seen.sigma, shape_doubt));
    }
    return out;
  };
  const numeric::LeastSquaresFit fit =
      numeric::least_squares({.residuals = residuals, .start = {0.0, 0.0}, .step = {0.01, 0.01}, .jacobian = {}});
  return {first.flow * std::exp(fit.x[1]), first.pressure * std::exp(fit.x[0])};
}

SmoothCurve smooth_curve(const TestedFan& fan, const FanScales& scales) {
  const std::vector<ScaledPoint> points = scaled_points(fan, scales);
  const Prior prior(fan.kind, sampled(usual_shape(fan.kind, fan.thickness), nodes_for(points), 1.0, 1.0));
  SmoothCurve fit = prior.shape();
  for (int pass = 0; pass < 7; ++pass) fit = posterior(prior, points, fit);  // the curve says where it is read
  return fit;
}
}  // namespace lumwright::draught
