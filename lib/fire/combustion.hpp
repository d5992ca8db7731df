// What leaves a fire, and how hot it would be if it gave away no heat.
#pragma once
#include "data/fuels.hpp"
#include "matter/flue_gas.hpp"
#include "quantity/quantity.hpp"

namespace lumwright::fire {
struct AirAndFuel {
  double air_ratio;        // air over the air that burns the fuel exactly
  double monoxide_carbon;  // share of the carbon that leaves as carbon monoxide
};
/// Flue gas of one kilogram of fuel; the ash stays behind.
struct FlueGas {
  matter::GasShares shares;
  double per_fuel;  // mass of the gas over that of the fuel
};
/// Complete burning apart from the carbon monoxide; no dissociation, which matters below an air ratio of 1.3 (-150 K at
/// 1.0). Throws ModelError if the air does not suffice.
FlueGas flue_gas(const data::FuelAnalysis& fuel, const AirAndFuel& mix);

/// Heat that carbon monoxide carries away unburnt, for each kilogram of it: 10.10 MJ, from the heats of formation.
SpecificEnergy carbon_monoxide_heat();
/// Heat that a kilogram of carbon keeps back by leaving as monoxide: 23.56 MJ, likewise.
SpecificEnergy carbon_as_monoxide_heat();
/// Air, over the fuel's mass, that carbon leaving as monoxide (also over the fuel's mass) does without: half a molecule
/// of oxygen for each atom.
double air_spared(double carbon_as_monoxide);
}  // namespace lumwright::fire
