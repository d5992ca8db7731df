#include "data/limits.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::string told(power::StopReason reason) {
  switch (reason) {
    case power::StopReason::stop_at:
      return "you, or a cut-out, stop it at the set voltage";
    case power::StopReason::collapse:
      return "the pack collapses: the load asks for more than it can give";
    case power::StopReason::step_up_minimum:
      return "the pack sinks to the least input of the step-up";
    case power::StopReason::empty:
      return "the charge is used up";
  }
  return "";
}
std::optional<Finding> judge_power_stop(const model::Solved& solved) {
  if (!solved.supply) return unsolved(solved.supply);
  const power::Run& run = solved.supply->run;
  Finding f;
  const bool sudden = run.reason == power::StopReason::collapse || run.reason == power::StopReason::step_up_minimum;
  static const double most_left = data::limit<double>("power.stop left");
  judge_by(f, {AnyQuantity(run.charge_left_share), "%"}, {Bound::at_most, AnyQuantity(most_left), {}});
  const bool wasteful = f.verdict == Verdict::watch;
  if (sudden) {  // whatever is left
    f.verdict = Verdict::watch;
    f.value = f.limit = std::nullopt;
  }
  f.why =
      fmt::format("the run ends because {}, at {} and {}, with {} of the charge left", told(run.reason),
                  say(solved, run.end.voltage), say(solved, run.end.current), say_share(solved, run.charge_left_share));
  if (sudden)
    f.action = run.charge_left_share > most_left
                   ? "hardly any of the charge is used: more cells in series, cells with less resistance, or a step-up "
                     "that works from less"
                   : "the fan will stop dead in seconds: set a stop above this voltage, or take cells with less "
                     "resistance";
  else if (wasteful)
    f.action =
        "much charge stays behind: less resistance (better cells, thicker leads), a lower stop, or a fan that asks "
        "less";
  f.basis.source = "constant-power load on a voltage behind a resistance (circuit theory)";
  f.basis.standing = data::Standing::derived;
  f.formula = "E_stop = V_stop + R P / V_stop; collapse at E = 2 sqrt(R P)";
  f.terms = {computed(solved, "V", "pack voltage at the end, under load", run.end.voltage),
             computed(solved, "E", "its voltage at rest then", run.end.open_circuit),
             computed(solved, "I", "current at the end", run.end.current),
             computed(solved, "R", "resistance", solved.supply->pack.resistance())};
  return f;
}
}  // namespace

Check power_stop() {
  return {"power.stop", "What ends the run", "Why does the fan stop, and how much charge is left then?",
          judge_power_stop};
}
}  // namespace lumwright::plan
