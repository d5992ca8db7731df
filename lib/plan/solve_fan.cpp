#include "data/fans.hpp"
#include "plan/solved.hpp"
#include <cmath>

namespace lumwright {
namespace {
using Missing = std::vector<std::string>;
std::vector<FanPoint> sheet_points(const part::FanPart& fan) {
  std::vector<FanPoint> points;
  for (const auto& p : fan.curve.points) points.push_back({p.x, p.y});
  return points;
}
std::optional<FanLabel> label_of(const Build& build, Inputs& inputs, Missing& missing) {
  const part::FanPart& fan = build.fan;
  if (!fan.kind) missing.emplace_back("fan.kind");
  const auto frame = fan.curve ? inputs.known("fan.frame", fan.frame) : needed(inputs, "fan.frame", fan.frame, missing);
  // What a step-up is set to says nothing of what the fan behind it stands.
  const auto voltage = needed(inputs, "fan.rated.voltage", fan.rated.voltage, missing);
  if (!missing.empty()) return std::nullopt;
  return FanLabel{.kind = *fan.kind == "axial" ? FanKind::axial : FanKind::centrifugal,
                  .frame = frame.value_or(0.0 * mm),
                  .thickness = inputs.known("fan.thickness", fan.thickness),
                  .rated_voltage = *voltage,
                  .rated_current = inputs.known("fan.rated.current", fan.rated.current),
                  .rated_speed = inputs.known("fan.rated.speed", fan.rated.speed)};
}
FanCurve curve_of(const part::FanPart& fan, const FanLabel& label, Rotation speed) {
  if (fan.curve) return curve_from_sheet({label.kind, speed, sheet_points(fan)});
  return curve_from_label(label);
}
std::vector<SpeedPoint> measured_speeds(const part::FanPart& fan) {
  std::vector<SpeedPoint> points;
  for (const auto& p : fan.speed_at.points) points.push_back({p.x, p.y});
  return points;
}
Voltage most_voltage(const part::FanPart& fan, Inputs& inputs, Voltage usual) {
  const data::FanVoltage& allowed = data::fan_voltage();
  return inputs.otherwise(
      "fan.voltage_most", fan.voltage_most, exactly(usual),
      because("a little above the rated voltage, as sheets allow", allowed.source, allowed.standing));
}
}  // namespace

Outcome<SolvedFan> solve_fan(const Build& build, Inputs& inputs) {
  return attempt<SolvedFan>([&](Missing& missing) -> std::optional<SolvedFan> {
    const part::FanPart& fan = build.fan;
    const auto label = label_of(build, inputs, missing);
    if (!label) return std::nullopt;
    const data::GenericFan* generic = label->frame > 0.0 * mm ? nearest_generic(*label) : nullptr;
    Rotation speed = label->rated_speed.value_or(0.0 * rpm);
    if (!label->rated_speed && generic)
      speed = inputs.otherwise(
          "fan.rated.speed", fan.rated.speed, exactly(generic->rated_speed),
          because("as a usual fan of this size (" + generic->id + ")", generic->source, generic->standing));
    else if (!label->rated_speed)  // only ratios of speed enter where a data sheet gives the curve
      speed = inputs.otherwise("fan.rated.speed", fan.rated.speed, exactly(4000.0 * rpm),
                               because("any value: the curve is given", "similarity laws", "derived"));
    std::optional<Current> current = label->rated_current;
    if (!current && !build.load.power && generic)
      current = inputs.otherwise(
          "fan.rated.current", fan.rated.current, exactly(generic->rated_current),
          because("as a usual fan of this size (" + generic->id + ")", generic->source, generic->standing));
    const data::FanGasLimit& limits = data::fan_gas_limit();
    FanCurve curve = curve_of(fan, *label, speed);
    if (curve.basis().origin != CurveOrigin::data_sheet)
      inputs.note(
          {"fan.curve", "estimated", "", curve.basis().sentence, "data table of usual fans", curve.basis().standing});
    const double stronger = inputs.constant<double>("tuned.fan_pressure");
    if (stronger != 1.0) curve = stretched(curve, {.pressure = stronger, .flow = std::sqrt(stronger)});
    MotorLaw motor =
        motor_law({label->rated_voltage, speed, inputs.known("fan.starts_at", fan.starts_at), measured_speeds(fan)});
    motor.highest = most_voltage(fan, inputs, motor.highest);
    return SolvedFan{
        .label = *label,
        .curve = std::move(curve),
        .motor = motor,
        .current = current,
        .gas_limit = inputs.otherwise("fan.gas_limit", fan.gas_limit, {limits.watch, limits.watch, limits.stop},
                                      because("usual limit of small fans", limits.source, limits.standing)),
        .inside = inputs.usual("fan.mount", fan.mount) == "inside"};
  });
}
}  // namespace lumwright
