// Slanting lines clipped to polygons and discs by the even-odd rule: exact crossings, nothing approximated.
#include "drawing/detail/ink.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::drawing {
namespace {
// Where the level line y = `level` crosses a boundary, in co-ordinates turned so that hatching is level.
void crossings(std::vector<double>& out, const std::vector<Spot>& polygon, double level) {
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Spot a = polygon[i], b = polygon[(i + 1) % polygon.size()];
    if ((a.y <= level) == (b.y <= level)) continue;  // half open: a corner on the line counts once
    out.push_back(a.x + (level - a.y) / (b.y - a.y) * (b.x - a.x));
  }
}
void crossings(std::vector<double>& out, Spot centre, double radius, double level) {
  const double under = radius * radius - (level - centre.y) * (level - centre.y);
  if (under <= 0.0) return;
  out.push_back(centre.x - std::sqrt(under));
  out.push_back(centre.x + std::sqrt(under));
}
// What is not finite would vanish among the crossings.
Spot within_reach(Spot p) {
  for (const double number : {p.x, p.y})
    if (!(std::abs(number) < 1e4)) throw ModelError(fmt::format("hatching: {} mm is not within 10 m", number));
  return p;
}
struct Round {
  Spot centre;
  double radius;
};
}  // namespace

void add_hatch(Inks& out, const Hatch& hatch, double scale) {
  const Spot way = toward(hatch.slant.in_radians()), across = left_of(way);
  const auto turn = [&](Spot p) { return Spot{dot(p, way), dot(p, across)}; };
  std::vector<std::vector<Spot>> polygons;
  std::vector<Round> discs;
  Extent box;
  for (const Boundary& boundary : hatch.boundaries) {
    if (const auto* points = std::get_if<std::vector<Point>>(&boundary)) {
      std::vector<Spot>& polygon = polygons.emplace_back();
      for (const Point& p : *points) box.add(polygon.emplace_back(turn(within_reach(scale * spot(p)))));
    } else {
      const auto& disc = std::get<Disc>(boundary);
      const Spot middle = within_reach(scale * spot(disc.centre));
      const Round round{turn(middle), within_reach({scale * in(disc.diameter, mm) / 2.0, 0.0}).x};
      discs.push_back(round);
      box.add(round.centre - Spot{round.radius, round.radius});
      box.add(round.centre + Spot{round.radius, round.radius});
    }
  }
  const double step = in(hatch.spacing, mm);
  if (box.empty()) return;
  for (double k = std::ceil(box.low.y / step); k * step < box.high.y; ++k) {  // on one grid for the whole view
    const double level = k * step;
    std::vector<double> at;
    for (const auto& polygon : polygons) crossings(at, polygon, level);
    for (const Round& disc : discs) crossings(at, disc.centre, disc.radius, level);
    std::sort(at.begin(), at.end());
    for (std::size_t i = 0; i + 1 < at.size(); i += 2)
      if (at[i + 1] - at[i] > 1e-6)
        stroke(out, {at[i] * way + level * across, at[i + 1] * way + level * across}, Layer::hatch);
  }
}
}  // namespace lumwright::drawing
