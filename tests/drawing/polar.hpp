// A point by its distance and direction from another.
#pragma once
#include "drawing/geometry.hpp"
#include <cmath>

namespace lumwright::drawing {
inline Point polar(Point centre, Length radius, Angle angle) {
  return {centre.x + radius * std::cos(angle.in_radians()), centre.y + radius * std::sin(angle.in_radians())};
}
}  // namespace lumwright::drawing
