#include "model/solved_light_ups.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::vector<Term> working(const model::Solved& solved, int count) {
  const model::SolvedSupply& s = *solved.supply;
  return {computed(solved, "Q", "charge of the pack when full", s.pack.full),
          computed(solved, "R", "resistance of pack, leads and fuse", s.pack.resistance()),
          computed(solved, "V_0", "pack voltage at the start, under load", s.run.start.voltage),
          computed(solved, "I_0", "pack current at the start", s.run.start.current),
          computed(solved, "I_1", "pack current at the end", s.run.end.current),
          computed(solved, "t_run", "runtime of one charge", s.run.runtime),
          computed(solved, "t_1", "the first light-up", solved.light_ups->first),
          computed(solved, "t_n", "the last light-up", solved.light_ups->last),
          computed(solved, "n", "whole light-ups", static_cast<double>(count))};
}
std::string how_many(const model::Solved& solved) {
  const model::SolvedLightUps& all = *solved.light_ups;
  const auto time = [&](Duration t) { return say(solved, t); };
  const std::string first = time(all.first), last = time(all.last);
  if (all.end == boiler::LightUpsEnd::never) return "not even one light-up comes to pressure on it";
  if (all.count == 0)
    return all.end == boiler::LightUpsEnd::too_slow
               ? fmt::format("the first takes {}, longer than you will wait", first)
               : fmt::format("less than one of {}", first);
  std::string out = fmt::format("{} whole light-up{} of {}", all.count, all.count == 1 ? "" : "s", first);
  const bool timed = solved.raise && solved.raise->raise.time_of(boiler::RaiseEventKind::own_blower);
  if (!timed) out += ", the time that you want, for how long it really takes is not known";
  if (first != last) out += fmt::format(" at first and {} on what is left at last", last);
  if (all.end == boiler::LightUpsEnd::too_slow) out += ", and the next would take longer than you will wait";
  return out;
}
std::optional<Finding> judge_power_light_ups(const model::Solved& solved) {
  if (!solved.supply) return unsolved(solved.supply);
  const model::SolvedSupply& s = *solved.supply;
  const int count = solved.light_ups->count;
  const auto& wanted = solved.build.want.light_ups_per_charge;
  const double limit = wanted ? *wanted : 1.0;
  Finding f;
  judge_by(f, {AnyQuantity(static_cast<double>(count)), ""}, {Bound::at_least, AnyQuantity(limit), AnyQuantity(limit)});
  f.why = fmt::format("one charge runs the fan for {}: {}; {}", say(solved, s.run.runtime), how_many(solved),
                      wanted ? fmt::format("you want {}", format(limit, "")) : "you named no number");
  if (f.verdict == Verdict::fail)
    f.action = "larger cells, more cells in parallel, a lower output once steam is near, or a recharge in between";
  f.basis.source =
      "charge drawn through the cells' open-circuit curve behind their resistance, each light-up on what the one "
      "before "
      "it left; no credit for rest";
  f.basis.standing = data::Standing::derived;
  f.formula = "t_run = integral of dq / I(q); n light-ups, each raised from the charge that is left then";
  f.terms = working(solved, count);
  return f;
}
}  // namespace

Check power_light_ups() {
  return {"power.light_ups", "Light-ups on one charge", "Does one charge last for the light-ups you want?",
          judge_power_light_ups};
}
}  // namespace lumwright::plan
