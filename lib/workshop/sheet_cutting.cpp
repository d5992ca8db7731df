#include "workshop/sheet_cutting.hpp"
#include "data/shop_rules.hpp"
#include "quantity/require.hpp"
#include "workshop/thread.hpp"
#include <algorithm>
#include <cmath>
#include <numbers>

namespace lumwright::workshop {
namespace {
constexpr double cut_exactly = 1e-9;  // relative: a step of 20 mm is a 20 mm hole

std::optional<data::SawBlade> coarsest_with(double teeth, Length sheet) {
  std::optional<data::SawBlade> found;
  for (const data::SawBlade& blade : data::saw_blades())
    if (teeth * blade.tooth_pitch <= sheet) found = blade;
  return found;
}
std::vector<Length> steps_to(const data::StepDrill& drill, Length hole) {
  std::vector<Length> steps;
  const long last = std::lround((drill.last - drill.first) / drill.step);
  for (long k = 0; k <= last; ++k) {
    const Length size = drill.first + static_cast<double>(k) * drill.step;
    if (size <= hole * (1.0 + cut_exactly)) steps.push_back(size);
  }
  return steps;
}
}  // namespace

SawAdvice saw_for_sheet(Length sheet) {
  require_above_zero("thickness of the sheet", sheet, "mm");
  const double teeth = data::shop_number("teeth in cut").value.value,
               least = data::shop_number("teeth in cut").value.low;
  const data::SawBlade& finest = data::saw_blades().front();
  const Length needed = teeth * finest.tooth_pitch;
  return {.wanted_tooth_pitch = sheet / teeth,
          .wanted_teeth_per_inch = inch / (sheet / teeth),
          .three_teeth = coarsest_with(teeth, sheet),
          .two_teeth = coarsest_with(least, sheet),
          .finest = finest,
          .tilt = sheet >= needed ? 0.5 * std::numbers::pi : std::asin(sheet / needed),
          .stack = std::max(needed, sheet)};
}

SheetHolePlan sheet_hole(const SheetHole& hole) {
  require_above_zero("hole in the sheet", hole.diameter, "mm");
  require_above_zero("thickness of the sheet", hole.sheet, "mm");
  SheetHolePlan plan{.pilot = data::shop_length("pilot").value.value,
                     .twist = std::nullopt,
                     .drill = std::nullopt,
                     .steps = {},
                     .finish = HoleFinish::cut_out,
                     .left = hole.diameter,
                     .burr = data::shop_number("burr share").value.value * hole.sheet};
  const data::StepDrill* best = nullptr;
  for (const data::StepDrill& drill : data::step_drills()) {
    if (drill.series != (hole.drills == "inch" ? "inch" : "metric")) continue;
    const std::vector<Length> steps =
        hole.sheet < drill.height ? steps_to(drill, hole.diameter) : std::vector<Length>{};
    constexpr double worth = 0.5;  // of a step: what it must take off the hole of the pilot
    if (steps.empty() || steps.back() - *plan.pilot < worth * drill.step) continue;
    if (best != nullptr && steps.back() <= plan.steps.back()) continue;
    best = &drill;
    plan.steps = steps;
  }
  if (best != nullptr && hole.diameter - plan.steps.back() < best->step) {
    const Length left = hole.diameter - plan.steps.back();
    const bool on_size = left < cut_exactly * hole.diameter;
    plan.drill = *best;
    plan.left = on_size ? 0.0 * mm : left;
    plan.finish = on_size ? HoleFinish::on_size : HoleFinish::file;
    return plan;
  }
  plan.steps.clear();
  if (best != nullptr || hole.diameter > data::drills().back().diameter) return plan;
  if (hole.diameter < data::drills().front().diameter) {
    plan.pilot = std::nullopt;
    plan.left = 0.0 * mm;
    plan.finish = HoleFinish::prick;
    return plan;
  }
  plan.twist = drill_for(hole.diameter, hole.drills);
  plan.pilot = std::nullopt;
  plan.left = 0.0 * mm;
  plan.finish = HoleFinish::on_size;
  return plan;
}

std::vector<data::DrillRow> plate_drills(Length diameter, std::string_view series) {
  std::vector<data::DrillRow> order{drill_for(diameter, series)};
  while (order.back().diameter > data::shop_length("pilot above").value.value)
    order.push_back(nearest_drill(0.5 * order.back().diameter, series.empty() ? "metric" : series));
  std::reverse(order.begin(), order.end());
  return order;
}
}  // namespace lumwright::workshop
