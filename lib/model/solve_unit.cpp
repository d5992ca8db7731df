#include "data/shop_rules.hpp"
#include "data/strengths.hpp"
#include "matter/metal.hpp"
#include "model/detail/tube_hole.hpp"
#include "model/fan_unit.hpp"
#include "model/shop_steps.hpp"
#include "model/solved.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_fit.hpp"
#include "model/solving.hpp"
#include "workshop/sheet_cutting.hpp"
#include "workshop/solids.hpp"
#include <algorithm>

namespace lumwright::model {
namespace {
using Missing = std::vector<std::string>;

std::optional<MadeTube> tube_of(const description::Build& build, Inputs& inputs, Missing& missing) {
  const description::part::AdapterTube& tube = build.adapter.tube;
  Missing lacks;
  const auto outside = needed(inputs, tube.outside, lacks),
             length = needed(inputs, tube.length, lacks);
  missing.insert(missing.end(), lacks.begin(), lacks.end());
  if (!outside || !length) return std::nullopt;
  const Length wall = inputs.usual(tube.wall);
  return MadeTube{.outside = *outside,
                  .wall = wall,
                  .length = *length,
                  .engaged = engaged_length(build, inputs),
                  .metal = matter::metal(inputs.usual(tube.material)),
                  .inlet = inputs.usual(tube.inlet),
                  .chamfer = 0.5 * wall};
}

std::optional<FlangeScrews> screws_of(const description::Build& build, const MadeFlange& flange, Missing& missing) {
  const description::part::FlangeHoles& holes = build.adapter.flange.holes;
  if (!holes.count && !holes.pitch_circle && !holes.thread) return std::nullopt;
  note_missing(holes.count, missing);
  note_missing(holes.pitch_circle, missing);
  note_missing(holes.thread, missing);
  if (!holes.count || !holes.pitch_circle || !holes.thread) return std::nullopt;
  const data::ThreadRow& row = workshop::thread(*holes.thread);
  const workshop::ThreadHold hold = workshop::thread_hold({row, flange.thickness, flange.metal.name, 1.0});
  const bool tapped = hold.hold == workshop::Hold::enough || hold.hold == workshop::Hold::short_of_wish;
  const Length clearance = workshop::clearance_hole(row, workshop::ClearanceFit::medium);
  FlangeScrews made{*holes.count, *holes.pitch_circle, row, hold, tapped, tapped ? row.tap : clearance, clearance, {}};
  made.strays = workshop::may_stray({clearance, row.major, tapped});
  return made;
}
// No hole may stray so far that too little metal is left.
Length strays_of(const FlangeScrews& screws, const MadeFlange& flange) {
  const auto spare = [&](Length has) {
    return std::max(has - workshop::judge_edge(has, screws.drill).least, 0.0 * mm);
  };
  Length strays = std::min(screws.strays, spare(workshop::edge_to_rim({flange.outside, screws.pitch_circle})));
  if (flange.tube_hole) strays = std::min(strays, spare(0.5 * (screws.pitch_circle - *flange.tube_hole)));
  return strays;
}
std::optional<MadeFlange> flange_of(const description::Build& build, Inputs& inputs,
                                    const std::optional<MadeTube>& tube, Missing& missing) {
  const description::part::Flange& part = build.adapter.flange;
  Missing lacks;
  const auto outside = needed(inputs, part.outside, lacks),
             thickness = needed(inputs, part.thickness, lacks);
  missing.insert(missing.end(), lacks.begin(), lacks.end());
  if (!outside || !thickness) return std::nullopt;
  MadeFlange made{.outside = *outside,
                  .thickness = *thickness,
                  .metal = matter::metal(inputs.usual(part.material)),
                  .screws = std::nullopt,
                  .tube_hole = std::nullopt,
                  .tube_hole_limits = std::nullopt,
                  .gap = std::nullopt,
                  .joint = inputs.usual(build.adapter.joint)};
  made.screws = screws_of(build, made, missing);
  if (!tube) return made;
  const TubeToJoin joint{inputs.one_of_many() ? exactly(tube->outside) : *build.adapter.tube.outside.band, tube->metal,
                         made.metal, made.joint};
  told_by("heat.joint", "silver braze cannot be used here: ", "screw the tube to its flange or press it in", [&] {
    const TubeHole hole = tube_hole(joint, shop_steps(build));
    made.tube_hole = hole.hole;
    made.tube_hole_limits = hole.limits;
    made.gap = hole.gap;
  });
  if (made.screws) made.screws->strays = strays_of(*made.screws, made);
  return made;
}

void develop(MadeBox& box, const ShopSteps& steps) {
  const Length skirt = data::shop_length("hem").value.value, lap = data::shop_length("sheet lap").value.value;
  box.lap = lap;
  if (box.square) {
    box.net = workshop::square_box({.width = box.across,
                                    .length = box.across,
                                    .height = box.height,
                                    .sheet = box.sheet,
                                    .inside_radius = 0.0 * mm,
                                    .tab = lap,
                                    .hem = 0.0 * mm,
                                    .metal = box.metal,
                                    .wall_step = steps.snipped,
                                    .floor_step = steps.filed});
    box.plate = in_steps(box.across + 2.0 * box.sheet, steps.snipped);
    return;
  }
  box.skirt = skirt;
  box.round = workshop::round_box({box.across, box.height, box.sheet, lap, skirt, workshop::DiscFit::on_top});
  box.round->strip_length = in_steps(box.round->strip_length, steps.snipped);
  box.round->disc_blank = in_steps(box.round->disc_blank, steps.snipped);
  box.round->disc = in_steps_above(box.round->disc, steps.filed);  // it slips over the box
  box.plate = box.round->disc;
}
std::optional<MadeBox> box_of(const description::Build& build, Inputs& inputs, const std::optional<MadeTube>& tube,
                              Missing& missing) {
  const description::part::Box& part = build.adapter.box;
  Missing lacks;
  const auto across = needed(inputs, part.diameter, lacks),
             height = needed(inputs, part.height, lacks),
             sheet = needed(inputs, part.sheet, lacks);
  missing.insert(missing.end(), lacks.begin(), lacks.end());
  if (!across || !height || !sheet) return std::nullopt;
  MadeBox box{.square = inputs.usual(part.shape) == "square",
              .across = *across,
              .height = *height,
              .sheet = *sheet,
              .metal = matter::metal(inputs.usual(part.material)).name,
              .round = std::nullopt,
              .net = std::nullopt,
              .lap = 0.0 * mm,
              .skirt = 0.0 * mm,
              .tube_hole = std::nullopt,
              .tube_hole_limits = std::nullopt,
              .bleed = std::nullopt,
              .grommet = std::nullopt,
              .plate = 0.0 * mm,
              .marked_to = 0.0 * mm};
  const ShopSteps steps = shop_steps(build);
  box.marked_to = steps.snipped;
  develop(box, steps);
  if (tube) {
    const auto& over = data::shop_length("opening over").value;
    box.tube_hole_limits = {tube->outside + over.low, tube->outside + over.high};
    box.tube_hole = workshop::told_in_steps(tube->outside + over.value, *box.tube_hole_limits, {steps.filed});
  }
  const description::part::Bleed& bleed = build.adapter.bleed;
  if (bleed.holes && *bleed.holes > 0 && bleed.diameter) box.bleed = SideHoles{*bleed.holes, *bleed.diameter};
  if (inputs.usual(build.fan.mount) == "inside")
    box.grommet = told_by("power.leads", "the fan's leads go through the wall of the box: ",
                          "thinner leads, or bring them out in a sleeve and write the outside of one", [&] {
                            return workshop::grommet_for({inputs.usual(build.supply.leads.outside), *sheet});
                          });
  return box;
}

std::optional<MadeFan> fan_of(const description::Build& build, Inputs& inputs, Missing& missing) {
  const description::part::FanPart& fan = build.fan;
  note_missing(fan.kind, missing);
  const auto frame = needed(inputs, fan.frame, missing);
  if (!fan.kind || !frame) return std::nullopt;
  const description::part::FanHoles& holes = fan.holes;
  workshop::FanInHand in_hand{.kind = *fan.kind == "axial" ? data::FanKind::axial : data::FanKind::centrifugal,
                              .frame = *frame,
                              .thickness = inputs.known(fan.thickness),
                              .measured = holes.measured && *holes.measured == "yes",
                              .hole_pitch = inputs.known(holes.pitch),
                              .lugs = {},
                              .hole = inputs.known(holes.diameter),
                              .opening = inputs.known(holes.opening)};
  for (const auto& p : holes.lugs.points) in_hand.lugs.push_back({p.x, p.y});
  MadeFan made{.drawing = workshop::fan_drawing(in_hand),
               .axial = in_hand.kind == data::FanKind::axial,
               .inside = inputs.usual(fan.mount) == "inside",
               .frame = *frame,
               .thickness = in_hand.thickness,
               .inlet = std::nullopt,
               .mass = inputs.known(fan.mass)};
  if (!made.axial && !in_hand.measured && made.drawing.pattern) {
    made.drawing.pattern.reset();
    made.drawing.measure_first =
        "centrifugal fans follow no standard: compare these sizes with the one in hand, then write that";
  }
  if (holes.inlet_x && holes.inlet_y)
    made.inlet = workshop::PlanePoint{*inputs.known(holes.inlet_x), *inputs.known(holes.inlet_y)};
  return made;
}

// The tube hangs in the chimney, the flange rests on its mouth, box and fan stand on it.
std::vector<workshop::StackPart> stack_parts(const FanUnit& unit) {
  const MadeTube& tube = *unit.tube;
  const MadeFlange& flange = *unit.flange;
  const MadeBox& box = *unit.box;
  const Length engaged = tube.engaged.value_or(tube.length);
  const Length opening = unit.fan && unit.fan->drawing.pattern && unit.fan->drawing.pattern->opening
                             ? std::min(*unit.fan->drawing.pattern->opening, 0.95 * box.across)
                             : 0.0 * mm;
  const BoxLevels at = box_levels(unit);
  std::vector<workshop::StackPart> parts = {
      {"tube", mass_of(tube), 0.5 * tube.length - engaged, 0.0 * mm},
      {"flange", mass_of(flange), 0.5 * flange.thickness, 0.0 * mm},
      {"box",
       workshop::mass_of(workshop::box_volume({box.across, box.height, box.sheet, box.square, opening,
                                               box.tube_hole.value_or(0.0 * mm)}),
                         box.metal),
       0.5 * (at.floor + at.roof), 0.0 * mm}};
  if (unit.fan && unit.fan->mass) {
    const Length deep = unit.fan->thickness.value_or(0.0 * mm);
    parts.push_back({"fan", *unit.fan->mass, unit.fan->inside ? at.roof - 0.5 * deep : at.roof + 0.5 * deep, 0.0 * mm});
  }
  return parts;
}
std::optional<workshop::Stability> stability_of(const description::Build& build, Inputs& inputs, const FanUnit& unit) {
  const description::part::Chimney& chimney = build.engine.chimney;
  const auto bore = inputs.known(chimney.bore);
  if (!unit.tube || !unit.flange || !unit.box || !unit.fan || !unit.fan->mass || !bore || *bore <= unit.tube->outside)
    return std::nullopt;
  const Length wall = inputs.known(chimney.wall).value_or(0.0 * mm);
  const Length deep = unit.fan->inside ? 0.0 * mm : unit.fan->thickness.value_or(0.0 * mm);
  return workshop::stability({.parts = stack_parts(unit),
                              .engaged = unit.tube->engaged.value_or(unit.tube->length),
                              .clearance = *bore - unit.tube->outside,
                              .seat = std::min(0.5 * unit.flange->outside, 0.5 * *bore + wall),
                              .top = box_levels(unit).roof + deep,
                              .push = workshop::usual_knock(),
                              .chimney = {.bore = *bore,
                                          .wall = inputs.known(chimney.wall),
                                          .height = inputs.known(chimney.depth),
                                          .metal = matter::metal(inputs.usual(chimney.material)).name}});
}
}  // namespace

std::optional<LidHoles> lid_holes(const MadeFan& fan) {
  if (!fan.drawing.pattern) return std::nullopt;
  const workshop::FanPattern& pattern = *fan.drawing.pattern;
  if (!fan.axial && !fan.inlet) return std::nullopt;
  const workshop::PlanePoint middle =
      fan.inlet.value_or(workshop::PlanePoint{0.5 * pattern.width, 0.5 * pattern.height});
  LidHoles lid{.screws = {},
               .screw_hole = pattern.hole,
               .opening = pattern.opening,
               .strays = std::nullopt,
               .frame_low = {0.0 * mm - middle.x, 0.0 * mm - middle.y},
               .frame_high = {pattern.width - middle.x, pattern.height - middle.y}};
  for (const workshop::PlanePoint& hole : pattern.holes) lid.screws.push_back({hole.x - middle.x, hole.y - middle.y});
  if (!pattern.screws.empty())
    lid.strays = workshop::may_stray({pattern.hole, workshop::thread(pattern.screws.front()).major, false});
  return lid;
}

Outcome<FanUnit> solve_unit(const description::Build& build, Inputs& inputs, const workshop::LimitsWhenAsked& limits) {
  return attempt<FanUnit>([&](Missing& missing) -> std::optional<FanUnit> {
    FanUnit unit{};
    unit.tube = tube_of(build, inputs, unit.missing);
    if (unit.tube) unit.tube->limits = limits;
    unit.flange =
        told_by("make.thread", "", "write the name of a thread that is listed, or measure the flange once more",
                [&] { return flange_of(build, inputs, unit.tube, unit.missing); });
    unit.box = told_by("make.lid", "the box cannot be made: ", "measure the box once more, or take a sheet that bends",
                       [&] { return box_of(build, inputs, unit.tube, unit.missing); });
    unit.fan = told_by("make.lid", "the fan cannot be like this: ", "measure the fan's frame and its holes once more",
                       [&] { return fan_of(build, inputs, unit.missing); });
    if (!unit.tube && !unit.flange && !unit.box && !unit.fan) {
      missing = unit.missing;
      return std::nullopt;
    }
    unit.stability = told_by("make.lid", "the unit cannot be put together: ", "measure tube, flange and box once more",
                             [&] { return stability_of(build, inputs, unit); });
    return unit;
  });
}
}  // namespace lumwright::model
