#include "plan/check.hpp"
#include <fmt/format.h>

namespace lumwright {
namespace {
std::optional<Finding> judge_fit_seam(const Solved& solved) {
  if (!solved.fit || !solved.fit->fit.ridge_flat) return std::nullopt;
  const RidgeFlat& flat = *solved.fit->fit.ridge_flat;
  const bool fits_as_it_is = solved.fit->fit.margin >= 0.0 * mm;
  Finding f;
  f.value = measure(solved, solved.fit->input.seam_ridge, "engine.chimney.seam_ridge");
  f.verdict = fits_as_it_is ? Verdict::pass : Verdict::watch;
  f.why = fmt::format("a ridge of {} makes the bore act as {}",
                      say(solved, solved.fit->input.seam_ridge, "engine.chimney.seam_ridge"),
                      say(solved, solved.fit->fit.effective_bore.value, "engine.chimney.bore", 4));
  if (!fits_as_it_is)
    f.action =
        flat.strong_enough
            ? fmt::format("scrape the ridge down, or file a flat {} deep and {} wide along the tube (wall left {})",
                          say(solved, flat.depth, "engine.chimney.bore", 2),
                          say(solved, flat.width, "engine.chimney.bore", 2),
                          say(solved, flat.wall_left, "engine.chimney.bore", 2))
            : "scrape the ridge down: the tube's wall is too thin for a flat";
  f.source = "largest cylinder that enters a bore with one ridge";
  f.standing = "derived";
  f.formula = "effective bore = D - h";
  f.terms = {term(solved, "D", "chimney bore", "engine.chimney.bore"),
             term(solved, "h", "height of the ridge", "engine.chimney.seam_ridge")};
  return f;
}
}  // namespace

Check fit_seam() {
  return {"fit.seam", "The weld seam", "Does a seam inside the chimney keep the tube out?", 560, judge_fit_seam};
}
}  // namespace lumwright
