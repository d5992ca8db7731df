#include "plan/check.hpp"
#include <fmt/format.h>

namespace lumwright {
namespace {
std::vector<Term> working(const Solved& solved, int count) {
  const SolvedSupply& s = *solved.supply;
  return {computed(solved, "Q", "charge of the pack when full", s.pack.full, "supply.pack.capacity"),
          computed(solved, "R", "resistance of pack, leads and fuse", s.pack.resistance(), "supply.pack.resistance"),
          computed(solved, "V_0", "pack voltage at the start, under load", s.run.start.voltage),
          computed(solved, "I_0", "pack current at the start", s.run.start.current),
          computed(solved, "I_1", "pack current at the end", s.run.end.current),
          computed(solved, "t_run", "runtime of one charge", s.run.runtime),
          computed(solved, "t_each", "one light-up", solved.light_up, "want.steam_within"),
          computed(solved, "n", "whole light-ups", static_cast<double>(count))};
}
std::optional<Finding> judge_power_light_ups(const Solved& solved) {
  if (!solved.supply) return unsolved(solved.supply, "more or better cells, or a fan that asks less");
  const SolvedSupply& s = *solved.supply;
  const int count = light_ups(s.run.runtime, solved.light_up);
  const auto& wanted = solved.build.want.light_ups_per_charge;
  const double limit = wanted ? *wanted : 1.0;
  Finding f;
  f.value = Measure{AnyQuantity(static_cast<double>(count)), ""};
  f.limit = Measure{AnyQuantity(limit), ""};
  f.bound = Bound::at_least;
  f.verdict = count >= limit ? Verdict::pass : Verdict::fail;
  f.why = fmt::format("one charge runs the fan for {}, {} whole light-ups of {}; {}", say(solved, s.run.runtime), count,
                      say(solved, solved.light_up, "want.steam_within"),
                      wanted ? fmt::format("you want {}", format(limit, "")) : "you named no number");
  if (f.verdict == Verdict::fail)
    f.action = "larger cells, more cells in parallel, a lower output once steam is near, or a recharge in between";
  f.source = "charge drawn through the cells' open-circuit curve behind their resistance; no credit for rest";
  f.standing = "derived";
  f.formula = "n = whole part of t_run / t_each, t_run = integral of dq / I(q)";
  f.terms = working(solved, count);
  return f;
}
}  // namespace

Check power_light_ups() {
  return {"power.light_ups", "Light-ups on one charge", "Does one charge last for the light-ups you want?", 310,
          judge_power_light_ups};
}
}  // namespace lumwright
