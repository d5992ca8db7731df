// A bed of burning lumps: how much of the oxygen it uses, how hot it is, how long it lasts and when the draught lifts
// it.
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright::fire {
/// Depth of the bed, and the depth in which it uses up all but 1/e of the oxygen: about one lump.
struct BurnDepth {
  Length bed;
  Length burn;
};
/// Share of the oxygen that the bed uses: 1 - exp(-H/l). Both above zero, else ModelError. A bed of under two lumps
/// lets air slip; one of over five or six makes carbon monoxide.
double bed_conversion(const BurnDepth& depth);

/// Share of the oxygen that is gone, as the mean over the depth: 1 - l/H (1 - exp(-H/l)). As bed_conversion.
double bed_mean_use(const BurnDepth& depth);

/// Mean temperature of the gas in the bed, for its flow resistance: gas and lumps meet within the burn depth, so that
/// the gas climbs from cold to that of its exit as the oxygen goes. `lit` is the share of the bed that glows; 0 to 1.
struct BedGas {
  BurnDepth depth;
  Temperature cold;
  Temperature exit;
};
Temperature bed_gas_mean(const BedGas& bed, double lit);

/// The flux of gas that floats a lump: Wen and Yu, AIChE J. 12 (1966) 610. +-25 %. Gas between air and flue gas, at one
/// atmosphere.
struct LooseLump {
  Length diameter;
  Density density;  // of one piece
};
MassFlux lifting_flux(const LooseLump& lump, Temperature gas);

/// Mass of fuel on the grate and the depth it lies at, by the bulk density. All above zero, else ModelError.
Mass bed_mass(Area grate, Length depth, Density bulk);
/// Time in which half of the bed burns: top up this often.
Duration top_up_interval(Mass bed, MassFlow burning);

/// Heat that brings a bed from cold to glow.
Energy bed_heat(Mass bed, SpecificHeat heat_capacity, TemperatureRise rise);
}  // namespace lumwright::fire
