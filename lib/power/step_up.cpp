#include "power/step_up.hpp"
#include "power/detail/efficiency_points.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>

// Notation (first-order power stage): V input, Io and Vo output, Vf diode, D duty, a I^2 - b I + c = 0 for the input
// current I.
namespace lumwright::power {
namespace {
void check(const StepUp& step_up, StepUpDuty duty) {
  require_above_zero("step-up output", step_up.output, "V");
  require_above_zero("step-up input", duty.input, "V");
  require_above_zero("step-up output current", duty.output, "A");
}

StepUpState state(const StepUp& step_up, StepUpDuty duty, Current input) {
  const Power in_power = duty.input * input, out_power = step_up.output * duty.output;
  return {.input = input,
          .output = step_up.output,
          .efficiency = in(out_power, in_power),
          .loss = in_power - out_power,
          .passes_through = false,
          .beyond_points = false};
}

std::optional<StepUpState> by_share(const StepUp& step_up, StepUpDuty duty, double share) {
  require_share("step-up efficiency", share);
  return state(step_up, duty, step_up.output * duty.output / (share * duty.input));
}

std::optional<StepUpState> by_losses(const StepUp& step_up, const StepUpLosses& losses, StepUpDuty duty) {
  const std::optional<Current> input = input_current(losses, step_up.output, duty);
  if (!input) return std::nullopt;
  return state(step_up, duty, *input);
}
}  // namespace

std::optional<Current> input_current(const StepUpLosses& losses, Voltage output, StepUpDuty duty) {
  const Voltage rail = output + losses.diode_drop;
  const double d = 1.0 - in(duty.input, rail);
  Resistance a = losses.coil_resistance + d * losses.switch_resistance;
  if (losses.second_switch) a += (1.0 - d) * *losses.second_switch;
  const Voltage b = duty.input - 0.5 * rail * in(losses.switching_time, 1.0 / losses.frequency);
  const Power c = rail * duty.output + duty.input * losses.quiescent;
  const auto inside = b * b - 4.0 * (a * c);
  if (!(b > Voltage()) || !(inside >= Voltage() * Voltage())) return std::nullopt;
  return 2.0 * c / (b + square_root(inside));
}

StepUpLosses losses_of(const data::StepUpRow& row) {
  return {.switch_resistance = row.switch_resistance,
          .coil_resistance = row.coil_resistance,
          .diode_drop = row.diode_drop,
          .second_switch = row.second_switch,
          .switching_time = row.switching_time,
          .frequency = row.frequency,
          .quiescent = row.quiescent};
}
StepUp step_up_of(const data::StepUpRow& row, Voltage output, Voltage input_min) {
  return {.output = output,
          .efficiency = losses_of(row),
          .passing_drop = row.diode_drop,
          .input_min = input_min,
          .runs_away = row.runs_away};
}

Voltage real_minimum(const data::StepUpRow& row, std::optional<Voltage> label) {
  return label ? std::max(*label, row.real_minimum) : row.real_minimum;
}

bool boosts(const StepUp& step_up, Voltage input) { return input - step_up.passing_drop < step_up.output; }

std::optional<StepUpState> boosted(const StepUp& step_up, StepUpDuty duty) {
  check(step_up, duty);
  if (const auto* losses = std::get_if<StepUpLosses>(&step_up.efficiency)) return by_losses(step_up, *losses, duty);
  if (const auto* share = std::get_if<double>(&step_up.efficiency)) return by_share(step_up, duty, *share);
  const EfficiencyAtInput found(std::get<std::vector<EfficiencyPoint>>(step_up.efficiency),
                                step_up.output * duty.output);
  std::optional<StepUpState> out = by_share(step_up, duty, found(duty.input));
  out->beyond_points = found.beyond(duty.input);
  return out;
}

StepUpState passed_through(const StepUp& step_up, StepUpDuty duty) {
  check(step_up, duty);
  const auto* losses = std::get_if<StepUpLosses>(&step_up.efficiency);
  const Current input = duty.output + (losses ? losses->quiescent : Current());
  const Voltage output = duty.input - step_up.passing_drop;
  require_above_zero("output of a step-up that passes its input through", output, "V");
  const Power in_power = duty.input * input, out_power = output * duty.output;
  return {.input = input,
          .output = output,
          .efficiency = in(out_power, in_power),
          .loss = in_power - out_power,
          .passes_through = true,
          .beyond_points = false};
}

StepUpState step_up_state(const StepUp& step_up, StepUpDuty duty) {
  if (!boosts(step_up, duty.input)) return passed_through(step_up, duty);
  if (const std::optional<StepUpState> found = boosted(step_up, duty)) return *found;
  throw ModelError("step-up output current " + format(duty.output, "A") + " at " + format(step_up.output, "V") +
                   " cannot be had from " + format(duty.input, "V"));
}

Temperature hot_spot(const StepUpHeat& heat, Power loss) {
  require_above_zero("thermal resistance", heat.hot_spot_per_loss, "K/W");
  require_not_negative("step-up loss", loss, "W");
  return heat.around + heat.hot_spot_per_loss * loss;
}
}  // namespace lumwright::power
