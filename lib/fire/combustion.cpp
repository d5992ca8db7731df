#include "fire/combustion.hpp"
#include "data/species.hpp"
#include "fire/heating_value.hpp"
#include "matter/range.hpp"
#include <cmath>

namespace lumwright {
namespace {
constexpr Temperature reference = kelvin(298.15);                 // of heating values
constexpr SpecificHeat fuel_heat_capacity = 1200.0 * J_per_kg_K;  // of cold fuel; weighs nothing in the result
const data::RelativeAtomicMasses& atoms() { return data::relative_atomic_masses(); }

/// Heat of formation at 25 degC of what holds one kilogram of carbon.
SpecificEnergy formation_per_carbon(std::string_view formula) {
  const data::SpeciesRow& row = data::species(formula);
  return IdealGas(row).enthalpy(reference) * (row.relative_mass / atoms().carbon);
}
SpecificEnergy oxygen_per_carbon() {  // one molecule for each atom of carbon; a millionth of the rest
  const data::SpeciesRow& row = data::species("O2");
  return IdealGas(row).enthalpy(reference) * (row.relative_mass / atoms().carbon);
}

/// Gibbs energy over RT by the seven coefficients.
double gibbs(const data::SpeciesRow& row, double t) {
  const auto& a = t < in(above_absolute_zero(row.middle), K) ? row.low : row.high;
  const double h = a[0] + t * (a[1] / 2 + t * (a[2] / 3 + t * (a[3] / 4 + t * a[4] / 5))) + a[5] / t;
  const double s = a[0] * std::log(t) + t * (a[1] + t * (a[2] / 2 + t * (a[3] / 3 + t * a[4] / 4))) + a[6];
  return h - s;
}
}  // namespace

FlueGas flue_gas(const data::FuelAnalysis& fuel, const AirAndFuel& mix) {
  require_within("air ratio", mix.air_ratio, {0.0, 1e6});
  require_within("share of the carbon that leaves as monoxide", mix.monoxide_carbon, {0.0, 1.0});
  const data::RelativeAtomicMasses& a = atoms();
  const double needed = stoichiometric_air(fuel), air = mix.air_ratio * needed, o2 = oxygen_in_air();
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
  return carbon_as_monoxide * atoms().oxygen / atoms().carbon / oxygen_in_air();
}

SpecificEnergy carbon_monoxide_heat() {
  static const SpecificEnergy heat =
      (formation_per_carbon("CO") + 0.5 * oxygen_per_carbon() - formation_per_carbon("CO2")) *
      (atoms().carbon / data::species("CO").relative_mass);
  return heat;
}

SpecificEnergy carbon_heat() {
  static const SpecificEnergy heat = oxygen_per_carbon() - formation_per_carbon("CO2");
  return heat;
}

Temperature adiabatic_temperature(const data::FuelAnalysis& fuel, const ColdMix& cold) {
  require_above_zero("net heating value of the fuel", cold.net_heat);
  const FlueGas gas = flue_gas(fuel, cold.mix);
  const double air = cold.mix.air_ratio * stoichiometric_air(fuel);
  const double monoxide = gas.shares.carbon_monoxide * gas.per_fuel;
  const SpecificEnergy heat = cold.net_heat - monoxide * carbon_monoxide_heat() +
                              air * dry_air_gas().sensible_enthalpy(cold.air) +
                              fuel_heat_capacity * (cold.air - reference);
  const IdealGas products = gas_of(gas.shares);
  return products.temperature(products.enthalpy(reference) + heat / gas.per_fuel);
}

double carbon_monoxide_loss(double monoxide_over_dioxide) {
  require_not_negative("carbon monoxide over dioxide", monoxide_over_dioxide);
  const double y = monoxide_over_dioxide / (1.0 + monoxide_over_dioxide);
  return y * (carbon_monoxide_heat() * (data::species("CO").relative_mass / atoms().carbon) / carbon_heat());
}

MassFlow carbon_monoxide_flow(Power lost) {
  require_not_negative("heat lost with carbon monoxide", lost);
  return lost / carbon_monoxide_heat();
}

Duration time_to_concentration(const ClosedRoom& room, MassFlow carbon_monoxide) {
  require_above_zero("volume of the room", room.volume);
  require_above_zero("concentration", room.concentration);
  require_above_zero("flow of carbon monoxide", carbon_monoxide);
  return room.volume * room.concentration / carbon_monoxide;
}

double boudouard_constant(Temperature t) {
  require_within("temperature of glowing carbon", t, {500.0, 2000.0});
  const double x = in(above_absolute_zero(t), K);
  // standard pressure 1 bar
  return std::exp(gibbs(data::graphite(), x) + gibbs(data::species("CO2"), x) - 2.0 * gibbs(data::species("CO"), x));
}
}  // namespace lumwright
