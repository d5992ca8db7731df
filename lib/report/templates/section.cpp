#include "model/solved_fan.hpp"
#include "report/templates/parts.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report::templates_of {
using namespace drawing;
namespace {
// Both halves of something that is cut through its axis: from `inner` to `outer` off the axis, from `low` to `high`.
struct Cut {
  Length inner, outer, low, high;
};
void add_cut(View& view, const Cut& cut, bool hatched = true) {
  for (const double side : {1.0, -1.0}) {
    const std::vector<Point> wall = {{side * cut.inner, cut.low},
                                     {side * cut.outer, cut.low},
                                     {side * cut.outer, cut.high},
                                     {side * cut.inner, cut.high}};
    view.entities.push_back(Polyline{wall, true, Layer::outline});
    const bool thick = cut.outer - cut.inner > 0.6 * mm && cut.high - cut.low > 0.6 * mm;
    if (hatched && thick) view.entities.push_back(Hatch{{wall}, 1.4 * mm, degrees(45.0)});
  }
}
void point_at(View& view, Point tip, Length right, Length height, const std::string& words) {
  view.entities.push_back(Leader{tip, {right, height}, words});
}
}  // namespace

View section_view(const model::FanUnit& unit, const description::Build& build, Figures figures) {
  View view{.name = "The unit on the chimney, cut through the middle", .figures = figures};
  const model::MadeTube& tube = *unit.tube;
  const model::MadeFlange& flange = *unit.flange;
  const model::MadeBox& box = *unit.box;
  const Length engaged = tube.engaged.value_or(tube.length), top = tube.length - engaged;
  const Length floor = flange.thickness, inside = floor + box.sheet, lid = inside + box.height, roof = lid + box.sheet;
  const Length half_tube = 0.5 * tube.outside, half_box = 0.5 * box.across;
  const auto& chimney = build.engine.chimney;
  const Length deep = chimney.depth ? *chimney.depth : engaged + 5.0 * mm;
  if (chimney.bore) {
    const Length bore = 0.5 * *chimney.bore, wall = chimney.wall ? *chimney.wall : 1.5 * mm;
    add_cut(view, {bore, bore + wall, -deep, 0.0 * mm});
  }
  add_cut(view, {half_tube - tube.wall, half_tube, -engaged, top});
  add_cut(view, {half_tube, 0.5 * flange.outside, 0.0 * mm, floor});
  add_cut(view, {0.5 * box.tube_hole.value_or(tube.outside), half_box, floor, inside});
  add_cut(view, {half_box, half_box + box.sheet, floor, roof});
  const auto lid_open = unit.fan ? model::lid_holes(*unit.fan) : std::nullopt;
  const Length opening = lid_open && lid_open->opening ? 0.5 * *lid_open->opening : 0.4 * half_box;
  add_cut(view, {opening, half_box, lid, roof});
  Length fan_top = roof;
  if (unit.fan) {
    const Length deep_fan = unit.fan->thickness.value_or(15.0 * mm);
    const Length from = unit.fan->inside ? lid - deep_fan : roof,
                 low = lid_open ? lid_open->frame_low.x : -0.5 * unit.fan->frame;
    const Length high = lid_open ? lid_open->frame_high.x : 0.5 * unit.fan->frame;
    add_rectangle(view, {{low, from}, {high, from + deep_fan}}, Layer::outline);
    fan_top = std::max(roof, from + deep_fan);
    view.entities.push_back(
        drawing::Text{{low + 0.2 * (high - low), from + 0.5 * deep_fan}, "fan", 0.0 * mm, Across::centre, Up::middle});
  }
  view.entities.push_back(Line{{0.0 * mm, -deep - 5.0 * mm}, {0.0 * mm, lid - 4.0 * mm}, Layer::centre});
  const Length off = 0.45 * (half_tube - tube.wall);
  view.entities.push_back(Arrow{{{off, -deep - 4.0 * mm}, {off, 0.5 * top}}});
  view.entities.push_back(Arrow{{{off, top + 1.0 * mm}, {0.5 * opening, lid - 3.0 * mm}}});
  const Length right = std::max(half_box + box.sheet, 0.5 * flange.outside) + 10.0 * mm;
  point_at(view, {half_box + 0.5 * box.sheet, 0.5 * (inside + lid)}, right, 0.5 * (inside + lid) + 6.0 * mm, "box");
  point_at(view, {0.5 * flange.outside, 0.5 * floor}, right, floor - 4.0 * mm, "flange");
  point_at(view, {half_tube - 0.5 * tube.wall, -0.4 * engaged}, right, -0.4 * engaged - 4.0 * mm, "tube");
  if (chimney.bore)
    point_at(view, {0.5 * *chimney.bore + 0.5 * mm, -0.8 * deep}, right, -0.8 * deep - 4.0 * mm, "chimney");
  view.entities.push_back(
      LinearDimension{{-half_box - box.sheet, floor}, {-half_box - box.sheet, roof}, Along::vertical, -9.0 * mm});
  view.entities.push_back(LinearDimension{
      {-half_tube, -engaged}, {-half_tube, 0.0 * mm}, Along::vertical, -(half_box - half_tube) - 9.0 * mm, "goes in "});
  view.note = "the arrows are the way of the gas";
  return view;
}
}  // namespace lumwright::report::templates_of
