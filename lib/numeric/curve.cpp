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

struct MonotoneCurve::Cubic {
  boost::math::interpolators::pchip<std::vector<double>> curve;
};
MonotoneCurve::MonotoneCurve(std::vector<double> x, std::vector<double> y) : line_(std::move(x), std::move(y)) {
  if (line_.x().size() < 4) return;
  auto xs = line_.x();
  auto ys = line_.y();
  cubic_ = std::make_shared<const Cubic>(Cubic{{std::move(xs), std::move(ys)}});
}
double MonotoneCurve::operator()(double at) const {
  if (!cubic_ || at <= line_.x().front() || at >= line_.x().back()) return line_(at);
  return cubic_->curve(at);
}
}  // namespace lumwright::numeric
