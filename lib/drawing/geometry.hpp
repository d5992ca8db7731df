// Points, angles and boxes of a true-scale drawing: x to the right, y up, as on a drawing board.
#pragma once
#include "quantity/quantity.hpp"
#include <compare>

namespace lumwright::drawing {
struct Point {
  Length x;
  Length y;
};

/// Counter-clockwise from the positive x axis: degrees(90) is straight up.
class Angle {
 public:
  constexpr Angle() = default;
  static constexpr Angle of_radians(double number) { return Angle(number); }
  constexpr double in_radians() const { return radians_; }
  friend constexpr auto operator<=>(Angle, Angle) = default;
  friend constexpr Angle operator+(Angle a, Angle b) { return Angle(a.radians_ + b.radians_); }
  friend constexpr Angle operator-(Angle a, Angle b) { return Angle(a.radians_ - b.radians_); }
  friend constexpr Angle operator*(double factor, Angle a) { return Angle(factor * a.radians_); }

 private:
  explicit constexpr Angle(double radians) : radians_(radians) {}
  double radians_ = 0.0;
};
constexpr Angle degrees(double number) { return Angle::of_radians(number * (3.14159265358979323846 / 180.0)); }

struct Box {
  Point low;   // left, bottom
  Point high;  // right, top
  Length width() const { return high.x - low.x; }
  Length height() const { return high.y - low.y; }
};
}  // namespace lumwright::drawing
