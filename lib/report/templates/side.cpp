#include "model/shop_steps.hpp"
#include "report/templates/parts.hpp"
#include "report/templates/templates.hpp"
#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report::templates_of {
using namespace drawing;
namespace {
// Bleed holes even round the box, the grommet in the gap behind the last one.
std::vector<SideHole> holes_of_strip(const model::MadeBox& box) {
  const int bleeds = box.bleed ? box.bleed->count : 0, places = bleeds + (box.grommet ? 1 : 0);
  std::vector<SideHole> holes;
  if (places == 0) return holes;
  const Length pitch =
                   model::in_steps((box.round->strip_length - box.lap) / static_cast<double>(places), box.marked_to),
               start = model::in_steps(0.5 * pitch, box.marked_to) - 0.5 * box.round->strip_length;
  const auto add = [&](const char* what, Length diameter) {
    holes.push_back({"side", what, {start + static_cast<double>(holes.size()) * pitch, 0.0 * mm}, diameter});
  };
  for (int i = 0; i < bleeds; ++i) add("bleed", box.bleed->diameter);
  if (box.grommet) add("grommet", box.grommet->grommet.hole);
  return holes;
}

// A wall of the net, named as it lies on the flat sheet; `out` from the middle of the floor to the wall.
struct Wall {
  const char* part;
  double out_x, out_y;
};
constexpr std::array<Wall, 4> walls = {
    {{"lower side", 0.0, -1.0}, {"upper side", 0.0, 1.0}, {"left side", -1.0, 0.0}, {"right side", 1.0, 0.0}}};
constexpr std::size_t wall_of_grommet = 1;

// Bleed holes go to opposite walls in turn; along each they are even, clear of the tabs behind it, and half up.
std::vector<SideHole> holes_of_net(const model::MadeBox& box) {
  const std::size_t bleeds = box.bleed ? static_cast<std::size_t>(box.bleed->count) : 0;
  const Length room = box.across - 2.0 * box.lap - box.marked_to,
               from_middle = 0.5 * (box.net->across.total - box.height);
  std::vector<SideHole> holes;
  for (std::size_t w = 0; w < walls.size(); ++w) {
    const std::size_t own = bleeds / walls.size() + (w < bleeds % walls.size() ? 1 : 0);
    const bool grommet = box.grommet && w == wall_of_grommet;
    const std::size_t all = own + (grommet ? 1 : 0);
    for (std::size_t i = 0; i < all; ++i) {
      const Length pitch = model::in_steps(room / static_cast<double>(all), box.marked_to);
      const Length along = pitch * (static_cast<double>(i) + 0.5 - 0.5 * static_cast<double>(all));
      const Point at{walls.at(w).out_x * from_middle + std::abs(walls.at(w).out_y) * along,
                     walls.at(w).out_y * from_middle + std::abs(walls.at(w).out_x) * along};
      if (i < own)
        holes.push_back({walls.at(w).part, "bleed", at, box.bleed->diameter});
      else
        holes.push_back({walls.at(w).part, "grommet", at, box.grommet->grommet.hole});
    }
  }
  return holes;
}

View strip_view(const model::MadeBox& box, Figures figures) {
  View view = of_sheet(box, "Side", figures);
  const Length right = 0.5 * box.round->strip_length, top = 0.5 * box.round->strip_width, left = -right, low = -top;
  add_rectangle(view, {{left, low}, {right, top}});
  view.entities.push_back(Line{{right - box.lap, low}, {right - box.lap, top}, Layer::fold});
  const std::vector<SideHole> holes = holes_of_strip(box);
  for (const SideHole& hole : holes) add_hole(view, hole.at, hole.diameter);
  // all from the lower left corner
  view.entities.push_back(LinearDimension{{right - box.lap, low}, {right, low}, Along::horizontal, -8.0 * mm, "lap "});
  view.entities.push_back(LinearDimension{{left, low}, {right, low}, Along::horizontal, -26.0 * mm});
  view.entities.push_back(LinearDimension{{left, low}, {left, top}, Along::vertical, -8.0 * mm});
  if (!holes.empty()) {
    view.entities.push_back(LinearDimension{{right, low}, {right, holes[0].at.y}, Along::vertical, 8.0 * mm});
    const auto down = [&](double paper) -> Length { return low - holes[0].at.y - paper * mm; };
    view.entities.push_back(
        LinearDimension{{left, holes[0].at.y}, holes[0].at, Along::horizontal, down(8.0), "", "", true});
    if (box.bleed && box.bleed->count > 1)
      view.entities.push_back(LinearDimension{holes[0].at, holes[1].at, Along::horizontal, down(8.0),
                                              box.bleed->count > 2 ? times(box.bleed->count - 1) : ""});
    if (box.bleed && box.grommet)
      view.entities.push_back(
          LinearDimension{{left, holes.back().at.y}, holes.back().at, Along::horizontal, down(17.0)});
  }
  if (box.bleed && box.bleed->count > 0)
    view.entities.push_back(DiameterDimension{.centre = holes.front().at,
                                              .diameter = box.bleed->diameter,
                                              .at = degrees(60.0),
                                              .away = top - 0.5 * box.bleed->diameter + 7.0 * mm,
                                              .before = times(box.bleed->count) + "bleed hole "});
  if (box.grommet)
    view.entities.push_back(DiameterDimension{.centre = holes.back().at,
                                              .diameter = box.grommet->grommet.hole,
                                              .at = degrees(120.0),
                                              .away = top - 0.5 * box.grommet->grommet.hole + 7.0 * mm,
                                              .before = "grommet "});
  view.note = "roll it round with the lap outside";
  return view;
}

// A hole's or a circle's diameter, on a shoulder at `elbow`.
struct Pointed {
  Point centre;
  Length diameter;
  std::string before, after;
};
void point_out(View& view, const Pointed& hole, Point elbow) {
  const double x = in(elbow.x - hole.centre.x, mm), y = in(elbow.y - hole.centre.y, mm);
  view.entities.push_back(DiameterDimension{.centre = hole.centre,
                                            .diameter = hole.diameter,
                                            .at = Angle::of_radians(std::atan2(y, x)),
                                            .away = std::hypot(x, y) * mm - 0.5 * hole.diameter,
                                            .before = hole.before,
                                            .after = hole.after});
}
// The words stand in the two corners at the right that are cut away, or over and under a box too low for them: from
// the fold outwards, those of the floor first, so that no two leaders cross. Below they must not meet the line that
// carries the width of the sheet down from its edge.
void point_out_all(View& view, const model::MadeBox& box, const std::optional<model::FlangeScrews>& screws) {
  std::vector<Pointed> above, beneath;
  if (box.tube_hole)
    beneath.push_back({middle, *box.tube_hole, "for the tube ", between(box.tube_hole_limits, view.figures)});
  if (screws) {
    above.push_back({middle, screws->pitch_circle, "pitch circle ", ""});
    above.push_back({point(flange_holes(*screws).front()), screws->clearance, times(screws->count) + "drill ",
                     " for " + screws->thread.name});
  }
  const std::vector<SideHole> holes = holes_of_net(box);
  const std::string from_rim = ", " + size_text(0.5 * box.height, one_rule(view.figures)) + " from the rim";
  const auto last = [&](std::string_view part, std::string_view what) {  // the one nearest to the words
    return std::find_if(holes.rbegin(), holes.rend(),
                        [&](const SideHole& h) { return h.part == part && h.what == what; });
  };
  if (const auto hole = last("lower side", "bleed"); hole != holes.rend())
    beneath.push_back({hole->at, hole->diameter, times(box.bleed->count) + "bleed hole ", from_rim});
  if (const auto hole = last("upper side", "grommet"); hole != holes.rend())
    above.push_back({hole->at, hole->diameter, "grommet ", from_rim});
  constexpr double step = 11.0;  // mm, a line of words with inches beneath
  const Length edge = 0.5 * box.net->across.total, right = edge - box.net->corner + 3.0 * mm,
               fold = 0.5 * box.net->along.total - box.net->corner + box.lap;
  const bool room = std::all_of(beneath.begin(), beneath.end(), [&](const Pointed& hole) {
    constexpr double letter = 1.95;  // mm, the widest that notes come to
    const bool inches = view.figures == Figures::inches || view.figures == Figures::inches_mm;
    const std::string size = size_text(hole.diameter, inches ? Figures::inches : Figures::mm);
    const std::string words = hole.before + "o" + size.substr(0, size.rfind(' ')) + hole.after;
    return letter * static_cast<double>(words.size()) < in(edge - right, mm);
  });
  for (std::size_t i = 0; i < above.size(); ++i)
    point_out(view, above[i], {right, fold + (6.0 + step * static_cast<double>(i)) * mm});
  for (std::size_t i = 0; i < beneath.size(); ++i)
    point_out(view, beneath[i], {room ? right : edge + 3.0 * mm, -fold - (7.0 + step * static_cast<double>(i)) * mm});
}
// Both ways alike: from the edge to the fold, from fold to fold, over all; and the rows of holes, even about the
// middle.
void dimension_net(View& view, const model::MadeBox& box) {
  const Length half = 0.5 * box.net->across.total, corner = box.net->corner, fold = half - corner;
  const auto beneath = [&](Length from, Length to, double away) {
    view.entities.push_back(LinearDimension{{from, -fold}, {to, -fold}, Along::horizontal, -corner - away * mm});
    view.entities.push_back(LinearDimension{{-fold, from}, {-fold, to}, Along::vertical, -corner - away * mm});
  };
  beneath(-half, -fold, 17.0);
  beneath(-fold, fold, 17.0);
  beneath(-half, half, 26.0);
  const std::vector<SideHole> holes = holes_of_net(box);
  for (const Wall& wall : walls) {
    std::vector<Point> row;
    for (const SideHole& hole : holes)
      if (hole.part == wall.part) row.push_back(hole.at);
    if (row.size() < 2) continue;
    const bool level = wall.out_x == 0.0;
    const double out = wall.out_x + wall.out_y;
    const Length beyond = half - (level ? row[0].y : row[0].x) * out;
    view.entities.push_back(LinearDimension{.from = row[0],
                                            .to = row[1],
                                            .along = level ? Along::horizontal : Along::vertical,
                                            .away = out * (beyond + 8.0 * mm),
                                            .before = row.size() > 2 ? times(static_cast<int>(row.size()) - 1) : ""});
  }
}
// The sheet that folds up to a square box, about the middle of its floor.
View net_view(const model::MadeBox& box, const std::optional<model::FlangeScrews>& screws, Figures figures) {
  View view = of_sheet(box, "Box, flat", figures);
  const Length right = 0.5 * box.net->across.total, top = 0.5 * box.net->along.total;
  const auto from_middle = [&](workshop::PlanePoint p) { return Point{p.x - right, p.y - top}; };
  std::vector<Point> outline;
  for (const workshop::PlanePoint& p : box.net->outline) outline.push_back(from_middle(p));
  view.entities.push_back(Polyline{outline, true, Layer::cut});
  for (const workshop::NetLine& fold : box.net->folds)
    view.entities.push_back(Line{from_middle(fold.from), from_middle(fold.to), Layer::fold});
  dimension_net(view, box);
  if (box.tube_hole) add_bore(view, middle, *box.tube_hole);
  if (screws) {
    view.entities.push_back(Circle{middle, screws->pitch_circle, Layer::centre});
    for (const workshop::PlanePoint& hole : flange_holes(*screws)) add_hole(view, point(hole), screws->clearance);
  }
  for (const SideHole& hole : holes_of_net(box)) add_hole(view, hole.at, hole.diameter);
  point_out_all(view, box, screws);
  view.note = fmt::format("dashed: fold; tabs {} wide; drill {} where fold lines cross", size_text(box.lap, figures),
                          fold_drill(figures == Figures::inches || figures == Figures::inches_mm));
  return view;
}
}  // namespace

std::vector<SideHole> side_holes(const model::MadeBox& box) {
  return box.square ? holes_of_net(box) : holes_of_strip(box);
}
View side_view(const model::MadeBox& box, const std::optional<model::FlangeScrews>& screws, Figures figures) {
  return box.square ? net_view(box, screws, figures) : strip_view(box, figures);
}
}  // namespace lumwright::report::templates_of
