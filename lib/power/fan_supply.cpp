#include "power/fan_supply.hpp"
#include "power/output_draw.hpp"
#include "power/require.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright {
namespace {
Voltage regulated(const FanSupply& supply, Voltage before) {
  const Voltage v = std::min(supply.control.voltage, before - supply.regulator_dropout);
  require_positive(v, "V", "output of the series regulator");
  return v;
}

OutputDraw chopped(const FanSupply& supply, Voltage v) {
  const MotorState motor = motor_state(supply.motor, in(v, supply.fan.rated_voltage), supply.control.duty);
  const Current mean = motor.current * supply.fan.rated_current;
  return {.current = mean, .fan_voltage = v, .speed = motor.speed, .fan = v * mean};
}
}  // namespace

Current fan_current(const FanLaw& fan, Voltage v) {
  require_positive(v, "V", "fan voltage");
  return fan.rated_current * std::pow(in(v, fan.rated_voltage), fan.current_exponent);
}

MotorState motor_state(const data::MotorShares& motor, double supply_over_rated, double duty) {
  require_positive(supply_over_rated, "", "fan voltage over rated");
  require_share(duty, "duty");
  const double driving = duty * supply_over_rated - motor.idle * motor.winding;
  if (!(driving > 0.0)) throw ModelError("duty " + format_number(duty) + " leaves the fan standing still");
  const double b = duty * motor.back_emf;
  const double speed =
      2.0 * driving / (b + std::sqrt(b * b + 4.0 * motor.air * motor.winding * driving));  // free of cancellation
  return {.speed = speed, .current = motor.idle + motor.air * speed * speed};
}

Control uncontrolled() { return {.kind = Control::Kind::none, .duty = 1.0, .voltage = Voltage()}; }

void check(const FanSupply& supply) {
  require_positive(supply.fan.rated_voltage, "V", "rated fan voltage");
  require_positive(supply.fan.rated_current, "A", "rated fan current");
  require_positive(supply.fan.current_exponent, "", "exponent of fan current");
  switch (supply.control.kind) {
    case Control::Kind::none:
      break;
    case Control::Kind::chopped_supply:
      require_share(supply.control.duty, "duty");
      break;
    case Control::Kind::lower_output:
      require_positive(supply.control.voltage, "V", "lowered output");
      if (!supply.step_up)
        throw ModelError("lowered output " + format(supply.control.voltage, "V") + " needs a step-up to lower");
      break;
    case Control::Kind::series_regulator:
      require_positive(supply.control.voltage, "V", "output of the series regulator");
      require_not_negative(supply.regulator_dropout, "V", "dropout of the series regulator");
      break;
  }
}

std::optional<StepUp> step_up_in_use(const FanSupply& supply) {
  std::optional<StepUp> out = supply.step_up;
  if (out && supply.control.kind == Control::Kind::lower_output) out->output = supply.control.voltage;
  return out;
}

OutputDraw output_draw(const FanSupply& supply, Voltage v) {
  if (supply.control.kind == Control::Kind::chopped_supply) return chopped(supply, v);
  const Voltage at_fan = supply.control.kind == Control::Kind::series_regulator ? regulated(supply, v) : v;
  const Current i = fan_current(supply.fan, at_fan);
  return {.current = i, .fan_voltage = at_fan, .speed = in(at_fan, supply.fan.rated_voltage), .fan = at_fan * i};
}

SupplyState supply_state(const FanSupply& supply, Voltage input) {
  check(supply);
  require_positive(input, "V", "supply voltage");
  const std::optional<StepUp> step_up = step_up_in_use(supply);
  if (!step_up) {
    const OutputDraw draw = output_draw(supply, input);
    return {.drawn = draw.current,
            .on_share = supply.control.kind == Control::Kind::chopped_supply ? supply.control.duty : 1.0,
            .fan_voltage = draw.fan_voltage,
            .speed = draw.speed,
            .fan = draw.fan,
            .from_output = input * draw.current,
            .step_up = {}};
  }
  const Voltage output = std::max(step_up->output, input - step_up->passing_drop);
  const OutputDraw draw = output_draw(supply, output);
  const StepUpState state = step_up_state(*step_up, {.input = input, .output = draw.current});
  return {.drawn = state.input,
          .on_share = 1.0,
          .fan_voltage = draw.fan_voltage,
          .speed = draw.speed,
          .fan = draw.fan,
          .from_output = output * draw.current,
          .step_up = state};
}
}  // namespace lumwright
