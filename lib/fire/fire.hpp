// One fire at one instant: what its air turns into, and where the heat goes.
#pragma once
#include "data/fuels.hpp"
#include "fire/burning_bed.hpp"
#include "matter/nasa.hpp"
#include "quantity/quantity.hpp"

namespace lumwright::fire {
/// The share of the bed that burns climbs on a straight line from `lit_at_start` (0 to 1) to all of it.
struct Kindling {
  double lit_at_start;
  Duration duration;  // zero: the whole bed is alight from the start
};
/// Times not below zero, else ModelError.
double lit_share(const Kindling& kindling, Duration time);

struct FireInput {
  data::FuelAnalysis fuel;    // as fired
  SpecificEnergy net_heat;    // as fired; net_heat(fuel) where nothing better is known
  double ash_left;            // share of the fuel of this analysis that stays in the pan; the rest goes with the gas
  BurnDepth depth;            // kept by topping up
  double monoxide_loss;       // share of the heat that leaves unburnt as carbon monoxide, 0 to below 1
  Mass bed;                   // fuel on the grate
  SpecificHeat bed_capacity;  // data::glowing_bed()
  Temperature glow;           // likewise; hotter than the air
  Temperature bed_exit;       // of the gas where it leaves the bed
  Kindling kindling;
  Temperature air;  // and fuel
};

/// What becomes of the air at one instant. Every power is worked out from the flows: `chemical` less the three others
/// is zero.
struct Burning {
  double air_used;          // share of the air through the engine whose oxygen burns fuel: 1 / air ratio
  MassFlow fuel;            // that burns away, its ash included
  MassFlow gas;             // that enters the tubes
  MassFlow blown_out;       // hot gas that puffs out of the fire-door, where the firebox has no suction
  Power chemical;           // net heat of the fuel
  Power carbon_monoxide;    // leaves unburnt
  Power bed;                // warms the bed up
  Power to_gas;             // the rest
  SpecificEnergy enthalpy;  // of `mixture` as it leaves the bed, before it has given any heat away
  matter::IdealGas mixture;  // all the gas that enters the tubes
};

/// A fire that has been looked over, with its constants worked out.
class Fire {
 public:
  /// Throws ModelError for anything out of its range, a glow that is no hotter than the air, or more heat lost with
  /// carbon monoxide than the fuel has carbon for.
  explicit Fire(const FireInput& input);

  const FireInput& input() const { return input_; }
  double monoxide_carbon() const { return monoxide_carbon_; }  // share of the carbon that leaves as monoxide
  double conversion() const { return conversion_; }            // of the oxygen, in the bed
  Energy bed_heat() const { return bed_heat_; }                // from cold to glow, all of it
  SpecificEnergy cold_enthalpy(const matter::IdealGas& gas) const { return gas.enthalpy(input_.air); }
  double fuel_per_air(double lit) const { return lit * conversion_ / air_taken_; }  // of the bed's air
  double gas_per_air(double lit) const { return gasified_ * fuel_per_air(lit); }

  /// Heat that kindling takes to warm the bed, while it lasts: bed_heat (1 - lit at start) / duration.
  Power kindling_heat() const;

  /// The fire at one instant. `wanted_by_bed` is what the bed would take; it takes no more than there is. Air past the
  /// bed below zero means that gas puffs out. `lit` 0 to 1, flows not below zero, else ModelError. No flow gives no
  /// heat.
  Burning burn(double lit, Power wanted_by_bed, MassFlow bed_air, MassFlow past_bed) const;

  Temperature bed_gas(double lit) const;  // mean over the depth
  /// Fuel that has become gas, over the bed's air, as the mean over the depth: it comes in as the oxygen goes.
  double gas_in_bed(double lit) const { return bed_mean_use(input_.depth) * gas_per_air(lit); }

 private:
  FireInput input_;
  double air_demand_, monoxide_carbon_, air_taken_, gasified_, conversion_;
  Energy bed_heat_;
  matter::IdealGas products_, air_;
};
}  // namespace lumwright::fire
