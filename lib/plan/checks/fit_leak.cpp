#include "data/fits.hpp"
#include "model/solved_fit.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "workshop/stock.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_fit_leak(const model::Solved& solved) {
  if (!solved.fit) return unsolved(solved.fit);
  if (auto waiting = waits_for_the_tube(solved)) return waiting;
  const workshop::Fit& fit = solved.fit->fit;
  const auto& rule = data::number_rule("leak share");
  Finding f;
  judge_by(f, {AnyQuantity(fit.leak_share.value), "%"},
           {Bound::at_most, AnyQuantity(rule.value.value), AnyQuantity(workshop::most_leak_share())});
  f.why = fmt::format("the ring round the tube has {} of the area of the tube's own bore",
                      say_share(solved, fit.leak_share.value));
  if (f.verdict != Verdict::pass) f.action = "a larger tube, or a sleeve or heat-proof cord at the chimney top";
  f.basis = rule.basis;
  f.formula = "share = (D^2 - d^2) / d_i^2";
  f.terms = {
      term(solved, "D", "chimney bore", solved.build.engine.chimney.bore),
      term(solved, "d", "tube outside", solved.build.adapter.tube.outside),
      computed(solved, "d_i", "bore of the tube", solved.fit->input.outside.value - 2.0 * solved.fit->input.tube_wall)};
  return f;
}
}  // namespace

Check fit_leak() {
  return {"fit.leak", "Width of the gap round the tube", "Is the gap round the tube small against the tube's own bore?",
          judge_fit_leak};
}
}  // namespace lumwright::plan
