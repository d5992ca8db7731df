#include "report/detail/build_sheet_steps.hpp"
#include "data/strengths.hpp"
#include "model/fan_unit.hpp"
#include "model/solved_fan.hpp"
#include "plan/figures.hpp"
#include "plan/u_tube.hpp"
#include "report/answers.hpp"
#include "report/detail/build_sheet_parts.hpp"
#include "report/templates/templates.hpp"
#include "workshop/sheet_cutting.hpp"
#include <fmt/format.h>

namespace lumwright::report {
namespace {
BenchStep measure_step(const model::FanUnit& unit, description::FrontEnd front) {
  std::string text =
      "Take the sizes under \"Measure before you cut\" once more, with the parts in hand. Print the templates at 100 "
      "%, never \"fit to page\", and measure both bars on the paper; " +
      description::way("print-again", front) + ".";
  if (unit.fan && !unit.fan->drawing.measure_first.empty())
    text += " The fan: " + unit.fan->drawing.measure_first + ".";
  return {"measure", "Measure and print", text};
}
/// ", within 17.05 to 17.28 mm": as the drawing has them.
std::string within(const std::optional<workshop::Limits>& limits, drawing::Figures figures) {
  if (!limits) return "";
  const bool inches = figures == drawing::Figures::inches || figures == drawing::Figures::inches_mm;
  return fmt::format(", within {} {}", limits_text(limits->least, limits->most, figures), inches ? "in" : "mm");
}
BenchStep flange_step(const model::MadeFlange& flange, drawing::Figures figures, const TextStyle& style) {
  std::string text = fmt::format(
      "Saw a disc out of {}, stick the template on or mark out from the co-ordinates, "
      "centre-punch every cross and drill with the plate clamped.",
      flange.metal.name);
  if (flange.tube_hole)
    text += fmt::format(" Bore the hole for the tube to {}{} on the lathe, then turn the rim to {}.",
                        bench_size({*flange.tube_hole}, style),
                        flange.tube_hole_limits || flange.joint == "screwed"
                            ? within(flange.tube_hole_limits, figures)
                            : " if the tube is as written: measure it first, it is not known well enough",
                        bench_size({flange.outside}, style));
  if (flange.screws && flange.screws->tapped)
    text += fmt::format(" Tap the screw holes {}.", flange.screws->thread.name);
  return {"flange", "Flange", text};
}
BenchStep tube_step(const model::MadeTube& tube, drawing::Figures figures, const TextStyle& style) {
  std::string text;
  if (tube.limits().tube)
    text = fmt::format(
               "Measure its outside where it goes into the chimney, with a micrometer at three places across "
               "two directions: each{}. ",
               within(tube.limits().tube, figures).substr(1)) +
           fmt::format("The flange is worked out for {}: write down another size and print the sheets again. ",
                       bench_size({tube.outside}, style));
  if (tube.limits().bore)
    text = fmt::format("The chimney as it is does not let this tube in: bore it out{}, or take another tube. ",
                       within(tube.limits().bore, figures));
  text += fmt::format(
      "Cut it to {}, both ends square, on a mandrel of wood so that it stays round. Break the outer "
      "edge of the end that goes into the chimney all round, and take the burr out of the bore. Try it "
      "in the cold chimney now: it must go in and turn freely.",
      bench_size({tube.length}, style));
  return {"tube", "Tube", text};
}
BenchStep join_step(const model::FanUnit& unit, const TextStyle& style) {
  const model::MadeFlange& flange = *unit.flange;
  if (flange.joint != "silver braze")
    return {"join", "Join tube and flange",
            fmt::format("{}: the joint gets as hot as the gas; see \"Joint of tube and flange\" in the report. Nothing "
                        "may stand proud "
                        "of the tube where it enters the chimney.",
                        flange.joint == "soft solder" ? "Soft solder"
                        : flange.joint == "screwed"   ? "Screw"
                                                      : "Press"),
            flange.joint == "soft solder" ? std::vector<std::string>{"solder"} : std::vector<std::string>{}};
  std::string text = "Clean both to bright metal, flux them, and hold them square.";
  if (flange.gap)
    text += fmt::format(" The gap on each side is {} cold and {} at brazing heat; {} to {} is right.",
                        show({flange.gap->cold.value}, style, 2), show({flange.gap->hot.value}, style, 2),
                        show({flange.gap->least}, style, 2), show({flange.gap->most}, style, 2));
  text +=
      " Heat the flange, not the tube, until the filler runs round by itself. Let it go black before you move it, "
      "pickle, wash, and true the tube on its mandrel: brazing has made it soft. Face the flange afterwards.";
  return {"join", "Braze the tube into the flange", text, {"braze"}};
}
std::vector<BenchStep> box_steps(const model::MadeBox& box, bool inches, const TextStyle& style) {
  const workshop::SawAdvice saw = workshop::saw_for_sheet(box.sheet);
  std::string cut = "Stick the templates on the flat sheet, cut outside the line with snips and file to it.";
  if (!saw.three_teeth)
    cut += " No saw blade has three teeth in sheet this thin: saw it between two boards, or tilt the blade.";
  cut += fmt::format(
      " Drill while everything is flat, backed with wood and clamped, in the order of the drill list. A "
      "burr over {} is too much.",
      show({0.1 * box.sheet}, style, 2));
  const std::string shape =
      box.square
          ? fmt::format("Drill {} where fold lines cross, fold over a hard edge, tabs inside, and solder the corners.",
                        fold_drill(inches))
          : fmt::format(
                "Roll the strip round a bar, lap {}, and solder or rivet the seam; turn the rims of lid and "
                "bottom by {} and try both on.",
                show({box.lap}, style), show({box.skirt}, style));
  return {{"cut", "Cut and drill the box", cut},
          {"shape", "Shape the box", shape + " Rivet what lies beside the hot tube: no solder there.",
           box.square ? std::vector<std::string>{"solder"} : std::vector<std::string>{"roll", "solder"}}};
}
BenchStep assemble_step(const model::FanUnit& unit) {
  std::string text = "Screw the flange under the bottom";
  if (unit.flange && unit.flange->screws)
    text += fmt::format(" with {} {} screw{}{}", unit.flange->screws->count, unit.flange->screws->thread.name,
                        unit.flange->screws->count > 1 ? "s" : "",
                        unit.flange->screws->tapped      ? ""
                        : unit.flange->screws->count > 1 ? " and nuts"
                                                         : " and a nut");
  text += ", and the fan on the lid with its arrow pointing away from the box";
  if (unit.fan && unit.fan->drawing.pattern && !unit.fan->drawing.pattern->screws.empty())
    text += fmt::format(" with {} screws, nuts and washers", unit.fan->drawing.pattern->screws.back());
  text += ". The lid must come off again: the fan must be cleaned.";
  return {"assemble", "Put it together", text};
}
BenchStep wire_step(const description::Build& build) {
  std::string text = "The fuse goes at the pack, before anything else.";
  if (build.supply.step_up.module || build.supply.step_up.output)
    text += " Set the step-up with a meter before the fan is connected.";
  text +=
      " Run the wires well away from hot metal, loosely, so that a foot in the cable pulls a plug and not the engine.";
  return {"wire", "Wire it", text};
}
BenchStep try_step(const plan::Assessment& a, const TextStyle& style) {
  std::string text =
      "Out of doors, engine cold, no fire: sit the unit on the chimney and run it. A strip of paper at the "
      "fire-door must be drawn in.";
  if (const model::Result* suction = plan::find_result(a, "draught.cold_smokebox_depression"); suction != nullptr)
    text += fmt::format(
        " A U-tube on the smokebox should read {}. Without a tapping: lay a thin brass tube across the "
        "edge of the smokebox door, close the door on it with clay all round, and let its end lie at "
        "the side of the smokebox, out of the draught; its other end goes to one leg, the other leg "
        "stays open.",
        plan::u_tube_reading(std::get<model::Measure>(suction->value), style.units,
                             plan::figures_of(*suction, style.units)));
  if (const std::string current = number_of(a, "power.pack_current_start", style); !current.empty())
    text += fmt::format(" The full pack should give {}.", current);
  return {"try", "Try it cold", text};
}
BenchStep light_step(const plan::Assessment& a, const TextStyle& style) {
  std::string text = "Water first, then fire.";
  if (const std::string time = number_of(a, "raise.to_own_blower", style); !time.empty())
    text += fmt::format(" The engine's own blower should take over after {}.", time);
  text += " Write down times, temperatures and readings: " + description::way("learns", style.front) + ".";
  return {"light", "First lighting-up", text};
}
}  // namespace

std::vector<BenchStep> steps_of(const plan::Assessment& assessment, const model::Solved& solved,
                                const TextStyle& style) {
  const model::FanUnit& unit = *solved.unit;
  std::vector<BenchStep> steps = {measure_step(unit, style.front)};
  const drawing::Figures figures = figures_for(solved.build, style.units);
  if (unit.flange) steps.push_back(flange_step(*unit.flange, figures, style));
  if (unit.tube) steps.push_back(tube_step(*unit.tube, figures, style));
  if (unit.flange && unit.tube) steps.push_back(join_step(unit, style));
  if (unit.box)
    for (BenchStep& step : box_steps(*unit.box, marks_out_in_inches(solved, style.units), style))
      steps.push_back(std::move(step));
  if (unit.box && unit.fan) steps.push_back(assemble_step(unit));
  steps.push_back(wire_step(solved.build));
  steps.push_back(try_step(assessment, style));
  steps.push_back(light_step(assessment, style));
  return steps;
}
}  // namespace lumwright::report
