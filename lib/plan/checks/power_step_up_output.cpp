#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "power/output_draw.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
void judge_end(Finding& f, const model::Solved& solved, Voltage at, Voltage most) {
  judge_by(f, measure(solved, at), {Bound::at_most, AnyQuantity(most), AnyQuantity(most)});
}
std::optional<Finding> judge_power_step_up_output(const model::Solved& solved) {
  if (!solved.supply || !solved.supply->feed.step_up) return std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  if (!s.input_most && !s.output_most)
    return lacking(solved.build.supply.step_up.module, solved.build.supply.step_up.output_most);
  const Voltage set = s.feed.step_up->output, rest = s.run.start.open_circuit;
  Finding f;
  f.verdict = Verdict::pass;
  if (s.output_most) judge_end(f, solved, set, *s.output_most);
  if (f.verdict == Verdict::pass && s.input_most) {
    Finding input;
    judge_end(input, solved, rest, *s.input_most);
    if (!s.output_most || input.verdict == Verdict::fail) f = input;
  }
  f.why = fmt::format("it is set to {}", say(solved, set));
  if (s.output_most) f.why += fmt::format(" and can be set to {} at most", say(solved, *s.output_most));
  f.why += fmt::format("; a fresh pack puts {} on its input", say(solved, rest));
  if (s.input_most) f.why += fmt::format(", which stands {}", say(solved, *s.input_most));
  if (f.verdict != Verdict::pass)
    f.action = "another kind of step-up, a lower setting, or fewer cells: its parts break down above that";
  f.basis = s.module ? s.module->basis : data::Basis{data::Standing::measured, "what you stated"};
  f.formula = "V_set <= V_out,most; E <= V_in,most";
  f.terms = {computed(solved, "V_set", "output as set", set), computed(solved, "E", "pack, fresh and at rest", rest)};
  return f;
}
}  // namespace

Check power_step_up_output() {
  return {"power.step_up_output", "What the step-up stands", "Is it asked for more volts than its parts stand?",
          judge_power_step_up_output};
}
}  // namespace lumwright::plan
