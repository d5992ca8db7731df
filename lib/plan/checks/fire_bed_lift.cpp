#include "data/limits.hpp"
#include "draught/bed.hpp"
#include "model/solved_draught.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_fire_bed_lift(const model::Solved& solved) {
  if (!solved.draught) return unsolved(solved.draught);
  const model::SolvedDraught& d = *solved.draught;
  const Pressure lifts = draught::bed_lifting_pressure(*d.path.bed, *d.fuel_piece);
  const Pressure across = d.hot_flow.loss[static_cast<std::size_t>(draught::Element::bed)];
  const double share = across / lifts;
  Finding f;
  static const double most = data::limit<double>("fire.bed_lift share");
  judge_by(f, {AnyQuantity(share), "%"}, {Bound::at_most, AnyQuantity(most), AnyQuantity(1.0)});
  f.why = fmt::format("the gas presses on the bed with {}, and {} would carry its weight", say(solved, across),
                      say(solved, lifts));
  if (f.verdict != Verdict::pass) f.action = "slow the fan, use larger pieces or a shallower bed; fit a spark screen";
  f.basis.source = "bed weight against Ergun's drop; advise below 70 %";
  f.basis.standing = data::Standing::estimate;
  f.formula = "share = dp_bed / ((1 - voidage) piece density g depth)";
  f.terms = {computed(solved, "dp_bed", "pressure across the burning bed", across),
             term(solved, "depth", "depth of the bed", solved.build.fuel.bed),
             term(solved, "e", "share of the bed that is gaps", solved.build.fuel.voidage),
             computed(solved, "rho", "density of a piece of fuel", *d.fuel_piece),
             computed(solved, "dp_lift", "pressure that carries the bed", lifts)};
  return f;
}
}  // namespace

Check fire_bed_lift() {
  return {"fire.bed_lift", "Does the draught lift the fire", "Does the gas carry the bed's own weight?",
          judge_fire_bed_lift};
}
}  // namespace lumwright::plan
