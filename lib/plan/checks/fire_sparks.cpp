#include "data/limits.hpp"
#include "draught/bed.hpp"
#include "matter/air.hpp"
#include "model/solved_draught.hpp"
#include "plan/check.hpp"
#include "plan/detail/rules.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
struct Speeds {
  Density gas;
  Velocity over_bed, in_tubes;
};
Speeds speeds(const model::SolvedDraught& d) {
  const draught::PathFlow& hot = d.hot_flow;
  const draught::FireTubes& tubes = *d.path.tubes;
  const Density gas = matter::air_density(hot.firebox_gas, d.ambient.pressure);
  const Density in_tubes = matter::air_density(hot.tube_gas, d.ambient.pressure);
  return {.gas = gas,
          .over_bed = hot.tubes / (gas * d.path.grate->area),
          .in_tubes = hot.tubes / (in_tubes * (1.0 * tubes.count) * circle(tubes.each.bore))};
}
std::optional<Finding> judge_fire_sparks(const model::Solved& solved) {
  if (!solved.draught) return unsolved(solved.draught);
  const model::SolvedDraught& d = *solved.draught;
  const Speeds gas = speeds(d);
  const Rule char_piece = rule<Density>("rule.char_piece");
  static const Length small = data::limit<Length>("fire.sparks small"),
                      large = data::limit<Length>("fire.sparks large");
  const Density piece = char_piece.input.value.si * kg_per_m3;
  const Viscosity mu = matter::air_viscosity(d.hot_flow.firebox_gas);
  const Velocity hangs_small = draught::terminal_velocity({small, piece}, gas.gas, mu),
                 hangs_large = draught::terminal_velocity({large, piece}, gas.gas, mu);
  Finding f;
  judge_by(f, measure(solved, gas.over_bed), {Bound::at_most, AnyQuantity(hangs_small), AnyQuantity(hangs_large)});
  f.why = fmt::format(
      "above the bed the gas rises at {}; pieces of char of {} hang in it at {} and of {} at {}. What "
      "reaches the tubes meets {} there{}",
      say(solved, gas.over_bed), roughly(solved, small), say(solved, hangs_small), roughly(solved, large),
      say(solved, hangs_large), say(solved, gas.in_tubes),
      gas.in_tubes > hangs_small ? ", and small ones go on to the fan" : "");
  if (f.verdict != Verdict::pass)
    f.action =
        "sieve out the dust, slow the fan, and put a spark screen of at least 60 % open area between tube and fan";
  f.basis.source = "drag of a sphere after Barati, Neyshabouri and Ahmadi 2014; splinters and dust fly at less";
  f.basis.standing = data::Standing::secondary;
  f.formula = "v = m / (rho_gas A_grate) against the speed at which drag carries the weight of the piece";
  f.terms = {computed(solved, "m", "gas out of the firebox", d.hot_flow.tubes),
             computed(solved, "T", "gas in the firebox", d.hot_flow.firebox_gas),
             computed(solved, "rho_gas", "its density", gas.gas),
             computed(solved, "A_grate", "area of the grate", d.path.grate->area),
             char_piece.term("rho", "density of a piece of char"),
             computed(solved, "v_0.5", "at which the small piece hangs", hangs_small),
             computed(solved, "v_1", "at which the large one hangs", hangs_large),
             computed(solved, "v_t", "gas in the fire tubes", gas.in_tubes)};
  return f;
}
}  // namespace

Check fire_sparks() {
  return {"fire.sparks", "Sparks", "Does the gas carry pieces of char out of the firebox?", judge_fire_sparks};
}
}  // namespace lumwright::plan
