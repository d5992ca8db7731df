#include "model/solved_fan.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "power/output_draw.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_power_pass_through(const model::Solved& solved) {
  if (!solved.supply || !solved.supply->feed.step_up) return std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  const power::StepUp step_up = *power::step_up_in_use(s.feed);
  const Voltage rest = s.run.start.open_circuit, lifted = rest - step_up.passing_drop;  // before the fan turns
  if (!(lifted > step_up.output)) return std::nullopt;
  std::optional<Voltage> most = s.output_most;
  if (solved.fan) most = std::min(most.value_or(solved.fan->motor->highest), solved.fan->motor->highest);
  Finding f;
  judge_by(f, measure(solved, lifted),
           {Bound::at_most, AnyQuantity(step_up.output), most ? std::optional(AnyQuantity(*most)) : std::nullopt});
  f.why = fmt::format(
      "a fresh pack stands at {}, above the {} the step-up is set to: a step-up cannot lower a voltage, even switched "
      "off, so {} reach the fan",
      say(solved, rest), say(solved, step_up.output), say(solved, lifted));
  if (f.verdict == Verdict::fail)
    f.why += fmt::format("; {} is the most that fan and step-up stand", say(solved, *most));
  const bool too_strong = solved.fan && rest > solved.fan->motor->highest;
  f.action = too_strong ? "use fewer cells, or a step-down in place of the step-up"
                        : "drive the fan from the pack directly, or use fewer cells";
  f.basis.source = "idle, a step-up lets its input through coil and diode to the fan (circuit theory)";
  f.basis.standing = data::Standing::derived;
  f.formula = "V_out >= V_in - diode drop";
  f.terms = {computed(solved, "V_in", "pack, fresh and at rest", rest),
             computed(solved, "V_out", "output then", lifted)};
  return f;
}
}  // namespace

Check power_pass_through() {
  return {"power.pass_through", "Pack above the step-up's output",
          "Is the pack's voltage above what the step-up is set to?", judge_power_pass_through};
}
}  // namespace lumwright::plan
