#include "boiler/fill.hpp"
#include "data/limits.hpp"
#include "matter/water.hpp"
#include "model/solved_raise.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "plan/detail/water_level.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {

std::optional<Finding> judge_raise_swelling(const model::Solved& solved) {
  if (!solved.raise) return unsolved(solved.raise);
  const model::SolvedRaise& r = *solved.raise;
  const bool working = r.input.working.has_value();
  const GaugePressure pressure = working ? *r.input.working : *r.input.own_blower;
  const Temperature hot = matter::saturation_temperature(pressure.above_barometer + r.fill.barometer);
  const double swells = matter::saturation(r.fill.cold).water_density / matter::saturation(hot).water_density - 1.0;
  static const double most = data::limit<double>("raise.swelling most");
  const double share = r.fill.water_share * (1.0 + swells);
  Finding f;
  judge_by(f, {AnyQuantity(share), "%"}, {Bound::at_most, AnyQuantity(most), AnyQuantity(1.0)});
  f.why =
      fmt::format("water swells by {} from {} to {}: a boiler filled to {} is then {} full", percent(swells, 2),
                  say(solved, r.fill.cold), say(solved, pressure), percent(r.fill.water_share, 2), percent(share, 3));
  if (f.verdict != Verdict::pass)
    f.action = "fill to the mark of the engine's maker; if it stands there, measure once more what the boiler holds";
  f.basis.source = "densities of water after IAPWS SR1-86; the limit is common practice";
  f.basis.standing = data::Standing::derived;
  f.formula = "x_hot = x rho(T_0) / rho(T)";
  f.terms = {fill_term(solved), computed(solved, "T_0", "cold water", r.fill.cold),
             computed(solved, "T", "water at that pressure", hot),
             computed(solved, "x_hot", "share that it then fills", share)};
  return f;
}
}  // namespace

Check raise_swelling() {
  return {"raise.swelling", "Room for the water to swell", "Is there room over the water when it is hot?",
          judge_raise_swelling};
}
}  // namespace lumwright::plan
