// From one reading of a shop-made fan test to a point of the fan's curve: its static pressure, its own air, its rated
// speed.
#pragma once
#include "draught/fan.hpp"
#include "draught/fan_speed.hpp"
#include <optional>

namespace lumwright::draught {
/// The fan draws the air out of the box, which it enters through the meter.
struct BoxReading {
  Pressure depression;  // of the box below the room, at its wall; above zero
  MassFlow flow;        // zero with the lid closed
  Density room;
  Pressure barometer;       // absolute
  std::optional<Area> box;  // its cross-section; without it the air in it counts as still
};
/// Static pressure of ISO 5801 (outlet static less inlet total: the depression less the velocity head of the air that
/// comes through the box) and the flow at the fan's own, slightly thinner, air; both as read. Throws ModelError for
/// values out of range and where the box is so small that nothing is left.
FanPoint fan_point(const BoxReading& reading);
/// The density at the fan: the room's, thinned by the depression.
Density density_in_box(const BoxReading& reading);

/// Rated speed over the speed at `voltage`, by the motor law; low and high with the usual spread of data::fan_voltage
/// unless speeds were measured. A fan that was read at a voltage does turn there, whatever usual fans do. Throws
/// ModelError as motor_law does, and for a voltage at which the law has no speed.
Band<double> speed_to_rated(const MotorLabel& label, Voltage voltage);
}  // namespace lumwright::draught
