// Heat from the gas in the fire tubes to the water.
#pragma once
#include "matter/convection.hpp"
#include "matter/nasa.hpp"
#include "quantity/quantity.hpp"

namespace lumwright::boiler {
/// Laminar, wall of one temperature, heat boundary layer developing: VDI Heat Atlas, part G1 (Gnielinski). Becomes 3.66
/// in a long tube. Reynolds number not below zero, Prandtl number and bore over length above zero, else ModelError.
double laminar_nusselt(const matter::TubeHeat& at);
/// Turbulent, with the entry of a short tube: the same source. Reynolds number from 2300, else ModelError.
double turbulent_nusselt(const matter::TubeHeat& at);
/// All of them joined: laminar to 2300, turbulent from 4000, and between them the straight line in the Reynolds number.
/// +-10 % laminar, +-20 % between.
double fire_tube_nusselt(const matter::TubeHeat& at);

struct HeatingTubes {
  int count;
  Length bore;
  Length length;
};
struct TubeGas {
  MassFlow flow;  // through all tubes; not below zero
  Temperature inlet;
  matter::IdealGas mixture;
};
struct TubeBalance {
  Temperature exit;
  Temperature mean;  // along the tube: what friction sees
  Power heat;
  double reynolds, nusselt;
  double transfer_units;  // conductance over heat capacity flow
  HeatTransfer coefficient;
};
/// Exit temperature from exp(-NTU) towards the water, with gas properties at the middle of inlet and exit and the mean
/// heat capacity between them; heat from the enthalpies. Solved to 1e-10 of the temperature between water and inlet.
/// Gas properties are air's (viscosity) and flue_gas_conductivity. Water side and copper are left out: 3 % of the
/// resistance. No flow: exit as warm as the water. Throws ModelError for a count below 1, sizes not above zero, or a
/// gas outside the range of its properties.
/// `guess`: where between water (0) and inlet (1) the gas may leave; it saves passes and changes nothing else.
TubeBalance tube_balance(const HeatingTubes& tubes, const TubeGas& gas, Temperature water, double guess = 0.3);
}  // namespace lumwright::boiler
