#include "data/fits.hpp"
#include "quantity/inches.hpp"
#include "report/build_sheet.hpp"
#include "workshop/sheet_cutting.hpp"
#include "workshop/thread.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
constexpr std::string_view inch_set = "inch";
std::string bare(Length length, std::string_view set) {
  const std::string fraction = set == inch_set ? inch_fraction(AnyQuantity(length)) : "";
  return !fraction.empty() ? fraction : fmt::format("{:.4g}", set == inch_set ? in(length, inch) : in(length, mm));
}
std::string sized(Length length, std::string_view set) { return bare(length, set) + (set == inch_set ? " in" : " mm"); }

const std::string& smallest_drill() { return data::drills().front().name; }
std::string in_plate(Length diameter, std::string_view set) {
  if (diameter < data::drills().front().diameter)
    return fmt::format("smaller than the smallest drill listed here ({}): a drill for watchmakers in a pin vice",
                       smallest_drill());
  constexpr double largest_drill = 13.0;
  if (in(diameter, mm) > largest_drill) return "drill, then bore to size on the lathe";
  std::string text;
  for (const data::DrillRow& drill : workshop::plate_drills(diameter, set))
    text += (text.empty() ? "" : ", then ") + drill.name;
  return text + " drill";
}
/// To the nearest that filing can tell.
std::string filed(Length left, std::string_view set) {
  const Length finest = data::length_rule("finest filing").value.value;
  const Length step = set == inch_set ? std::round(in(finest, thou)) * thou : finest;
  const Length off = std::round(in(left, step)) * step;
  if (!(off > 0.0 * mm)) return "file to size";
  return fmt::format("file {} out on diameter",
                     set == inch_set ? fmt::format("{:.0f} thou", in(off, thou)) : sized(off, set));
}
std::string in_sheet(Length diameter, Length sheet, std::string_view set) {
  const workshop::SheetHolePlan plan = workshop::sheet_hole({diameter, sheet, set});
  if (plan.twist) return plan.twist->name + " drill, the sheet between boards";
  if (plan.finish == workshop::HoleFinish::prick)
    return fmt::format("smaller than the smallest drill listed here ({}): prick with a needle, dress the burr",
                       smallest_drill());
  std::string text;
  if (plan.pilot)
    text = "pilot " +
           (set == inch_set ? workshop::nearest_drill(*plan.pilot, "fractional").name : sized(*plan.pilot, set));
  if (plan.drill && !plan.steps.empty()) {
    text += (text.empty() ? "" : ", ") + std::string("step drill ");
    if (set == inch_set)
      text += "up to " + sized(plan.steps.back(), set);
    else
      for (const Length& step : plan.steps) text += (step == plan.steps.front() ? "" : "-") + bare(step, set);
    if (set != inch_set) text += " mm";
  }
  if (plan.finish == workshop::HoleFinish::file) text += ", " + filed(plan.left, set);
  if (plan.finish == workshop::HoleFinish::cut_out)
    text += ", then piercing saw or hole saw, and a half-round file to the line";
  return text;
}
}  // namespace

std::vector<Drilling> drillings(const model::FanUnit& unit, std::string_view set) {
  std::vector<Drilling> all;
  if (unit.flange && unit.flange->screws) {
    const model::FlangeScrews& s = *unit.flange->screws;
    const std::string tap = s.tapped ? fmt::format(", then tap {}", s.thread.name) : "";
    all.push_back({s.drill, s.count, "flange, screws", in_plate(s.drill, set) + tap});
    if (unit.box)
      all.push_back({s.clearance, s.count, "bottom, flange screws", in_sheet(s.clearance, unit.box->sheet, set)});
  }
  if (unit.flange && unit.flange->tube_hole)
    all.push_back({*unit.flange->tube_hole, 1, "flange, for the tube", in_plate(*unit.flange->tube_hole, set)});
  if (unit.box) {
    const model::MadeBox& box = *unit.box;
    if (box.tube_hole)
      all.push_back({*box.tube_hole, 1, "bottom, for the tube", in_sheet(*box.tube_hole, box.sheet, set)});
    if (box.bleed)
      all.push_back(
          {box.bleed->diameter, box.bleed->count, "side, bleed", in_sheet(box.bleed->diameter, box.sheet, set)});
    if (box.grommet)
      all.push_back(
          {box.grommet->grommet.hole, 1, "side, grommet", in_sheet(box.grommet->grommet.hole, box.sheet, set)});
    if (const auto lid = unit.fan ? model::lid_holes(*unit.fan) : std::nullopt) {
      all.push_back({lid->screw_hole, static_cast<int>(lid->screws.size()), "lid, fan screws",
                     in_sheet(lid->screw_hole, box.sheet, set)});
      if (lid->opening) all.push_back({*lid->opening, 1, "lid, cut-out", in_sheet(*lid->opening, box.sheet, set)});
    }
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const Drilling& a, const Drilling& b) { return a.diameter < b.diameter; });
  return all;
}
}  // namespace lumwright::report
