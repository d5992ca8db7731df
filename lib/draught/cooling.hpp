// What the gas loses on its way to the fan: heat to the room, by mixing with bleed air, and natural draught gained.
#pragma once
#include "quantity/quantity.hpp"
#include <span>

namespace lumwright::draught {
struct GasColumn {
  Length height;    // of the rise; below zero for a duct that leads down
  Density ambient;  // of the air beside it
  Density gas;      // in it
};
/// Natural draught g h (rho_ambient - rho_gas); below zero hinders. Densities above zero, else ModelError.
Pressure natural_draught(const GasColumn& column);

struct Stream {
  MassFlow flow;  // not below zero
  SpecificHeat heat_capacity;
  Temperature temperature;
};
/// Temperature after mixing: sum(m cp T) / sum(m cp), each stream with its own cp. At least one stream must flow.
Temperature mixing_temperature(std::span<const Stream> streams);

/// Bleed air over gas, by mass, that holds the mixture at `hold` when both have one cp: (Tgas - hold) / (hold -
/// Tbleed); zero if the gas is no hotter. `hold` must be above the bleed air, else ModelError.
struct BleedDuty {
  Temperature gas;
  Temperature bleed;
  Temperature hold;
};
double bleed_ratio(const BleedDuty& duty);

struct GasCooling {
  MassFlow flow;  // above zero
  SpecificHeat heat_capacity;
  ThermalConductance conductance;  // UA, not below zero
  Temperature inlet;
  Temperature ambient;
};
/// Gas at the end of a tube whose surroundings stay at one temperature: falls by exp(-NTU), NTU = UA / (m cp).
Temperature cooled_along_tube(const GasCooling& cooling);
/// Gas that leaves a well-stirred box: falls by 1 / (1 + NTU).
Temperature cooled_well_mixed(const GasCooling& cooling);

/// Bare tube in the open, gas inside.
struct TubeWall {
  Length bore;
  Length outside;
  Length length;
  double emissivity;  // of the outside
};
/// Closed sheet-metal box, gas inside.
struct BoxWall {
  Length height;
  Area area;          // that the gas touches and the room cools
  double emissivity;  // of the outside
  double stirring;    // inside coefficient over that of still gas: 1 still, 2 usual, within a factor of two
};
/// How well the gas is coupled to the room, and the wall between them.
struct WallBalance {
  ThermalConductance conductance;  // heat over (gas - ambient)
  Temperature wall;
};
/// Inside tube_nusselt with gas properties at `gas`; outside cylinder free convection and radiation at the wall
/// temperature that balances both (bracketed root between gas and ambient). Conduction through thin metal is neglected.
/// +-25 %. `guess`: where between room (0) and gas (1) the wall may be; it saves steps and changes nothing else.
WallBalance tube_conductance(const TubeWall& tube, MassFlow flow, Temperature gas, Temperature ambient,
                             double guess = 0.5);
/// Inside and outside free convection on the box's height. A factor of two.
WallBalance box_conductance(const BoxWall& box, Temperature gas, Temperature ambient, double guess = 0.5);
}  // namespace lumwright::draught
