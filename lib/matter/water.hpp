// Water and steam on the saturation line: what a boiler holds.
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright::matter {
/// Absolute pressure at which water boils at `t`. 273.15 to 647.096 K.
/// IAPWS R7-97(2012) (IF97), region 4, eq. 30; within 0.02 % of the scientific formulation. Throws ModelError outside.
Pressure saturation_pressure(Temperature t);

/// Temperature at which water boils at absolute pressure `p`. 611.213 Pa to 22.064 MPa.
/// IAPWS R7-97(2012), eq. 31, the exact inverse of eq. 30. Throws ModelError outside.
Temperature saturation_temperature(Pressure p);

/// Both phases side by side at one temperature. Energies are zero for the liquid at the triple point.
struct Saturation {
  Temperature temperature;
  Pressure pressure;  // absolute
  Density water_density;
  Density steam_density;
  SpecificEnergy water_enthalpy;
  SpecificEnergy steam_enthalpy;
  SpecificEnergy water_energy;  // internal: what a closed boiler stores
  SpecificEnergy steam_energy;
  SpecificEnergy alpha;  // auxiliary of the release; enthalpy = alpha + (T / density) dp/dT
};

/// State at `t`, 273.16 to 647.096 K. Pressure from region 4, the rest from IAPWS SR1-86(1992) (Wagner & Pruss,
/// J. Phys. Chem. Ref. Data 22, 1993, 783). Against IF97 over 5-188 degC: densities 0.014 %, energies 0.22 kJ/kg.
/// Throws ModelError outside.
Saturation saturation(Temperature t);
/// The same at an absolute pressure, 611.657 Pa to 22.064 MPa.
Saturation saturation_at(Pressure p);
}  // namespace lumwright::matter
