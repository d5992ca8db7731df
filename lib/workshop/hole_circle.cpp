#include "workshop/hole_circle.hpp"
#include "quantity/require.hpp"
#include <cmath>
#include <fmt/format.h>
#include <numbers>

namespace lumwright::workshop {
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
  require_above_zero("pitch circle", circle.pitch_circle, "mm");
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
  require_above_zero("pitch circle", span.pitch_circle, "mm");
  return span.pitch_circle * std::sin(std::numbers::pi * span.apart / span.count);
}

std::vector<PlanePoint> hole_square(const HoleSquare& square) {
  require_above_zero("hole pitch", square.pitch, "mm");
  const Length half = 0.5 * square.pitch;
  std::vector<PlanePoint> found;
  for (const PlanePoint& corner : {PlanePoint{-half, -half}, {half, -half}, {half, half}, {-half, half}})
    found.push_back(on_datum(corner, half, square.datum));
  return found;
}
}  // namespace lumwright::workshop
