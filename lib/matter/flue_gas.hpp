// Flue gas: what it consists of, the heat it holds, and how it conducts.
#pragma once
#include "matter/nasa.hpp"
#include "quantity/quantity.hpp"

namespace lumwright::matter {
/// Mass shares; they add up to one, else ModelError. "Nitrogen" is all of the air that is not oxygen, argon included;
/// sulphur dioxide goes with carbon dioxide, whose heat for each molecule is within 7 % of its own.
struct GasShares {
  double carbon_dioxide;
  double water;
  double carbon_monoxide;
  double oxygen;
  double nitrogen;
};
/// Dry air.
GasShares air_shares();
/// Mass share of oxygen in dry air: 0.23145.
double oxygen_in_air();
/// The heat of such a gas. Shares may be a little below zero from rounding, no more.
IdealGas gas_of(const GasShares& shares);
/// The heat of dry air by the same polynomials.
const IdealGas& dry_air_gas();

/// Thermal conductivity of hot air and flue gas: US Standard Atmosphere 1976, eq. 53. Flue gas with 13 % carbon dioxide
/// conducts 5 % less. 200 to 2500 K, else ModelError. For its viscosity `air_viscosity` is good enough (-2 %).
Conductivity flue_gas_conductivity(Temperature t);
}  // namespace lumwright::matter
