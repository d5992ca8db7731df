// Holes on a circle, as co-ordinates for marking out or for the dials of a mill.
#pragma once
#include "workshop/plane.hpp"
#include <vector>

namespace lumwright::workshop {
struct HoleCircle {
  int count;  // 1 or more
  Length pitch_circle;
  double start;  // angle of the first hole: 90.0 * degree is at the top
  Datum datum;
};
/// The centres, counter-clockwise from the first. Exact; Machinery's Handbook prints the same as factors of the pitch
/// circle (hole circles, type A from the centre, jig-boring from the tangents).
/// Throws ModelError for a count below 1, a pitch circle not above zero, or an angle that is no number.
std::vector<PlanePoint> hole_circle(const HoleCircle& circle);

struct HoleSpan {
  int count;  // 2 or more
  Length pitch_circle;
  int apart;  // 1 for neighbours, up to count - 1
};
/// Straight distance between two holes of the circle: D sin(180 deg x apart / count). Exact; what dividers are set to.
/// Throws ModelError outside those ranges.
Length chord(const HoleSpan& span);

/// Four holes of a square pattern from lower left, counter-clockwise. Throws ModelError for a pitch not above zero.
struct HoleSquare {
  Length pitch;
  Datum datum;
};
std::vector<PlanePoint> hole_square(const HoleSquare& square);
}  // namespace lumwright::workshop
