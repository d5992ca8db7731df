#include "workshop/hole_circle.hpp"
#include "workshop/require.hpp"
#include <cmath>
#include <numbers>

namespace lumwright {
namespace {
// a hole due north lies at x = 0, not at 6e-17 of the radius, which would print as -0.000
double clean(double share) { return std::abs(share) < 1e-14 ? 0.0 : share; }

PlanePoint on_datum(PlanePoint from_centre, Length half, Datum datum) {
  if (datum == Datum::centre) return from_centre;
  return {from_centre.x + half, from_centre.y + half};
}
}  // namespace

std::vector<PlanePoint> hole_circle(const HoleCircle& circle) {
  if (circle.count < 1) throw ModelError(fmt::format("number of holes {} is not 1 or more", circle.count));
  require_above_zero("pitch circle", circle.pitch_circle);
  if (!std::isfinite(circle.start)) throw ModelError(fmt::format("start angle {} is no number", circle.start));
  std::vector<PlanePoint> found;
  const Length radius = 0.5 * circle.pitch_circle;
  for (int k = 0; k < circle.count; ++k) {
    const double angle = circle.start + 2.0 * std::numbers::pi * k / circle.count;
    found.push_back(on_datum({clean(std::cos(angle)) * radius, clean(std::sin(angle)) * radius}, radius, circle.datum));
  }
  return found;
}

Length chord(const HoleSpan& span) {
  if (span.count < 2) throw ModelError(fmt::format("number of holes {} is not 2 or more", span.count));
  if (span.apart < 1 || span.apart >= span.count)
    throw ModelError(fmt::format("{} holes apart is not between 1 and {}", span.apart, span.count - 1));
  require_above_zero("pitch circle", span.pitch_circle);
  return span.pitch_circle * std::sin(std::numbers::pi * span.apart / span.count);
}

Length stepped_error(const SteppedError& stepped) {
  if (stepped.count < 1) throw ModelError(fmt::format("number of holes {} is not 1 or more", stepped.count));
  require_not_negative("error of one step", stepped.each);
  return static_cast<double>(stepped.count - 1) * stepped.each;
}

std::vector<PlanePoint> hole_square(const HoleSquare& square) {
  require_above_zero("hole pitch", square.pitch);
  const Length half = 0.5 * square.pitch;
  std::vector<PlanePoint> found;
  for (const PlanePoint& corner : {PlanePoint{-half, -half}, {half, -half}, {half, half}, {-half, half}})
    found.push_back(on_datum(corner, half, square.datum));
  return found;
}

DialReading dial_reading(Length travel, const Dial& dial) {
  require_above_zero("travel of the hand wheel in one turn", dial.per_turn);
  if (dial.divisions < 1)
    throw ModelError(fmt::format("number of lines on a dial {} is not 1 or more", dial.divisions));
  const Length line = dial.per_turn / static_cast<double>(dial.divisions);
  require_length(std::abs(travel / dial.per_turn) <= 10000.0, "travel of the table", travel, "within 10,000 turns");
  const long lines = std::lround(travel / line), size = std::labs(lines);
  return {.turns = static_cast<int>(size / dial.divisions),
          .line = static_cast<int>(size % dial.divisions),
          .error = static_cast<double>(lines) * line - travel,
          .back = lines < 0};
}

std::vector<DialRow> mill_dials(const std::vector<PlanePoint>& holes, const Dial& x, const Dial& y) {
  std::vector<DialRow> found;
  found.reserve(holes.size());
  for (const PlanePoint& hole : holes) found.push_back({hole, dial_reading(hole.x, x), dial_reading(hole.y, y)});
  return found;
}
}  // namespace lumwright
