#include "report/templates/parts.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report::templates_of {
using namespace drawing;
namespace {
// Outline of a lid or a bottom: cut line, and where the skirt is turned up. `beside`: the height of a square one, mm of
// paper from its edge.
void add_plate(View& view, const model::MadeBox& box, double beside = 9.0) {
  if (box.square) {
    const Length half = 0.5 * box.plate;
    add_rectangle(view, {{-half, -half}, {half, half}});
    add_centre_lines(view, middle, half + 3.0 * mm);
    view.entities.push_back(LinearDimension{{-half, -half}, {half, -half}, Along::horizontal, -9.0 * mm});
    view.entities.push_back(LinearDimension{{half, -half}, {half, half}, Along::vertical, beside * mm});
    return;
  }
  const Length blank = box.round->disc_blank;
  view.entities.push_back(Circle{middle, blank, Layer::cut});
  view.entities.push_back(Circle{middle, box.round->disc, Layer::fold});
  add_centre_lines(view, middle, 0.5 * blank + 3.0 * mm);
  view.entities.push_back(
      DiameterDimension{.centre = middle, .diameter = blank, .at = degrees(-40.0), .away = 7.0 * mm, .before = "cut "});
  view.entities.push_back(DiameterDimension{.centre = middle,
                                            .diameter = box.round->disc,
                                            .at = degrees(-65.0),
                                            .away = 0.5 * (blank - box.round->disc) + 8.0 * mm,
                                            .before = "turn the rim "});
}
Length reach(const model::MadeBox& box) { return 0.5 * (box.square ? box.plate : box.round->disc_blank); }
// From a hole to a little beyond the rim, straight out.
Length beyond_rim(const model::MadeBox& box, Point hole, Length diameter) {
  const double x = in(hole.x, mm), y = in(hole.y, mm), out = std::hypot(x, y);
  const double corner = box.square && out > 0.0 ? out / std::max(std::abs(x), std::abs(y)) : 1.0;
  return std::max(corner * reach(box) - out * mm - 0.5 * diameter, 0.0 * mm) + 7.0 * mm;
}
constexpr double row_apart = 9.0;  // mm of paper from one row of dimensions to the next
bool even_square(const model::LidHoles& lid) {
  const auto& h = lid.screws;
  const auto opposite = [&](std::size_t a, std::size_t b) {
    return workshop::distance(h[a], {-1.0 * h[b].x, -1.0 * h[b].y}) < 1e-6 * mm;
  };
  return h.size() == 4 && opposite(0, 2) && opposite(1, 3);
}
// Rows of dimensions beside the lid.
double rows_beside(const std::optional<model::LidHoles>& lid) {
  return !lid ? 0.0 : even_square(*lid) ? 1.0 : static_cast<double>(lid->screws.size());
}
// Each from the middle of the lid; of a pattern that is even about it, from hole to hole.
void dimension_screws(View& view, const model::MadeBox& box, const model::LidHoles& lid) {
  const Length edge = reach(box);
  const auto level = [&](Point from, Point to, double away) {
    view.entities.push_back(LinearDimension{from, to, Along::horizontal, edge + away * mm - std::max(from.y, to.y)});
  };
  const auto upright = [&](Point from, Point to, double away) {
    view.entities.push_back(LinearDimension{from, to, Along::vertical, edge + away * mm - std::max(from.x, to.x)});
  };
  const auto& holes = lid.screws;
  if (even_square(lid)) {
    level(point(holes[3]), point(holes[2]), row_apart);
    upright(point(holes[1]), point(holes[2]), row_apart);
    return;
  }
  for (std::size_t i = 0; i < holes.size(); ++i) {
    const double away = row_apart * static_cast<double>(i + 1);
    level({0.0 * mm, holes[i].y}, point(holes[i]), away);
    upright({holes[i].x, 0.0 * mm}, point(holes[i]), away);
  }
}
}  // namespace

View lid_view(const model::MadeBox& box, const std::optional<model::LidHoles>& lid, Figures figures) {
  View view = of_sheet(box, "Lid", figures);
  add_plate(view, box, row_apart * (1.0 + rows_beside(lid)));
  if (!lid) {
    view.note = "measure the fan before its holes are drawn";
    return view;
  }
  if (lid->opening) {
    add_bore(view, middle, *lid->opening);
    view.entities.push_back(DiameterDimension{.centre = middle,
                                              .diameter = *lid->opening,
                                              .at = degrees(box.square ? 200.0 : 232.0),
                                              .away = reach(box) - 0.5 * *lid->opening + 7.0 * mm,
                                              .before = "cut out "});
  }
  for (const workshop::PlanePoint& hole : lid->screws) add_hole(view, point(hole), lid->screw_hole);
  add_rectangle(view, {point(lid->frame_low), point(lid->frame_high)}, Layer::hidden);
  Point shown = point(lid->screws.front());  // the topmost
  for (const workshop::PlanePoint& hole : lid->screws)
    if (hole.y > shown.y) shown = point(hole);
  const Angle outward = Angle::of_radians(std::atan2(in(shown.y, mm), in(shown.x, mm)));
  view.entities.push_back(DiameterDimension{.centre = shown,
                                            .diameter = lid->screw_hole,
                                            .at = outward,
                                            .away = beyond_rim(box, shown, lid->screw_hole),
                                            .before = times(static_cast<int>(lid->screws.size())) + "drill "});
  dimension_screws(view, box, *lid);
  view.note = "dashed: outline of the fan";
  if (lid->strays) view.note = places_within(lid->strays, figures) + "; " + view.note;
  return view;
}

View bottom_view(const model::MadeBox& box, const std::optional<model::FlangeScrews>& screws, Figures figures) {
  View view = of_sheet(box, "Bottom", figures);
  add_plate(view, box);
  if (box.tube_hole) {
    add_bore(view, middle, *box.tube_hole);
    view.entities.push_back(DiameterDimension{.centre = middle,
                                              .diameter = *box.tube_hole,
                                              .at = degrees(232.0),
                                              .away = reach(box) - 0.5 * *box.tube_hole + 7.0 * mm,
                                              .before = "for the tube ",
                                              .after = between(box.tube_hole_limits, figures)});
  }
  if (!screws) return view;
  view.note = places_within(screws->strays, figures);
  view.entities.push_back(Circle{middle, screws->pitch_circle, Layer::centre});
  for (const workshop::PlanePoint& hole : flange_holes(*screws)) add_hole(view, point(hole), screws->clearance);
  const Point first = point(flange_holes(*screws).front());
  view.entities.push_back(DiameterDimension{.centre = first,
                                            .diameter = screws->clearance,
                                            .at = degrees(50.0),
                                            .away = beyond_rim(box, first, screws->clearance),
                                            .before = times(screws->count) + "drill ",
                                            .after = " for " + screws->thread.name});
  view.entities.push_back(DiameterDimension{.centre = middle,
                                            .diameter = screws->pitch_circle,
                                            .at = degrees(15.0),
                                            .away = reach(box) - 0.5 * screws->pitch_circle + 7.0 * mm,
                                            .before = "pitch circle "});
  return view;
}
}  // namespace lumwright::report::templates_of
