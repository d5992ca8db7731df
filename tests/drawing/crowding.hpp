// Looks a view over for words that cannot be read.
#pragma once
#include "drawing/detail/ink.hpp"
#include "drawing/detail/lettering.hpp"
#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace lumwright::drawing {
// The rectangle of the capitals and digits of a line, in its own turned co-ordinates.
struct Plate {
  const Words* words;
  Spot along;
  double start;
  double width;
  explicit Plate(const Words& w) : words(&w), along(toward(w.turn)), start(0.0), width(0.0) {
    width = wider * width_to_height(w.text) * w.height;
    start = w.across == Across::left ? 0.0 : w.across == Across::centre ? -width / 2.0 : -width;
  }
  Spot inside(Spot p) const { return {dot(p - words->at, along) - start, dot(p - words->at, left_of(along))}; }
  std::array<Spot, 4> corners() const {
    const auto at = [&](double x, double y) { return words->at + (start + x) * along + y * left_of(along); };
    return {at(0.0, 0.0), at(width, 0.0), at(width, words->height), at(0.0, words->height)};
  }
  // Liang and Barsky 1984: what is left of the segment within the rectangle.
  bool crossed(Spot from, Spot to) const {
    const Spot a = inside(from), d = inside(to) - a;
    double enter = 0.0, leave = 1.0;
    const auto clip = [&](double start_at, double step, double limit) {
      if (step == 0.0) return start_at > 0.0 && start_at < limit;
      const double low = -start_at / step, high = (limit - start_at) / step;
      enter = std::max(enter, std::min(low, high));
      leave = std::min(leave, std::max(low, high));
      return true;
    };
    return clip(a.x, d.x, width) && clip(a.y, d.y, words->height) && enter < leave;
  }
  bool meets(const Plate& other) const {
    const auto c = other.corners(), mine = corners();
    for (std::size_t i = 0; i < 4; ++i)
      if (crossed(c.at(i), c.at((i + 1) % 4)) || other.crossed(mine.at(i), mine.at((i + 1) % 4))) return true;
    return false;
  }
};
inline bool runs_through(const Plate& plate, const Ink& ink) {
  if (const auto* s = std::get_if<Stroke>(&ink.shape)) {
    for (std::size_t i = 0; i + 1 < s->points.size() + (s->closed ? 1 : 0); ++i)
      if (plate.crossed(s->points[i], s->points[(i + 1) % s->points.size()])) return true;
  } else if (const auto* b = std::get_if<Bow>(&ink.shape)) {
    constexpr int pieces = 180;
    for (int i = 0; i < pieces; ++i)
      if (plate.crossed(b->centre + b->radius * toward(b->from + b->sweep * i / pieces),
                        b->centre + b->radius * toward(b->from + b->sweep * (i + 1) / pieces)))
        return true;
  }
  return false;
}
/// What a reader would stumble over: words that overlap, or that a line other than hatching runs through; one sentence
/// each. Empty for a good view.
inline std::vector<std::string> crowding(const Inks& all) {
  std::vector<Plate> plates;
  for (const Ink& ink : all)
    if (const auto* words = std::get_if<Words>(&ink.shape)) plates.emplace_back(*words);
  std::vector<std::string> found;
  for (std::size_t i = 0; i < plates.size(); ++i) {
    for (std::size_t k = i + 1; k < plates.size(); ++k)
      if (plates[i].meets(plates[k]))
        found.push_back(fmt::format("`{}` and `{}` overlap", plates[i].words->text, plates[k].words->text));
    for (const Ink& ink : all)
      if (ink.layer != Layer::hatch && runs_through(plates[i], ink))
        found.push_back(
            fmt::format("a line of layer {} runs through `{}`", pen(ink.layer).dxf_layer, plates[i].words->text));
  }
  return found;
}
inline std::vector<std::string> crowding(const View& view) { return crowding(captioned_ink(view)); }
}  // namespace lumwright::drawing
