#include "power/fan_supply.hpp"
#include "power/output_draw.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::power {
namespace {
Voltage regulated(const FanSupply& supply, Voltage before) {
  const Voltage v = std::min(supply.control.voltage, before - supply.regulator_dropout);
  require_above_zero("output of the series regulator", v, "V");
  return v;
}

OutputDraw chopped(const FanSupply& supply, Voltage v) {
  const MotorState motor = motor_state(supply.motor, in(v, supply.fan.rated_voltage), supply.control.duty);
  const Current mean = motor.current * supply.fan.rated_current;
  return {.current = mean, .fan_voltage = v, .speed = motor.speed, .fan = v * mean};
}
}  // namespace

Current fan_current(const FanLaw& fan, Voltage v) {
  require_above_zero("fan voltage", v, "V");
  return fan.rated_current * std::pow(in(v, fan.rated_voltage), fan.current_exponent);
}

MotorState motor_state(const data::MotorShares& motor, double supply_over_rated, double duty) {
  require_above_zero("fan voltage over rated", supply_over_rated);
  require_share("duty", duty);
  const double driving = duty * supply_over_rated - motor.idle * motor.winding;
  if (!(driving > 0.0)) throw ModelError("duty " + format_number(duty) + " leaves the fan standing still");
  const double b = duty * motor.back_emf;
  const double speed =
      2.0 * driving / (b + std::sqrt(b * b + 4.0 * motor.air * motor.winding * driving));  // free of cancellation
  return {.speed = speed, .current = motor.idle + motor.air * speed * speed};
}

Control uncontrolled() { return {.kind = Control::Kind::none, .duty = 1.0, .voltage = Voltage()}; }

void check(const FanSupply& supply) {
  require_above_zero("rated fan voltage", supply.fan.rated_voltage, "V");
  require_above_zero("rated fan current", supply.fan.rated_current, "A");
  require_above_zero("exponent of fan current", supply.fan.current_exponent);
  switch (supply.control.kind) {
    case Control::Kind::none:
      break;
    case Control::Kind::chopped_supply:
      require_share("duty", supply.control.duty);
      break;
    case Control::Kind::lower_output:
      require_above_zero("lowered output", supply.control.voltage, "V");
      if (!supply.step_up)
        throw ModelError("lowered output " + format(supply.control.voltage, "V") + " needs a step-up to lower");
      break;
    case Control::Kind::series_regulator:
      require_above_zero("output of the series regulator", supply.control.voltage, "V");
      require_not_negative("dropout of the series regulator", supply.regulator_dropout, "V");
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
  require_above_zero("supply voltage", input, "V");
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
}  // namespace lumwright::power
