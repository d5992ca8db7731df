// How fast a small fan turns at a voltage and whether it starts.
#pragma once
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <vector>

namespace lumwright::draught {
struct SpeedPoint {
  Voltage voltage;
  Rotation speed;
};
/// What is known of one fan's motor.
struct MotorLabel {
  Voltage rated_voltage;
  Rotation rated_speed;
  std::optional<Voltage> starts_at;  // from its sheet or by trial
  std::vector<SpeedPoint> speed_at;  // measured, rising in voltage; may be empty
};
/// Its two-wire brushless motor. Motors whose speed is governed (four wires, a thermistor) do not behave so.
struct MotorLaw {
  Voltage rated_voltage;
  Band<Voltage> starts;          // from rest
  Band<Voltage> stops;           // when running; a little lower
  Voltage highest;               // sheets allow no more
  std::vector<SpeedPoint> line;  // two points or more: straight through them and on beyond both ends
};
/// Speed rises on a straight line with voltage. Without measured points the line is (V - V0) / (Vr - V0) with V0 =
/// `zero_share` of the rated voltage: by default the middle of data::fan_voltage().zero_speed, which a sampler varies.
/// One measured point is joined to the rated one; two or more stand alone. Throws ModelError for ratings not above
/// zero, a share of 1 or more, points out of order or that do not rise.
MotorLaw motor_law(const MotorLabel& label, std::optional<double> zero_share = std::nullopt);

/// Zero below the voltage at which a running fan stops. Above `highest` the line goes on: see fan_motion.
Rotation fan_speed(const MotorLaw& law, Voltage voltage);

/// What reaches a fan. A chopped lead gives its full voltage part of the time: what that makes of the speed is worked
/// out with the supply.
struct FanDrive {
  Voltage voltage;
  std::optional<double> chopped_speed;  // over the rated one
};
/// The speed on that. Throws ModelError where the fan does not turn.
Rotation driven_speed(const MotorLaw& law, const FanDrive& drive);

enum class FanMotion {
  stopped,        // below the voltage that keeps it turning
  may_not_start,  // turns on if it already turns; does not start from rest
  runs,
  too_high,  // above what sheets allow
};
FanMotion fan_motion(const MotorLaw& law, Voltage voltage);
}  // namespace lumwright::draught
