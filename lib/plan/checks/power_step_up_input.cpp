#include "data/limits.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_power_step_up_input(const model::Solved& solved) {
  if (!solved.supply) return solved.build.supply.step_up.output ? std::optional(unsolved(solved.supply)) : std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  if (!s.feed.step_up) return std::nullopt;
  if (!s.input_limit) return lacking(solved.build.supply.step_up.input_limit);
  Finding f;
  static const double share = data::limit<double>("power.step_up_input share");
  judge_by(f, measure(solved, s.run.most_current),
           {Bound::at_most, AnyQuantity(share * *s.input_limit), AnyQuantity(*s.input_limit)});
  f.why = fmt::format(
      "the step-up draws {} from a fresh pack and {} at the end, when the voltage is lowest; it carries {} for long",
      say(solved, s.run.start.current), say(solved, s.run.most_current), say(solved, *s.input_limit));
  if (f.verdict != Verdict::pass)
    f.action = s.run.start.open_circuit > s.feed.step_up->output
                   ? "a larger step-up, or a fan that asks less"  // more cells would stand above what it is set to
                   : "more cells in series (less current for the same power), a higher stop, or a larger step-up";
  f.basis = s.module ? s.module->basis : data::Basis{data::Standing::measured, "what you stated"};
  f.formula = "V I = output power + losses(V, I)";
  f.terms = {computed(solved, "I_0", "input current, pack fresh", s.run.start.current),
             computed(solved, "I_1", "most input current", s.run.most_current),
             computed(solved, "V_1", "pack voltage at the end", s.run.end.voltage),
             computed(solved, "P", "power at the fan", s.start.fan)};
  if (s.run.step_up_efficiency_start)
    f.terms.push_back(computed(solved, "n", "efficiency, pack fresh", *s.run.step_up_efficiency_start));
  return f;
}
}  // namespace

Check power_step_up_input() {
  return {"power.step_up_input", "Current into the step-up", "Does the step-up draw more than it can carry?",
          judge_power_step_up_input};
}
}  // namespace lumwright::plan
