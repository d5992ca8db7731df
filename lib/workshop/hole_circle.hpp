// Holes on a circle, as co-ordinates for marking out or for the dials of a mill.
#pragma once
#include "workshop/plane.hpp"
#include <vector>

namespace lumwright {
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

struct SteppedError {
  int count;
  Length each;  // error of one setting of the dividers
};
/// How far the last hole may be off when the circle is stepped round: the errors of count - 1 settings add up.
/// Co-ordinates do not add up. Throws ModelError for a count below 1 or a negative error.
Length stepped_error(const SteppedError& stepped);

/// Four holes of a square pattern from lower left, counter-clockwise. Throws ModelError for a pitch not above zero.
struct HoleSquare {
  Length pitch;
  Datum datum;
};
std::vector<PlanePoint> hole_square(const HoleSquare& square);

/// A hand wheel: how far it moves the table in one turn and how many lines its dial has.
struct Dial {
  Length per_turn;
  int divisions;
};
/// A setting of the dial: whole turns and then a line, both counted in the direction of the travel.
struct DialReading {
  int turns;
  int line;      // 0 to below `divisions`
  Length error;  // setting less wanted: at most half a line
  bool back;     // travel is negative: take up the backlash
};
/// Nearest whole line for a travel from zero. Throws ModelError for a dial without travel or lines, or for a travel of
/// more than 10,000 turns.
DialReading dial_reading(Length travel, const Dial& dial);

struct DialRow {
  PlanePoint at;
  DialReading x;
  DialReading y;
};
/// One row a hole, both wheels set to zero on the datum.
std::vector<DialRow> mill_dials(const std::vector<PlanePoint>& holes, const Dial& x, const Dial& y);
}  // namespace lumwright
