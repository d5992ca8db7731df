#include "data/fuses.hpp"
#include "plan/check.hpp"
#include <fmt/format.h>

namespace lumwright {
namespace {
// The stricter of the two standards: what carries under this one carries under the other.
const data::FuseRule& strict_rule() {
  const data::FuseRule* least = &data::fuse_rules().front();
  for (const data::FuseRule& rule : data::fuse_rules())
    if (rule.continuous < least->continuous) least = &rule;
  return *least;
}
std::optional<Finding> judge_power_fuse(const Solved& solved) {
  if (!solved.supply || solved.supply->pack_input.cell.bank)
    return std::nullopt;  // a power bank limits its own current
  const SolvedSupply& s = *solved.supply;
  const data::FuseRule& rule = strict_rule();
  Finding f;
  f.source = rule.source;
  f.standing = rule.standing;
  f.formula = "I_most <= continuous share * rating; a short carries E / R";
  f.terms = {computed(solved, "I_most", "most current, end of discharge", s.run.most_current),
             computed(solved, "share", "that the fuse carries for ever", rule.continuous)};
  std::string advice;
  try {
    advice = say(solved, fuse_for(s.run.most_current, rule));
  } catch (const ModelError&) {
    advice = "one larger than the usual small sizes";
  }
  const Input* rating = solved.inputs.find("supply.fuse");
  if (rating == nullptr) {
    f.verdict = Verdict::watch;
    f.why = "no fuse is described";
    f.action = fmt::format("put a time-lag fuse of {} at the pack's own terminal", advice);
    return f;
  }
  const Current fuse = rating->value.si * A, shorted = short_circuit_current(s.pack);
  const FuseCheck check = check_fuse({fuse, s.run.most_current, shorted}, rule);
  f.value = measure(solved, s.run.most_current, "supply.fuse");
  f.limit = measure(solved, rule.continuous * fuse, "supply.fuse");
  f.verdict = !check.carries || !check.short_opens ? Verdict::fail : Verdict::pass;
  f.why = fmt::format("at the end of the charge {} flows, {} of the fuse's rating; a short would carry {} at first",
                      say(solved, s.run.most_current), percent(check.load_share, 2), say(solved, shorted));
  if (!check.carries) f.action = fmt::format("the fuse would blow in use: fit {}", advice);
  if (!check.short_opens) f.action = fmt::format("a short would not open it: fit {}", advice);
  f.terms.push_back(term(solved, "I_n", "rating of the fuse", "supply.fuse"));
  f.terms.push_back(computed(solved, "I_sc", "short-circuit current of the charged pack", shorted));
  return f;
}
}  // namespace

Check power_fuse() {
  return {"power.fuse", "The fuse", "Does the fuse carry the load and open on a short?", 390, judge_power_fuse};
}
}  // namespace lumwright
