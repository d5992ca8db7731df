// Places in the plane of a drawing: points, angles, and which corner they are measured from.
#pragma once
#include "quantity/quantity.hpp"
#include <vector>

namespace lumwright::workshop {
/// An angle is a pure number in radians: 30.0 * degree. Counter-clockwise from the x axis, y upwards.
inline constexpr double degree = 0.017453292519943295;

struct PlanePoint {
  Length x;
  Length y;
};

/// What co-ordinates are measured from.
enum class Datum {
  centre,               // of the pattern: some are negative
  lower_left_tangents,  // the two edges that touch the pattern's circle (or square) at left and below: none is negative
};

/// Distance of two points. Exact.
Length distance(PlanePoint a, PlanePoint b);
}  // namespace lumwright::workshop
