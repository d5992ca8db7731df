#include "data/fits.hpp"
#include "model/solved_fit.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_fit_engaged(const model::Solved& solved) {
  if (!solved.fit) return unsolved(solved.fit);
  if (auto waiting = waits_for_the_tube(solved)) return waiting;
  const workshop::Fit& fit = solved.fit->fit;
  if (!fit.engagement) {
    std::vector<std::string> keys;
    if (!solved.fit->input.engaged) keys.emplace_back(solved.build.adapter.tube.engaged.key.text());
    if (!solved.fit->input.depth) keys.emplace_back(solved.build.engine.chimney.depth.key.text());
    return lacking_keys(std::move(keys));
  }
  const auto& rule = data::number_rule("engaged over outside");
  const workshop::Engagement& e = *fit.engagement;
  const bool too_deep = e.share_of_depth && *e.share_of_depth > 1.0;
  Finding f;
  const Length outside = solved.fit->input.outside.value;
  judge_by(f, measure(solved, *solved.fit->input.engaged),
           {Bound::at_least, AnyQuantity(rule.value.value * outside), AnyQuantity(rule.value.low * outside)});
  if (too_deep && f.verdict != Verdict::fail)  // another limit decides: the depth of the chimney
    judge_by(f, *f.value, {Bound::at_most, AnyQuantity(*solved.fit->input.depth), std::nullopt});
  f.why = fmt::format("{} of tube is in the chimney, {} diameters", say(solved, *solved.fit->input.engaged),
                      format_number(e.over_outside, 2));
  f.why += e.tilt < no_stand
               ? fmt::format("; it can tip sideways by {} in every 100 of its length", format_number(100.0 * e.tilt, 2))
               : "; so loose that it cannot stand there: it falls over until it jams";
  if (f.bound == Bound::at_most)
    f.action = "the chimney is not that deep: the tube reaches into the smokebox and may touch the blast pipe";
  else if (f.verdict != Verdict::pass)
    f.action = std::string(solved.build.adapter.tube.length && *solved.build.adapter.tube.length >
                                                                   *solved.fit->input.engaged + rule.value.low * outside
                               ? "let the tube go further into the chimney"
                               : "a longer tube") +
               ": a short hold tips with the weight of fan and box, and leaks";
  if (e.tilt > no_stand) {  // then that decides
    judge_by(f, {AnyQuantity(e.tilt), ""}, {Bound::at_most, AnyQuantity(no_stand), AnyQuantity(no_stand)});
    f.action = "a closer tube: this one does not stand in the bore, however far it goes in";
  }
  f.basis = rule.basis;
  f.formula = "engaged / outside; tip = gap / engaged";
  f.terms = {computed(solved, "L", "engaged length", *solved.fit->input.engaged),
             term(solved, "d", "tube outside", solved.build.adapter.tube.outside),
             computed(solved, "lean", "gap over engaged length", e.tilt)};
  if (e.share_of_depth) f.terms.push_back(computed(solved, "share", "of the chimney's depth", *e.share_of_depth));
  return f;
}
}  // namespace

Check fit_engaged() {
  return {"fit.engaged", "How far the tube goes in", "Does enough of the tube stand in the chimney to hold the fan?",
          judge_fit_engaged};
}
}  // namespace lumwright::plan
