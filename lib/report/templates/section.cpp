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
void add_cut(View& view, const Cut& cut) {
  for (const double side : {1.0, -1.0}) {
    const std::vector<Point> wall = {{side * cut.inner, cut.low},
                                     {side * cut.outer, cut.low},
                                     {side * cut.outer, cut.high},
                                     {side * cut.inner, cut.high}};
    view.entities.push_back(Polyline{wall, true, Layer::outline});
    const Length least = 0.6 / view.scale * mm;
    const bool thick = cut.outer - cut.inner > least && cut.high - cut.low > least;
    if (thick) view.entities.push_back(Hatch{{wall}, 1.4 * mm, degrees(45.0)});
  }
}
void point_at(View& view, Point tip, Length right, Length height, const std::string& words) {
  view.entities.push_back(Leader{tip, {right, height}, words});
}
void add_fan(View& view, const model::MadeFan& fan, const SectionLevels& at) {
  const auto lid = model::lid_holes(fan);
  const Length low = lid ? lid->frame_low.x : -0.5 * fan.frame, high = lid ? lid->frame_high.x : 0.5 * fan.frame;
  add_rectangle(view, {{low, at.fan_foot}, {high, at.fan_head}}, Layer::outline);
}
void add_ways(View& view, const model::FanUnit& unit, const SectionLevels& at) {
  const Length off = 0.45 * (0.5 * unit.tube->outside - unit.tube->wall), lip = unit.tube->length - at.engaged;
  view.entities.push_back(Arrow{{{off, -at.deep - 4.0 / view.scale * mm}, {off, 0.5 * lip}}});
  view.entities.push_back(Arrow{{{off, lip + 1.0 * mm}, {0.5 * at.opening, at.box.lid - 3.0 * mm}}});
}
}  // namespace

SectionLevels section_levels(const model::FanUnit& unit, const description::Build& build) {
  const model::MadeBox& box = *unit.box;
  SectionLevels at{};
  at.engaged = unit.tube->engaged.value_or(unit.tube->length);
  at.deep = build.engine.chimney.depth ? *build.engine.chimney.depth : at.engaged + 5.0 * mm;
  at.box = model::box_levels(unit);
  at.half_box = 0.5 * box.across;
  const auto lid = unit.fan ? model::lid_holes(*unit.fan) : std::nullopt;
  at.opening = lid && lid->opening ? 0.5 * *lid->opening : 0.4 * at.half_box;
  const Length deep_fan = unit.fan ? unit.fan->thickness.value_or(15.0 * mm) : 0.0 * mm;
  at.fan_foot = unit.fan && unit.fan->inside ? at.box.lid - deep_fan : at.box.roof;
  at.fan_head = at.fan_foot + deep_fan;
  at.top = std::max(at.box.roof, at.fan_head);
  return at;
}

SectionLevels add_section(View& view, const model::FanUnit& unit, const description::Build& build) {
  const SectionLevels at = section_levels(unit, build);
  const model::MadeTube& tube = *unit.tube;
  const model::MadeBox& box = *unit.box;
  const Length half_tube = 0.5 * tube.outside;
  const auto& chimney = build.engine.chimney;
  if (chimney.bore) {
    const Length bore = 0.5 * *chimney.bore, wall = chimney.wall ? *chimney.wall : 1.5 * mm;
    add_cut(view, {bore, bore + wall, -at.deep, 0.0 * mm});
  }
  add_cut(view, {half_tube - tube.wall, half_tube, -at.engaged, tube.length - at.engaged});
  if (unit.flange) add_cut(view, {half_tube, 0.5 * unit.flange->outside, 0.0 * mm, at.box.floor});
  add_cut(view, {0.5 * box.tube_hole.value_or(tube.outside), at.half_box, at.box.floor, at.box.inside});
  add_cut(view, {at.half_box, at.half_box + box.sheet, at.box.floor, at.box.roof});
  add_cut(view, {at.opening, at.half_box, at.box.lid, at.box.roof});
  if (unit.fan) add_fan(view, *unit.fan, at);
  view.entities.push_back(
      Line{{0.0 * mm, -at.deep - 5.0 / view.scale * mm}, {0.0 * mm, at.box.lid - 4.0 * mm}, Layer::centre});
  add_ways(view, unit, at);
  return at;
}

View section_view(const model::FanUnit& unit, const description::Build& build, Figures figures) {
  View view{.name = "The unit on the chimney, cut through the middle", .figures = figures};
  const SectionLevels at = add_section(view, unit, build);
  const model::MadeTube& tube = *unit.tube;
  const model::MadeBox& box = *unit.box;
  const Length half_tube = 0.5 * tube.outside;
  if (unit.fan) {
    const auto lid = model::lid_holes(*unit.fan);
    const Length low = lid ? lid->frame_low.x : -0.5 * unit.fan->frame, wide = unit.fan->frame;
    view.entities.push_back(drawing::Text{
        {low + 0.2 * wide, 0.5 * (at.fan_foot + at.fan_head)}, "fan", 0.0 * mm, Across::centre, Up::middle});
  }
  const Length right = std::max(at.half_box + box.sheet, half_flange(unit)) + 10.0 * mm;
  const Length half_up = 0.5 * (at.box.inside + at.box.lid);
  point_at(view, {at.half_box + 0.5 * box.sheet, half_up}, right, half_up + 6.0 * mm, "box");
  if (unit.flange)
    point_at(view, {0.5 * unit.flange->outside, 0.5 * at.box.floor}, right, at.box.floor - 4.0 * mm, "flange");
  point_at(view, {half_tube - 0.5 * tube.wall, -0.4 * at.engaged}, right, -0.4 * at.engaged - 4.0 * mm, "tube");
  if (build.engine.chimney.bore)
    point_at(view, {0.5 * *build.engine.chimney.bore + 0.5 * mm, -0.8 * at.deep}, right, -0.8 * at.deep - 4.0 * mm,
             "chimney");
  view.note = "the arrows are the way of the gas";
  return view;
}
}  // namespace lumwright::report::templates_of
