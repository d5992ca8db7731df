// Everything between pack and air: a fan's electrical law, the speed control before it, the step-up before that.
#pragma once
#include "data/speed_control.hpp"
#include "power/step_up.hpp"
#include "quantity/quantity.hpp"
#include <optional>

namespace lumwright::power {
/// Current goes with a power of voltage: I = Ir (V/Vr)^x. With x = 2 the power follows the cube of the speed.
struct FanLaw {
  Voltage rated_voltage;
  Current rated_current;
  double current_exponent;
};
/// Throws ModelError unless V > 0 and the law's fields are positive.
Current fan_current(const FanLaw& fan, Voltage v);

/// A fan motor on a supply that is chopped; shares of rated values.
struct MotorState {
  double speed;    // over rated speed
  double current;  // mean, over rated current
};
/// Permanent-magnet motor, current only while the supply is on: D (v - b n)/w = i0 + a n^2. `duty` over 0 to 1; 1 is a
/// steady supply. The speed is above the duty, as D. Alfano (AN772, 2004) reports. Throws ModelError if the fan stands
/// still.
MotorState motor_state(const data::MotorShares& motor, double supply_over_rated, double duty);

struct Control {
  enum class Kind {
    none,             // the fan sees what the step-up or the pack gives
    chopped_supply,         // the supply lead is chopped at tens of hertz, no coil, no freewheel diode
    lower_output,     // the step-up is turned down
    series_regulator  // a linear regulator before the fan turns the rest into heat
  } kind;
  double duty;      // of chopped_supply, over 0 to 1
  Voltage voltage;  // at the fan, of the last two
};
/// No control at all.
Control uncontrolled();

/// Step-up (if any), control, fan.
struct FanSupply {
  FanLaw fan;
  Control control;
  std::optional<StepUp> step_up;
  data::MotorShares motor;
  Voltage regulator_dropout;
};
/// What the pack is asked for at one input voltage, and what the fan gets for it.
struct SupplyState {
  Current drawn;        // mean
  double on_share;      // of the time in which it flows; below 1 only when the pack's own lead is chopped
  Voltage fan_voltage;  // while on
  double speed;         // over rated: with voltage, or of the chopped motor
  Power fan;            // mean, at the fan's leads
  Power from_output;    // mean, taken from the step-up's output or the pack: fan, and regulator
  std::optional<StepUpState> step_up;
};
/// Throws ModelError for lower_output without a step-up, a duty or voltage out of range, or if the step-up cannot
/// deliver.
SupplyState supply_state(const FanSupply& supply, Voltage input);
}  // namespace lumwright::power
