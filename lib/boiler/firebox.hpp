// The firebox as one well-stirred zone: hot gas that gives heat to the plates by radiation and convection.
#pragma once
#include "matter/nasa.hpp"
#include "quantity/quantity.hpp"
#include <optional>

namespace lumwright::boiler {
struct Firebox {
  Area surface;             // that has water behind it, above the bed
  double emissivity;        // of bed, flame and plates together; 0 to 1
  HeatTransfer convection;  // not below zero
};
struct FireboxGas {
  MassFlow flow;            // not below zero
  SpecificEnergy enthalpy;  // as it leaves the bed
  matter::IdealGas mixture;
};
struct FireboxBalance {
  Temperature gas;  // of the zone, and of what enters the tubes
  Power heat;       // to the plates
};
/// m (h(T_adiabatic) - h(T)) = (radiation + convection) surface (T - T_water): Hottel's zero-dimensional furnace (Lobo
/// and Evans, 1939). The side that falls with T is curved one way only, so Newton's method from the hot end reaches the
/// one root; to 1e-12 of the temperature. A `guess` of the gas saves steps and changes nothing else. Halving or
/// doubling the emissivity moves the time to steam by half a per cent at one flow of air, because the tubes take what
/// the firebox leaves; coupled with fan and path it is 2 to 4 %, for a cooler firebox lets more gas through the tubes.
/// No flow: the gas is as warm as the water. Throws ModelError for a surface below zero, an emissivity outside 0 to 1,
/// or an enthalpy outside the range of the gas.
FireboxBalance firebox_balance(const Firebox& firebox, const FireboxGas& gas, Temperature water,
                               std::optional<Temperature> guess = {});
}  // namespace lumwright::boiler
