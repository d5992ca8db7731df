#include "data/fuses.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "power/fuse.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
// The stricter of the two standards: what carries under this one carries under the other.
const data::FuseRule& strict_rule() {
  const data::FuseRule* least = &data::fuse_rules().front();
  for (const data::FuseRule& rule : data::fuse_rules())
    if (rule.continuous < least->continuous) least = &rule;
  return *least;
}
/// What a short must carry to open the fuse under every standard.
double opens_for_certain() {
  double most = 0.0;
  for (const data::FuseRule& rule : data::fuse_rules()) most = std::max(most, rule.opens);
  return most;
}
/// The least fuse that carries the load would open on this short.
bool fuse_opens(const model::Solved& solved, Current shorted, double opens) {
  try {
    return shorted >= opens * power::fuse_for(solved.supply->run.most_current, strict_rule());
  } catch (const ModelError&) {
    return false;
  }
}
std::string advised(const model::Solved& solved) {
  try {
    return say(solved, power::fuse_for(solved.supply->run.most_current, strict_rule()));
  } catch (const ModelError&) {
    return "a larger one than the usual small sizes";
  }
}
/// A fuse that the short does not open fails, whatever it carries.
void judge_short(Finding& f, const model::Solved& solved, Current shorted, Current opens_at) {
  Finding kept;
  judge_by(kept, measure(solved, shorted), {Bound::at_least, AnyQuantity(opens_at), AnyQuantity(opens_at)});
  if (kept.verdict == Verdict::pass) return;
  f.verdict = kept.verdict;
  f.value = kept.value;
  f.limit = kept.limit;
  f.bound = kept.bound;
  f.limit_name = kept.limit_name;
  f.action =
      "a short at the end of the wires would not open it: " +
      (fuse_opens(solved, shorted, opens_for_certain())
           ? "fit " + advised(solved)
           : "nor any fuse that carries the fan; cells with less resistance, or take the pack off when nobody looks");
}
std::optional<Finding> judge_power_fuse(const model::Solved& solved) {
  if (!solved.supply || solved.supply->pack_input.cell.bank)
    return std::nullopt;  // a power bank limits its own current
  const model::SolvedSupply& s = *solved.supply;
  const data::FuseRule& rule = strict_rule();
  const double opens = opens_for_certain();
  Finding f;
  f.basis = rule.basis;
  f.formula = "I_most <= continuous share * rating; E / R >= opening multiple * rating";
  f.terms = {computed(solved, "I_most", "most current of the discharge", s.run.most_current),
             computed(solved, "share", "that the fuse carries for ever", rule.continuous),
             computed(solved, "multiple", "of the rating that opens it for certain", opens)};
  const model::Input* rating = solved.inputs.find("supply.fuse");
  if (rating == nullptr) {
    f.verdict = Verdict::watch;
    f.why = "no fuse is described";
    f.action = fmt::format("put a time-lag fuse at the pack's own terminal: {}", advised(solved));
    return f;
  }
  const Current fuse = rating->value.si * A, shorted = power::short_behind_leads(s.pack);
  const AnyQuantity carried(rule.continuous * fuse);
  judge_by(f, measure(solved, s.run.most_current), {Bound::at_most, carried, carried});
  if (f.verdict == Verdict::fail)
    f.action =
        fmt::format("the fuse {}: fit {}, on wires that it protects",
                    s.run.most_current > fuse ? "would blow in use" : "tires so near its rating, and blows one day",
                    advised(solved));
  judge_short(f, solved, shorted, opens * fuse);
  f.why = fmt::format(
      "at most {} flows, {} of the fuse's rating; a short at the end of the wires would carry {} at "
      "first, and {} open it for certain",
      say(solved, s.run.most_current), percent(in(s.run.most_current, fuse), 2), say(solved, shorted),
      say(solved, opens * fuse));
  f.terms.push_back(term(solved, "I_n", "rating of the fuse", solved.build.supply.fuse));
  f.terms.push_back(computed(solved, "I_sc", "short-circuit current of the charged pack, through the wires", shorted));
  return f;
}
}  // namespace

Check power_fuse() {
  return {"power.fuse", "The fuse", "Does the fuse carry the load and open on a short?", judge_power_fuse};
}
}  // namespace lumwright::plan
