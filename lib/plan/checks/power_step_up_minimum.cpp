#include "data/limits.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "power/light_ups.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {

std::optional<Finding> judge_power_step_up_minimum(const model::Solved& solved) {
  if (!solved.supply || !solved.supply->feed.step_up) return std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  const power::StepUp& step_up = *s.feed.step_up;
  Finding f;
  // A pack that nothing stops above the least input sinks to it, also one that collapses.
  const Voltage end =
      power::sinks_to_minimum(s.feed, s.run) ? std::min(s.run.end.voltage, step_up.input_min) : s.run.end.voltage;
  static const double in_hand = data::limit<double>("power.step_up_minimum in hand");
  const AnyQuantity least(in_hand * step_up.input_min);
  judge_by(f, measure(solved, end), {Bound::at_least, least, step_up.runs_away ? std::optional(least) : std::nullopt},
           "V");
  f.why =
      fmt::format("the pack {} {} when the run ends; this step-up works down to {}, and a stop has its own spread",
                  end < s.run.end.voltage ? "sinks on to" : "is at", say(solved, end), say(solved, step_up.input_min));
  // nor may the cells be driven below their own end
  const power::PackInput& pack = s.pack_input;
  const Voltage cells_end = static_cast<double>(pack.series * pack.cell.cells_inside) * pack.cell.chemistry.end,
                stop = std::max(in_hand * step_up.input_min, pack.cell.bank ? 0.0 * V : cells_end);
  if (f.verdict == Verdict::fail) {
    f.why += "; below that its output can rise far above the setting and destroy the fan";
    f.action = fmt::format("set a cut-out at {} or above, or more cells in series, or another kind of step-up",
                           say(solved, stop));
  } else if (f.verdict == Verdict::watch) {
    f.action =
        fmt::format("stop at {} or above: below it the step-up's output is not to be trusted", say(solved, stop));
  }
  f.basis = s.module ? s.module->basis : data::Basis{data::Standing::secondary, "tests of hobby step-ups"};
  f.formula = "V_end >= 1.02 V_min";
  f.terms = {computed(solved, "V_end", "pack voltage at the end of the run", end),
             computed(solved, "V_min", "least input", step_up.input_min)};
  return f;
}
}  // namespace

Check power_step_up_minimum() {
  return {"power.step_up_minimum", "Pack against the step-up's least input",
          "Can the pack sink below what the step-up needs?", judge_power_step_up_minimum};
}
}  // namespace lumwright::plan
