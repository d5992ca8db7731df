#include "plan/check.hpp"
#include <fmt/format.h>

namespace lumwright {
namespace {
std::optional<Finding> judge_power_step_up_minimum(const Solved& solved) {
  if (!solved.supply || !solved.supply->feed.step_up) return std::nullopt;
  const SolvedSupply& s = *solved.supply;
  const StepUp& step_up = *s.feed.step_up;
  Finding f;
  f.value = measure(solved, s.run.end.voltage, "supply.stop_at");
  f.limit = measure(solved, step_up.input_min, "supply.step_up.input_min");
  f.bound = Bound::at_least;
  const bool danger = may_run_away(s.feed, s.run), sinks = sinks_to_minimum(s.feed, s.run);
  f.verdict = danger ? Verdict::fail : sinks ? Verdict::watch : Verdict::pass;
  f.why = fmt::format("the pack is at {} when the run ends; this step-up works down to {}",
                      say(solved, s.run.end.voltage), say(solved, step_up.input_min));
  if (danger) {
    f.why += "; below that its output can rise far above the setting and destroy the fan";
    f.action = "set a cut-out above that voltage, or more cells in series, or another kind of module";
  } else if (sinks) {
    f.action = "set a stop above that voltage: below it the module's output is not to be trusted";
  }
  f.source = s.module ? s.module->source : "tests of hobby boards";
  f.standing = s.module ? s.module->standing : "secondary";
  f.formula = "V_end > V_min";
  f.terms = {computed(solved, "V_end", "pack voltage at the end of the run", s.run.end.voltage),
             computed(solved, "V_min", "least input", step_up.input_min)};
  return f;
}
}  // namespace

Check power_step_up_minimum() {
  return {"power.step_up_minimum", "Pack against the step-up's least input",
          "Can the pack sink below what the step-up needs?", 340, judge_power_step_up_minimum};
}
}  // namespace lumwright
