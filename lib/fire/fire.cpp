#include "fire/fire.hpp"
#include "fire/combustion.hpp"
#include "fire/heating_value.hpp"
#include "matter/flue_gas.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>

namespace lumwright::fire {
namespace {
constexpr MassFlow no_flow = 0.0 * kg_per_s;
constexpr Power no_heat = 0.0 * W;

FireInput checked(const FireInput& input) {
  require_above_zero("net heating value of the fuel", input.net_heat);
  require_within("share of the fuel that stays as ash", input.ash_left, {0.0, 1.0});
  require_within("share of the heat lost with carbon monoxide", input.monoxide_loss, {0.0, 1.0});
  if (input.monoxide_loss == 1.0) throw ModelError("a fire that loses all its heat with carbon monoxide gives none");
  require_within("share of the bed that is lit at the start", input.kindling.lit_at_start, {0.0, 1.0});
  require_not_negative("kindling time", input.kindling.duration);
  require_within("air temperature", input.air, {200.0, 400.0});
  require_within("temperature of the glowing bed", input.glow, {200.0, 2500.0});
  require_within("temperature of the gas that leaves the bed", input.bed_exit, {200.0, 2500.0});
  return input;
}

/// Of the fuel as it is over its usual analysis: more ash or water takes carbon, heat and air demand away alike.
double richness(const FireInput& input) { return input.net_heat / net_heat(input.fuel); }
double half_burnt(const FireInput& input) {
  const double share =
      input.monoxide_loss * input.net_heat / (input.fuel.carbon * richness(input) * carbon_as_monoxide_heat());
  if (!(share <= 1.0))
    throw ModelError("more heat is lost with carbon monoxide (" + percent(input.monoxide_loss, 2) +
                     " of it) than the fuel has carbon for");
  return share;
}
}  // namespace

double lit_share(const Kindling& kindling, Duration time) {
  require_not_negative("time since lighting", time);
  if (time >= kindling.duration) return 1.0;
  return kindling.lit_at_start + (1.0 - kindling.lit_at_start) * (time / kindling.duration);
}

Fire::Fire(const FireInput& input)
    : input_(checked(input)),
      air_demand_(stoichiometric_air(input.fuel) * richness(input)),
      monoxide_carbon_(half_burnt(input)),
      air_taken_(air_demand_ - air_spared(monoxide_carbon_ * input.fuel.carbon * richness(input))),
      gasified_(
          std::min((1.0 - input.ash_left) * richness(input), 1.0)),  // richer than the analysis, with its ash gone
      conversion_(bed_conversion(input.depth)),
      bed_heat_(fire::bed_heat(input.bed, input.bed_capacity, input.glow - input.air)),
      products_(matter::gas_of(flue_gas(input.fuel, {.air_ratio = 1.0, .monoxide_carbon = 0.0}).shares)),
      air_(matter::dry_air_gas()) {}

Power Fire::kindling_heat() const {
  if (!(input_.kindling.duration > 0.0 * s)) return no_heat;
  return (1.0 - input_.kindling.lit_at_start) * bed_heat_ / input_.kindling.duration;
}

Burning Fire::burn(double lit, Power wanted_by_bed, MassFlow bed_air, MassFlow past_bed) const {
  require_within("share of the bed that is lit", lit, {0.0, 1.0});
  require_not_negative("air through the bed", bed_air);
  require_finite("air past the bed", past_bed);
  const MassFlow fuel = fuel_per_air(lit) * bed_air, from_bed = bed_air + gasified_ * fuel;
  const MassFlow blown_out = std::clamp(-past_bed, no_flow, from_bed);
  const MassFlow joining = std::max(past_bed, no_flow), whole = from_bed + joining;
  const Power chemical = fuel * input_.net_heat, monoxide = input_.monoxide_loss * chemical;
  const Power bed = std::clamp(wanted_by_bed, no_heat, chemical - monoxide), to_gas = chemical - monoxide - bed;
  const MassFlow engine = bed_air + joining;
  // Oxygen that is gone counts, not fuel: with monoxide the same oxygen burns more of it.
  const MassFlow used = lit * conversion_ * bed_air;
  const double burnt = whole > no_flow ? (1.0 + gasified_ / air_demand_) * in(used, whole) : 0.0;
  const matter::IdealGas mixture = matter::mixed(air_, products_, std::min(burnt, 1.0));
  const SpecificEnergy cold = mixture.enthalpy(input_.air);
  return {.air_used = engine > no_flow ? in(used, engine) : 0.0,
          .fuel = fuel,
          .gas = whole - blown_out,
          .blown_out = blown_out,
          .chemical = chemical,
          .carbon_monoxide = monoxide,
          .bed = bed,
          .to_gas = to_gas,
          .enthalpy = whole > no_flow ? cold + to_gas / whole : cold,
          .mixture = mixture};
}

Temperature Fire::bed_gas(double lit) const {
  return bed_gas_mean({.depth = input_.depth, .cold = input_.air, .exit = input_.bed_exit}, lit);
}
}  // namespace lumwright::fire
