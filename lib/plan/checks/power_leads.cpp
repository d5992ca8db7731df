#include "data/limits.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_power_leads(const model::Solved& solved) {
  if (!solved.supply) return unsolved(solved.supply);
  const model::SolvedSupply& s = *solved.supply;
  const description::part::LeadsPart& leads = solved.build.supply.leads;
  if (!leads.section && !leads.length)
    return lacking(solved.build.supply.leads.section, solved.build.supply.leads.length);
  static const double share = data::limit<double>("power.leads share");
  const Voltage drop = s.run.most_current * s.leads, allowed = share * s.run.end.voltage;
  Finding f;
  judge_by(f, measure(solved, drop), {Bound::at_most, AnyQuantity(allowed), {}});
  f.why = fmt::format("both wires together have {}; at {} they lose {}", say(solved, s.leads),
                      say(solved, s.run.most_current), say(solved, drop));
  if (f.verdict != Verdict::pass) f.action = "shorter or thicker wires, or put the step-up at the pack's end";
  f.basis.source =
      "wire resistance by section (IEC 60228, DIN VDE 0295); 3 % of the voltage is common practice, no source";
  f.basis.standing = data::Standing::practice;
  f.formula = "drop = 2 L r I <= 3 % of V";
  f.terms = {term(solved, "A", "copper section", solved.build.supply.leads.section),
             term(solved, "L", "length, one way", solved.build.supply.leads.length),
             computed(solved, "R", "both wires", s.leads), computed(solved, "I", "most current", s.run.most_current)};
  return f;
}
}  // namespace

Check power_leads() { return {"power.leads", "The wires", "Do the wires lose too much voltage?", judge_power_leads}; }
}  // namespace lumwright::plan
