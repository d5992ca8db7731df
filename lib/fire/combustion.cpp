#include "fire/combustion.hpp"
#include "data/species.hpp"
#include "fire/heating_value.hpp"
#include "quantity/require.hpp"
#include <cmath>

namespace lumwright::fire {
namespace {
constexpr Temperature reference = kelvin(298.15);  // of heating values
const data::RelativeAtomicMasses& atoms() { return data::relative_atomic_masses(); }

/// Heat of formation at 25 degC of what holds one kilogram of carbon.
SpecificEnergy formation_per_carbon(std::string_view formula) {
  const data::SpeciesRow& row = data::species(formula);
  return matter::IdealGas(row).enthalpy(reference) * (row.relative_mass / atoms().carbon);
}
SpecificEnergy oxygen_per_carbon() {  // one molecule for each atom of carbon; a millionth of the rest
  const data::SpeciesRow& row = data::species("O2");
  return matter::IdealGas(row).enthalpy(reference) * (row.relative_mass / atoms().carbon);
}
}  // namespace

FlueGas flue_gas(const data::FuelAnalysis& fuel, const AirAndFuel& mix) {
  require_within("air ratio", mix.air_ratio, {0.0, 1e6});
  require_within("share of the carbon that leaves as monoxide", mix.monoxide_carbon, {0.0, 1.0});
  const data::RelativeAtomicMasses& a = atoms();
  const double needed = stoichiometric_air(fuel), air = mix.air_ratio * needed, o2 = matter::oxygen_in_air();
  const double burnt = (1.0 - mix.monoxide_carbon) * fuel.carbon, half_burnt = mix.monoxide_carbon * fuel.carbon;
  // in kilograms for each kilogram of fuel
  const double carbon_dioxide = burnt * (a.carbon + 2.0 * a.oxygen) / a.carbon;
  const double carbon_monoxide = half_burnt * (a.carbon + a.oxygen) / a.carbon;
  const double water = fuel.moisture + fuel.hydrogen * (2.0 * a.hydrogen + a.oxygen) / (2.0 * a.hydrogen);
  const double sulphur_dioxide = fuel.sulphur * (a.sulphur + 2.0 * a.oxygen) / a.sulphur;
  const double oxygen = (air - needed) * o2 + half_burnt * a.oxygen / a.carbon;
  require_not_negative("oxygen left in the flue gas, over the fuel's mass",
                       oxygen > -1e-12 ? std::max(oxygen, 0.0) : oxygen);
  const double nitrogen = air * (1.0 - o2) + fuel.nitrogen;
  const double sum = carbon_dioxide + carbon_monoxide + water + sulphur_dioxide + std::max(oxygen, 0.0) + nitrogen;
  return {.shares = {.carbon_dioxide = (carbon_dioxide + sulphur_dioxide) / sum,
                     .water = water / sum,
                     .carbon_monoxide = carbon_monoxide / sum,
                     .oxygen = std::max(oxygen, 0.0) / sum,
                     .nitrogen = nitrogen / sum},
          .per_fuel = sum};
}

SpecificEnergy carbon_as_monoxide_heat() {
  static const SpecificEnergy heat = carbon_monoxide_heat() * (data::species("CO").relative_mass / atoms().carbon);
  return heat;
}
double air_spared(double carbon_as_monoxide) {
  return carbon_as_monoxide * atoms().oxygen / atoms().carbon / matter::oxygen_in_air();
}

SpecificEnergy carbon_monoxide_heat() {
  static const SpecificEnergy heat =
      (formation_per_carbon("CO") + 0.5 * oxygen_per_carbon() - formation_per_carbon("CO2")) *
      (atoms().carbon / data::species("CO").relative_mass);
  return heat;
}
}  // namespace lumwright::fire
