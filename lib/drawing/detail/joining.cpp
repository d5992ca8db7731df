#include "drawing/detail/joining.hpp"
#include <algorithm>
#include <optional>

namespace lumwright::drawing {
namespace {
// Does a line from `a` to `b` enter the box? Liang and Barsky 1984.
bool enters(const Extent& box, Spot a, Spot b) {
  double from = 0.0, to = 1.0;
  const auto clip = [&](double start, double step, double low, double high) {
    if (step == 0.0) return start > low && start < high;
    const double one = (low - start) / step, other = (high - start) / step;
    from = std::max(from, std::min(one, other));
    to = std::min(to, std::max(one, other));
    return true;
  };
  return clip(a.x, b.x - a.x, box.low.x, box.high.x) && clip(a.y, b.y - a.y, box.low.y, box.high.y) && from < to;
}
bool touches(const Extent& box, const Ink& ink) {
  if (const auto* s = std::get_if<Stroke>(&ink.shape)) {
    for (std::size_t i = 0; i + 1 < s->points.size() + (s->closed ? 1 : 0); ++i)
      if (enters(box, s->points[i], s->points[(i + 1) % s->points.size()])) return true;
    return false;
  }
  if (const auto* b = std::get_if<Bow>(&ink.shape)) {
    constexpr int pieces = 90;
    const auto on = [&](int i) { return b->centre + b->radius * toward(b->from + b->sweep * i / pieces); };
    for (int i = 0; i < pieces; ++i)
      if (enters(box, on(i), on(i + 1))) return true;
    return false;
  }
  const Extent words = extent({ink});
  return words.low.x < box.high.x && box.low.x < words.high.x && words.low.y < box.high.y && box.low.y < words.high.y;
}
std::optional<double> whole_holes(const Inks& drawn, double (*along)(Spot), const Row& row, int pieces) {
  const auto in_hole = [&](double edge) {
    return std::any_of(drawn.begin(), drawn.end(), [&](const Ink& ink) {
      const auto* hole = std::get_if<Bow>(&ink.shape);
      const bool made = ink.layer == Layer::drill || ink.layer == Layer::cut;
      const bool outline = hole != nullptr && hole->radius > row.whole / 4.0;  // of a disc
      return hole != nullptr && made && !outline && std::abs(along(hole->centre) - edge) < hole->radius;
    });
  };
  const auto in_words = [&](double edge) {
    return std::any_of(drawn.begin(), drawn.end(), [&](const Ink& ink) {
      const Extent words = std::holds_alternative<Words>(ink.shape) ? extent({ink}) : Extent{};
      return !words.empty() && along(words.low) < edge && edge < along(words.high);
    });
  };
  enum class Clear { holes_and_words, holes, joints };
  const double least = (row.whole + (pieces - 1) * overlap) / pieces;
  for (const Clear clear : {Clear::holes_and_words, Clear::holes, Clear::joints})
    for (double size = least; size <= std::max(row.most, least); size += 0.5) {
      bool cut = false;
      for (int i = 1; i < pieces; ++i) {
        const double begin = row.start + row.way * i * (size - overlap);
        cut = cut || in_hole(begin + row.way * overlap / 2.0);
        for (const double window : {begin, begin + row.way * overlap})
          cut = cut || (clear != Clear::joints && in_hole(window)) ||
                (clear == Clear::holes_and_words && in_words(window));
      }
      if (!cut) return size;
    }
  return std::nullopt;
}
}  // namespace

void lay_pieces(const Inks& drawn, double (*along)(Spot), const Row& row, int& pieces, double& size) {
  for (const int more : {0, 1})
    if (const auto found = whole_holes(drawn, along, row, pieces + more)) {
      pieces += more;
      size = *found;
      return;
    }
}
Spot clear_place(Spot cross, const Inks& drawn) {
  constexpr double wide = 5.5, tall = 2.5, gap = 0.5;
  const Spot usual = cross + Spot{2.4, 2.4};
  for (double out = 0.0; out < 16.0; out += 2.0)
    for (const Spot side : {Spot{1.0, 1.0}, Spot{-1.0, 1.0}, Spot{1.0, -1.0}, Spot{-1.0, -1.0}}) {
      const Spot low{cross.x + (side.x > 0.0 ? 2.4 : -2.4 - wide),
                     cross.y + (side.y > 0.0 ? 2.4 + out : -2.4 - out - tall)};
      const Extent plate{low - Spot{gap, gap}, low + Spot{wide + gap, tall + gap}};
      if (std::none_of(drawn.begin(), drawn.end(), [&](const Ink& ink) { return touches(plate, ink); })) return low;
    }
  return usual;
}
double clear_share(Spot middle, Spot half, const Inks& drawn) {
  const auto over_words = [&](Spot at) {
    const Extent cross{at - Spot{5.0, 5.0}, at + Spot{5.0, 5.0}};
    return std::any_of(drawn.begin(), drawn.end(),
                       [&](const Ink& ink) { return std::holds_alternative<Words>(ink.shape) && touches(cross, ink); });
  };
  for (const double share : {1.0, 0.85, 1.15, 0.7, 1.3, 0.55, 1.45})
    if (!over_words(middle - share * half) && !over_words(middle + share * half)) return share;
  return 1.0;
}
}  // namespace lumwright::drawing
