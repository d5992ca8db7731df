#include "data/limits.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/days.hpp"
#include "plan/detail/two_limits.hpp"
#include "power/charging.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_power_left_on(const model::Solved& solved) {
  if (!solved.supply || !solved.supply->module) return std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  if (s.pack_input.cell.bank) return std::nullopt;  // switches itself off
  const Current idle = s.module->quiescent;
  const Duration lasts = power::emptied_in(s.pack.full, idle);
  static const AnyQuantity least(data::limit<Duration>("power.left_on least"));
  Finding f;
  judge_by(f, measure(solved, lasts), {Bound::at_least, least, {}});
  f.why = fmt::format(
      "a step-up that stays on the pack takes {} for itself, the fan unplugged or not: a full pack is empty {}{}",
      say(solved, idle), after_days(lasts), s.pack_input.cell.chemistry.spoilt_below_end ? ", and spoilt" : "");
  f.action = f.verdict == Verdict::pass ? "" : "put a switch or a plug between pack and step-up, and open it each time";
  f.basis = s.module->basis;
  f.formula = "t = Q / I_idle";
  f.terms = {computed(solved, "Q", "charge of the pack when full", s.pack.full),
             computed(solved, "I_idle", "what the step-up takes for itself", idle),
             computed(solved, "t", "until it is empty", lasts)};
  return f;
}
}  // namespace

Check power_left_on() {
  return {"power.left_on", "Step-up left on the pack", "How soon does a step-up that nobody takes off empty the pack?",
          judge_power_left_on};
}
}  // namespace lumwright::plan
