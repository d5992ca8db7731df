#include "model/solved_fit.hpp"
#include "plan/check.hpp"
#include "plan/detail/taken_off.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::string away_with_it(const model::Solved& solved, const workshop::RidgeFlat& flat) {
  const TakenOff depth = taken_off(solved, flat.depth, "finest filing"),
                 width = taken_off(solved, flat.width, "finest filing");
  const Length left = flat.wall_left - (depth.length - flat.depth);
  if (!flat.strong_enough || left <= 0.0 * mm) return "scrape the ridge down: the tube's wall is too thin for a flat";
  return fmt::format("scrape the ridge down, or file a flat {} deep and {} wide along the tube (wall left {})",
                     depth.text, width.text, roughly(solved, left));
}
std::optional<Finding> judge_fit_seam(const model::Solved& solved) {
  if (!solved.fit || !solved.fit->fit.ridge_flat) return std::nullopt;
  const workshop::RidgeFlat& flat = *solved.fit->fit.ridge_flat;
  Finding f;
  const Length highest = solved.fit->input.seam_ridge + solved.fit->fit.margin;  // ridge under which the tube enters
  f.verdict = Verdict::watch;
  if (highest >= 0.0 * mm)
    judge_by(f, measure(solved, solved.fit->input.seam_ridge), {Bound::at_most, AnyQuantity(highest), std::nullopt});
  f.why = fmt::format("a ridge of {} makes the bore act as {}", say(solved, solved.fit->input.seam_ridge),
                      say(solved, solved.fit->fit.effective_bore.value, 4));
  if (f.verdict != Verdict::pass) f.action = away_with_it(solved, flat);
  f.basis.source = "largest cylinder that enters a bore with one ridge";
  f.basis.standing = data::Standing::derived;
  f.formula = "effective bore = D - h";
  f.terms = {term(solved, "D", "chimney bore", solved.build.engine.chimney.bore),
             term(solved, "h", "height of the ridge", solved.build.engine.chimney.seam_ridge)};
  return f;
}
}  // namespace

Check fit_seam() {
  return {"fit.seam", "The weld seam", "Does a seam inside the chimney keep the tube out?", judge_fit_seam};
}
}  // namespace lumwright::plan
