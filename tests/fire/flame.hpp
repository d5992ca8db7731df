// Complete burning by itself, and what a flue-gas tester would read: second opinions on the fire's gas.
#pragma once
#include "data/species.hpp"
#include "fire/combustion.hpp"
#include "fire/heating_value.hpp"

namespace lumwright {
inline constexpr Temperature at_25 = kelvin(298.15);  // of heating values

/// Heat of burning pure carbon (graphite) to carbon dioxide, from the heats of formation: 32.76 MJ/kg.
inline SpecificEnergy carbon_heat() {
  const double carbon = data::relative_atomic_masses().carbon;
  const auto formed = [&](std::string_view formula) {
    const data::SpeciesRow& row = data::species(formula);
    return matter::IdealGas(row).enthalpy(at_25) * (row.relative_mass / carbon);
  };
  return formed("O2") - formed("CO2");
}
struct ColdMix {
  SpecificEnergy net_heat;  // of the fuel
  fire::AirAndFuel mix;
  Temperature air;  // and fuel
};
/// Flame temperature of a fuel with no loss but the carbon monoxide.
inline Temperature adiabatic_temperature(const data::FuelAnalysis& fuel, const ColdMix& cold) {
  constexpr SpecificHeat cold_fuel = 1200.0 * J_per_kg_K;  // weighs nothing in the result
  const fire::FlueGas gas = fire::flue_gas(fuel, cold.mix);
  const double air = cold.mix.air_ratio * fire::stoichiometric_air(fuel);
  const double monoxide = gas.shares.carbon_monoxide * gas.per_fuel;
  const SpecificEnergy air_brings = matter::dry_air_gas().enthalpy(cold.air) - matter::dry_air_gas().enthalpy(at_25);
  const SpecificEnergy heat =
      cold.net_heat - monoxide * fire::carbon_monoxide_heat() + air * air_brings + cold_fuel * (cold.air - at_25);
  const matter::IdealGas products = matter::gas_of(gas.shares);
  return products.temperature(products.enthalpy(at_25) + heat / gas.per_fuel);
}

/// Shares of the molecules of a gas from which the water has been taken out.
struct DryReading {
  double carbon_dioxide, oxygen;
};
inline DryReading dry_reading(const matter::GasShares& s) {
  const auto molecules = [](double share, std::string_view formula) {
    return share / data::species(formula).relative_mass;
  };
  const double n_co2 = molecules(s.carbon_dioxide, "CO2"), n_o2 = molecules(s.oxygen, "O2");
  const double n = n_co2 + n_o2 + molecules(s.carbon_monoxide, "CO") + s.nitrogen / data::dry_air().rest_relative_mass;
  return {.carbon_dioxide = n_co2 / n, .oxygen = n_o2 / n};
}
}  // namespace lumwright
