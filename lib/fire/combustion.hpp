// What leaves a fire, and how hot it would be if it gave away no heat.
#pragma once
#include "data/fuels.hpp"
#include "matter/flue_gas.hpp"
#include "quantity/quantity.hpp"

namespace lumwright {
struct AirAndFuel {
  double air_ratio;        // air over the air that burns the fuel exactly
  double monoxide_carbon;  // share of the carbon that leaves as carbon monoxide
};
/// Flue gas of one kilogram of fuel; the ash stays behind.
struct FlueGas {
  GasShares shares;
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
/// Heat of burning pure carbon (graphite) to carbon dioxide: 32.76 MJ/kg, from the same heats of formation.
SpecificEnergy carbon_heat();

struct ColdMix {
  SpecificEnergy net_heat;  // of the fuel
  AirAndFuel mix;
  Temperature air;  // and fuel
};
/// Flame temperature of a fuel with no loss but the carbon monoxide. As `flue_gas`.
Temperature adiabatic_temperature(const data::FuelAnalysis& fuel, const ColdMix& cold);

/// The share of carbon's heat lost when the flue gas holds these molecules of monoxide for each of dioxide:
/// y 282.98/393.51 with y = CO/(CO + CO2). 0 and above.
double carbon_monoxide_loss(double monoxide_over_dioxide);
/// Carbon monoxide that carries the lost power away.
MassFlow carbon_monoxide_flow(Power lost);
/// Time in which it brings the air of a closed room to a concentration; no air change. All above zero, else ModelError.
struct ClosedRoom {
  Volume volume;
  Density concentration;
};
Duration time_to_concentration(const ClosedRoom& room, MassFlow carbon_monoxide);

/// Equilibrium constant of C + CO2 = 2 CO, pressures in bar, from the heats and entropies of formation: one at 973 K,
/// above which a deep bed turns the dioxide back into monoxide. 500 to 2000 K.
double boudouard_constant(Temperature t);
}  // namespace lumwright
