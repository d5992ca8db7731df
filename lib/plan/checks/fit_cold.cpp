#include "model/solved_fit.hpp"
#include "plan/check.hpp"
#include "plan/detail/taken_off.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::string change_of_tube(const model::Solved& solved) {
  const workshop::Fit& fit = solved.fit->fit;
  const bool may_skim = fit.skim.wall_left && fit.skim.wall_needed && *fit.skim.wall_left >= *fit.skim.wall_needed;
  if (fit.cold.value <= 0.0 * mm)
    return std::string("the tube does not enter: a smaller tube") +
           (may_skim ? ", or skim the chimney as a last resort" : "");
  return fmt::format("a tube about {} smaller, or measure more closely",
                     taken_off(solved, fit.margin < 0.0 * mm ? -fit.margin : 0.0 * mm, "finest cut").text);
}
std::string gap_in_words(const model::Solved& solved, Length gap) {
  if (gap > 0.0 * mm) return "the gap on diameter is " + say(solved, gap);
  if (gap == 0.0 * mm) return "the tube is as large as the bore and leaves no gap";
  return fmt::format("the tube is {} larger than the bore and leaves no gap", say(solved, -gap));
}
std::optional<Finding> judge_fit_cold(const model::Solved& solved) {
  if (!solved.fit) return unsolved(solved.fit);
  const workshop::Fit& fit = solved.fit->fit;
  const workshop::FitInput& in = solved.fit->input;
  Finding f;
  judge_by(f, measure(solved, fit.cold.value),
           {Bound::at_least, AnyQuantity(fit.needed + fit.uncertainty), AnyQuantity(fit.needed)});
  f.why = fmt::format("{}; {} is needed for heat, soot and sliding, and {} more for how well it was measured",
                      gap_in_words(solved, fit.cold.value), say(solved, fit.needed), roughly(solved, fit.uncertainty));
  if (f.verdict != Verdict::pass) f.action = change_of_tube(solved);
  f.basis.source = "linear expansion; a fit is accepted when the gap less its uncertainty is enough (ISO 14253-1)";
  f.basis.standing = data::Standing::derived;
  f.formula = "c_need = d (a_t dT_t - a_b dT_b) + 2 s + c_run; accept when D - d - ridge - U >= c_need";
  f.terms = {term(solved, "D", "chimney bore", solved.build.engine.chimney.bore),
             term(solved, "d", "tube outside", solved.build.adapter.tube.outside),
             computed(solved, "ridge", "seam ridge", in.seam_ridge),
             computed(solved, "T_t", "tube at lighting-up, where the gap is least", fit.lighting_up.tube),
             computed(solved, "T_b", "chimney there", fit.lighting_up.chimney),
             term(solved, "s", "soot on each side", solved.build.adapter.tube.soot),
             computed(solved, "c_run", "gap left for sliding", in.running_clearance),
             computed(solved, "U", "uncertainty of the gap", fit.uncertainty),
             computed(solved, "c_need", "gap needed cold", fit.needed)};
  return f;
}
}  // namespace

Check fit_cold() {
  return {"fit.cold", "Tube in the chimney, cold", "Is the cold gap enough for heat, soot and measuring errors?",
          judge_fit_cold};
}
}  // namespace lumwright::plan
