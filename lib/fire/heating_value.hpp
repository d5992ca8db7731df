// What a fuel gives and asks: heating values from its analysis, and the air it needs.
#pragma once
#include "data/fuels.hpp"
#include "quantity/quantity.hpp"

namespace lumwright::fire {
// Analyses are mass shares as fired; each throws ModelError for a share outside 0 to 1. Gross (higher) heating values
// count the heat of condensing the water, net (lower) ones do not: a fire gives the net.

/// Dry air over fuel, by mass, that burns it exactly: 11.51 C + 34.29 H + 4.31 S - 4.32 O. Stoichiometry. Throws
/// ModelError if the fuel needs none.
double stoichiometric_air(const data::FuelAnalysis& fuel);

/// Gross heating value: Channiwala and Parikh, Fuel 81 (2002) 1051-1063, from the elements and ash. Mean error 1.45 %.
/// Throws ModelError outside its range (on the dry fuel: C to 92.25, H 0.43 to 25.15, O to 50, N to 5.6, S to 94.08,
/// ash to 71.4 %).
SpecificEnergy gross_heat(const data::FuelAnalysis& fuel);

/// Net from gross: less 2.442 MJ for each kilogram of water that the fuel holds or forms.
SpecificEnergy net_heat(SpecificEnergy gross, const data::FuelAnalysis& fuel);
/// The usual chain: net_heat(gross_heat(fuel), fuel).
SpecificEnergy net_heat(const data::FuelAnalysis& fuel);
}  // namespace lumwright::fire
