// How a small d.c. fan answers to voltage, to a chopped supply and to starting: shares of its rated values.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <string>

namespace lumwright::data {
/// Permanent-magnet motor with a fan on it; everything as a share of rated voltage, current and speed.
/// At rated voltage and speed: back_emf + winding = 1 and idle + air = 1.
struct MotorShares {
  double winding;   // voltage lost in the winding at rated current
  double back_emf;  // at rated speed
  double idle;      // current that does not depend on speed
  double air;       // current that rises with the square of speed
  Basis basis{};
};
const MotorShares& motor_shares();

struct FanElectrics {
  Band<double> current_exponent;  // current goes with voltage to this power
  Band<double> start_current;     // over rated, for a second or less
  Voltage regulator_dropout;      // least input over output of a series regulator
  Basis basis{};
};
const FanElectrics& fan_electrics();
}  // namespace lumwright::data
