#include "draught/fan_test.hpp"
#include "data/fans.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>

namespace lumwright::draught {
Density density_in_box(const BoxReading& reading) {
  require_above_zero("density of the room's air", reading.room);
  require_above_zero("barometer", reading.barometer);
  require_above_zero("depression of the test box", reading.depression);
  const double share = 1.0 - reading.depression / reading.barometer;
  require_within("pressure in the test box over the barometer", share, {0.5, 1.0});
  return share * reading.room;
}

FanPoint fan_point(const BoxReading& reading) {
  const Density inside = density_in_box(reading);
  require_not_negative("flow through the test box", reading.flow);
  const VolumeFlow flow = reading.flow / inside;
  if (!reading.box) return {.flow = flow, .pressure = reading.depression};
  require_above_zero("cross-section of the test box", *reading.box);
  const Velocity through = flow / *reading.box;
  const Pressure pressure = reading.depression - 0.5 * inside * through * through;
  if (!(pressure > 0.0 * Pa))
    throw ModelError("the test box is too small: at " + format(flow, "l/min") + " the air in it moves with " +
                     format(through, "m/s") + ", which is all that " + format(reading.depression, "Pa") + " can do");
  return {.flow = flow, .pressure = pressure};
}

Band<double> speed_to_rated(const MotorLabel& label, Voltage voltage) {
  require_above_zero("voltage at the fan", voltage);
  MotorLabel turning = label;
  // Starts no later than it was read, and so, by the usual ratio, stops below.
  turning.starts_at = std::min(label.starts_at.value_or(voltage), voltage);
  const auto ratio = [&](std::optional<double> zero_share) {
    const MotorLaw law = motor_law(turning, zero_share);
    const Rotation here = fan_speed(law, voltage);
    if (!(here > 0.0 * rpm))
      throw ModelError("by the line of speed against voltage the fan stands still at " + format(voltage, "V"));
    return static_cast<double>(fan_speed(law, label.rated_voltage) / here);
  };
  const Band<double>& zero = data::fan_voltage().zero_speed;
  const double value = ratio(std::nullopt), a = ratio(zero.low), b = ratio(zero.high);
  return {.value = value, .low = std::min({value, a, b}), .high = std::max({value, a, b})};
}
}  // namespace lumwright::draught
