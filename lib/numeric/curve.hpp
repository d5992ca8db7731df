// Curves through given points: straight pieces, or a smooth one that adds no bump of its own.
#pragma once
#include <array>
#include <cstddef>
#include <vector>

namespace lumwright::numeric {
/// Straight lines between points; the end pieces go on as straight lines.
/// x must rise strictly; at least one point (which is then a constant). Throws ModelError otherwise.
class LinearCurve {
 public:
  LinearCurve(std::vector<double> x, std::vector<double> y);
  double operator()(double x) const;
  double slope(double x) const;
  const std::vector<double>& x() const { return x_; }
  const std::vector<double>& y() const { return y_; }

 private:
  std::vector<double> x_, y_;
};

/// Piecewise cubic Hermite through the points, monotone wherever they are (Fritsch and Butland, 1984; Boost.Math's
/// pchip): straight data stays straight, a dip in the data stays a dip. Under four points: straight pieces. Beyond the
/// ends: straight.
class MonotoneCurve {
 public:
  MonotoneCurve(std::vector<double> x, std::vector<double> y);
  double operator()(double x) const;
  const std::vector<double>& x() const { return line_.x(); }
  const std::vector<double>& y() const { return line_.y(); }

 private:
  using Cubic = std::array<double, 4>;  // by powers of the distance from the piece's left end
  LinearCurve line_;
  std::vector<Cubic> cubics_;
};
}  // namespace lumwright::numeric
