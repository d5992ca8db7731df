#include "data/limits.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "power/step_up.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
// The solder of its own joints melts at some 220 degC; from memory.
const Temperature beyond_solder = degC(220);

std::optional<Finding> judge_power_step_up_heat(const model::Solved& solved) {
  if (!solved.supply || !solved.supply->feed.step_up) return std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  if (!s.module) return lacking(solved.build.supply.step_up.module);
  const auto loss_of = [](const power::SupplyState& state) { return state.step_up ? state.step_up->loss : 0.0 * W; };
  const Power loss = s.end ? std::max(loss_of(s.start), loss_of(*s.end)) : loss_of(s.start);
  const power::StepUpHeat heat{
      solved.inputs.find("place.air") ? kelvin(solved.inputs.find("place.air")->value.si) : degC(15),
      s.module->hot_spot_per_loss};
  const Temperature spot = power::hot_spot(heat, loss);
  Finding f;
  static const TemperatureRise kept = data::limit<TemperatureRise>("power.step_up_heat kept");
  judge_by(f, measure(solved, spot),
           {Bound::at_most, AnyQuantity(s.module->hot_spot_limit - kept), AnyQuantity(s.module->hot_spot_limit)});
  f.why =
      fmt::format("it turns {} into heat at worst; in free air its hottest part comes to about {}{}", say(solved, loss),
                  say(solved, spot), spot > beyond_solder ? ", or would, had it not burnt out before" : "");
  if (f.verdict != Verdict::pass)
    f.action = "a larger step-up, more input voltage, or keep it in moving air away from the boiler";
  f.basis = s.module->basis;
  f.formula = "T = T_air + R_th P_loss";
  f.terms = {term(solved, "T_air", "air", solved.build.place.air),
             computed(solved, "R_th", "hot spot above the air for each watt", s.module->hot_spot_per_loss),
             computed(solved, "P_loss", "loss in the step-up", loss)};
  return f;
}
}  // namespace

Check power_step_up_heat() {
  return {"power.step_up_heat", "Heat in the step-up", "Does the step-up stay cool enough?", judge_power_step_up_heat};
}
}  // namespace lumwright::plan
