#include "numeric/curve.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <cmath>
// clang-format off: Boost 1.74's pchip calls isnan without std::, so math.h must come before it
#include <math.h>
#include <boost/math/interpolators/pchip.hpp>
// clang-format on

namespace lumwright::numeric {
namespace {
std::size_t piece(const std::vector<double>& x, double at) {  // index of the left end
  const auto above = std::upper_bound(x.begin(), x.end(), at) - x.begin();
  return static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(above - 1, 0, static_cast<std::ptrdiff_t>(x.size()) - 2));
}
}  // namespace

LinearCurve::LinearCurve(std::vector<double> x, std::vector<double> y) : x_(std::move(x)), y_(std::move(y)) {
  if (x_.empty() || x_.size() != y_.size())
    throw ModelError("a curve needs as many values as places, and at least one");
  for (std::size_t i = 0; i < x_.size(); ++i) {
    if (!std::isfinite(x_[i]) || !std::isfinite(y_[i])) throw ModelError("a curve point is not a finite number");
    if (i > 0 && !(x_[i] > x_[i - 1])) throw ModelError("the points of a curve must be in rising order");
  }
}
double LinearCurve::slope(double at) const {
  if (x_.size() == 1) return 0.0;
  const std::size_t i = piece(x_, at);
  return (y_[i + 1] - y_[i]) / (x_[i + 1] - x_[i]);
}
double LinearCurve::operator()(double at) const {
  if (x_.size() == 1) return y_[0];
  const std::size_t i = piece(x_, at);
  const double share = (at - x_[i]) / (x_[i + 1] - x_[i]);
  return y_[i] + share * (y_[i + 1] - y_[i]);
}

MonotoneCurve::MonotoneCurve(std::vector<double> x, std::vector<double> y) : line_(std::move(x), std::move(y)) {
  const std::vector<double>&at = line_.x(), &value = line_.y();
  if (at.size() < 4) return;
  auto xs = at, ys = value;
  const boost::math::interpolators::pchip<std::vector<double>> curve(std::move(xs), std::move(ys));
  for (std::size_t i = 0; i + 1 < at.size(); ++i) {  // Boost's slopes; its look-up costs more than the cubic
    const double wide = at[i + 1] - at[i], chord = (value[i + 1] - value[i]) / wide;
    const double left = curve.prime(at[i]), right = curve.prime(at[i + 1]);
    cubics_.push_back(
        {value[i], left, (3.0 * chord - 2.0 * left - right) / wide, (left + right - 2.0 * chord) / (wide * wide)});
  }
}
double MonotoneCurve::operator()(double at) const {
  if (cubics_.empty() || at <= line_.x().front() || at >= line_.x().back()) return line_(at);
  const std::size_t i = piece(line_.x(), at);
  const double from = at - line_.x()[i];
  const Cubic& c = cubics_[i];
  return c[0] + from * (c[1] + from * (c[2] + from * c[3]));
}
}  // namespace lumwright::numeric
