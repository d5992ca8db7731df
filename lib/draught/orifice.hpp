// Flow through a hole between two large spaces: bleed holes, doors, dampers, leaks, the plate of a fan test.
#pragma once
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <string_view>

namespace lumwright::draught {
/// m = Cd A sqrt(2 rho drop), for drops far below the absolute pressure. Cd above 0 to 1; area and drop not below zero;
/// density above zero and of the gas on the upstream side. Error: that of Cd. Throws ModelError.
MassFlow orifice_flow(double cd, Area area, Density density, Pressure drop);

/// The drop that sends `flow` through the hole. Area above zero.
Pressure orifice_drop(double cd, Area area, Density density, MassFlow flow);

/// The diameter of one round hole for a flow and a drop, both above zero.
Length orifice_diameter(double cd, Density density, Pressure drop, MassFlow flow);

/// Discharge coefficient and its spread from data/discharge.yaml: "sharp hole", "thick hole", "rounded hole", "door",
/// "thin ring", "test plate". Throws ModelError for another name.
Band<double> discharge_coefficient(std::string_view kind);
}  // namespace lumwright::draught
