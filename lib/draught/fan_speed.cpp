#include "draught/fan_speed.hpp"
#include "data/fans.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::draught {
namespace {
Band<Voltage> share_of(Voltage rated, const Band<double>& share) {
  return {.value = share.value * rated, .low = share.low * rated, .high = share.high * rated};
}

void check_label(const MotorLabel& label) {
  require_above_zero("rated voltage of the fan", label.rated_voltage);
  require_above_zero("rated speed of the fan", label.rated_speed);
  if (label.starts_at) require_above_zero("start voltage of the fan", *label.starts_at);
}

void check_line(const std::vector<SpeedPoint>& line) {
  for (std::size_t i = 0; i < line.size(); ++i) {
    require_finite("voltage of a measured fan speed", line[i].voltage);
    require_not_negative("measured fan speed", line[i].speed);
    const std::string here = "fan speed " + format(line[i].speed, "rpm") + " at " + format(line[i].voltage, "V");
    if (i > 0 && !(line[i].voltage > line[i - 1].voltage)) throw ModelError(here + " is out of order");
    if (i > 0 && !(line[i].speed > line[i - 1].speed)) throw ModelError(here + " does not rise with voltage");
  }
}

std::vector<SpeedPoint> speed_line(const MotorLabel& label, double zero_share) {
  const SpeedPoint rated{.voltage = label.rated_voltage, .speed = label.rated_speed};
  std::vector<SpeedPoint> line = label.speed_at;
  const bool repeats_rated = line.size() == 1 && line.front().voltage == rated.voltage;
  if (line.empty() || repeats_rated) {
    if (!(zero_share < 1.0) || !std::isfinite(zero_share))
      throw ModelError("a fan's zero-speed voltage must lie below its rated voltage");
    line.insert(line.begin(), {.voltage = zero_share * label.rated_voltage, .speed = 0.0 * rpm});
    if (!repeats_rated) line.push_back(rated);
  } else if (line.size() == 1) {
    line.insert(line.front().voltage < rated.voltage ? line.end() : line.begin(), rated);
  }
  check_line(line);
  return line;
}
}  // namespace

MotorLaw motor_law(const MotorLabel& label, std::optional<double> zero_share) {
  check_label(label);
  const data::FanVoltage& usual = data::fan_voltage();
  const Band<Voltage> starts =
      label.starts_at ? exactly(*label.starts_at) : share_of(label.rated_voltage, usual.starts);
  const Band<double>& ratio = usual.stops_over_starts;
  MotorLaw law{
      .rated_voltage = label.rated_voltage,
      .starts = starts,
      .stops = {.value = ratio.value * starts.value, .low = ratio.low * starts.low, .high = ratio.high * starts.high},
      .highest = usual.highest * label.rated_voltage,
      .line = speed_line(label, zero_share.value_or(usual.zero_speed.value))};
  // A fan that was measured turning at a voltage does not stop above it.
  for (const SpeedPoint& seen : label.speed_at)
    if (seen.speed > 0.0 * rpm)
      for (Voltage* limit : {&law.stops.value, &law.stops.low, &law.stops.high})
        *limit = std::min(*limit, seen.voltage);
  return law;
}

Rotation fan_speed(const MotorLaw& law, Voltage voltage) {
  require_finite("fan voltage", voltage);
  if (law.line.size() < 2) throw ModelError("a fan's line of speed against voltage needs two points");
  if (voltage < law.stops.value) return 0.0 * rpm;
  std::size_t upper = 1;
  while (upper + 1 < law.line.size() && voltage > law.line[upper].voltage) ++upper;
  const SpeedPoint a = law.line[upper - 1], b = law.line[upper];
  const Rotation speed = a.speed + (b.speed - a.speed) * ((voltage - a.voltage) / (b.voltage - a.voltage));
  return std::max(speed, 0.0 * rpm);
}
Rotation driven_speed(const MotorLaw& law, const FanDrive& drive) {
  const Rotation speed = drive.chopped_speed ? *drive.chopped_speed * fan_speed(law, law.rated_voltage)
                                             : fan_speed(law, drive.voltage);
  if (!(speed > 0.0 * rpm))
    throw ModelError("the fan does not turn on the " + format(drive.voltage, "V") + " that reaches it");
  return speed;
}

FanMotion fan_motion(const MotorLaw& law, Voltage voltage) {
  if (voltage > law.highest) return FanMotion::too_high;
  if (!(fan_speed(law, voltage) > 0.0 * rpm)) return FanMotion::stopped;
  return voltage < law.starts.value ? FanMotion::may_not_start : FanMotion::runs;
}
}  // namespace lumwright::draught
