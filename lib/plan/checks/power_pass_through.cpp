#include "plan/check.hpp"
#include <fmt/format.h>

namespace lumwright {
namespace {
std::optional<Finding> judge_power_pass_through(const Solved& solved) {
  if (!solved.supply || !solved.supply->feed.step_up || !solved.supply->start.step_up) return std::nullopt;
  const SolvedSupply& s = *solved.supply;
  if (!s.start.step_up->passes_through) return std::nullopt;
  Finding f;
  f.value = measure(solved, s.start.step_up->output, "supply.step_up.output");
  f.limit = measure(solved, s.feed.step_up->output, "supply.step_up.output");
  f.verdict = Verdict::watch;
  f.why = fmt::format(
      "a fresh pack stands at {}, above the {} the step-up is set to: a step-up cannot lower a voltage, it passes it "
      "on",
      say(solved, s.run.start.voltage), say(solved, s.feed.step_up->output));
  f.action = "drive the fan from the pack directly, or use fewer cells";
  f.source = "a step-up passes its input through its coil and diode when idle (circuit theory)";
  f.standing = "derived";
  f.formula = "V_out >= V_in - diode drop";
  f.terms = {computed(solved, "V_in", "pack, fresh", s.run.start.voltage),
             computed(solved, "V_out", "output then", s.start.step_up->output)};
  return f;
}
}  // namespace

Check power_pass_through() {
  return {"power.pass_through", "Pack above the step-up's output",
          "Is the pack's voltage above what the step-up is set to?", 355, judge_power_pass_through};
}
}  // namespace lumwright
