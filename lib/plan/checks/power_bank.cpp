#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_power_bank(const model::Solved& solved) {
  if (!solved.supply || !solved.supply->pack_input.cell.bank) return std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  const data::BankOutput& bank = *s.pack_input.cell.bank;
  const Current least = std::min(s.run.start.current, s.run.end.current);
  Finding f;
  judge_by(f, measure(solved, s.run.most_current),
           {Bound::at_most, AnyQuantity(bank.port_limit.low), AnyQuantity(bank.port_limit.high)});
  Finding asleep;
  judge_by(asleep, measure(solved, least),
           {Bound::at_least, AnyQuantity(bank.sleeps_below.high), AnyQuantity(bank.sleeps_below.low)});
  if (f.verdict == Verdict::pass || asleep.verdict == Verdict::fail) f = asleep;
  f.why = fmt::format(
      "it is asked for {} to {}; many banks switch themselves off below {} to {}, and give {} to {} at most",
      say(solved, least), say(solved, s.run.most_current), say(solved, bank.sleeps_below.low),
      say(solved, bank.sleeps_below.high), say(solved, bank.port_limit.low), say(solved, bank.port_limit.high));
  if (f.verdict != Verdict::pass) f.action = "try your bank with this load for a minute before you rely on it";
  f.basis = s.pack_input.cell.basis;
  f.formula = "I_off < I < I_port";
  f.terms = {computed(solved, "I", "least current", least),
             computed(solved, "I_most", "most current", s.run.most_current),
             computed(solved, "I_off", "may switch off below", bank.sleeps_below.high),
             computed(solved, "I_port", "least of the port limits", bank.port_limit.low)};
  return f;
}
}  // namespace

Check power_bank() {
  return {"power.bank", "The power bank", "Does the power bank stay on, and can its socket give that current?",
          judge_power_bank};
}
}  // namespace lumwright::plan
