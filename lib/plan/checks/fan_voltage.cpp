#include "plan/check.hpp"
#include <fmt/format.h>

namespace lumwright {
namespace {
std::optional<Finding> judge_fan_voltage(const Solved& solved) {
  if (!solved.fan || !solved.supply) return solved.fan ? unsolved(solved.supply) : unsolved(solved.fan);
  const MotorLaw& motor = *solved.fan->motor;
  const SupplyState& start = solved.supply->start;
  const Voltage at_end = solved.supply->end ? solved.supply->end->fan_voltage : start.fan_voltage;
  Finding f;
  f.value = measure(solved, start.fan_voltage, "fan.rated.voltage");
  f.limit = measure(solved, motor.starts.value, "fan.rated.voltage");
  f.bound = Bound::at_least;
  f.source = data::fan_voltage().source;
  f.standing = data::fan_voltage().standing;
  f.why = fmt::format("the fan gets {} from a fresh pack and {} at the end; it starts from about {} and stands {}",
                      say(solved, start.fan_voltage), say(solved, at_end), say(solved, motor.starts.value),
                      say(solved, motor.highest));
  f.verdict = Verdict::pass;
  if (start.fan_voltage > motor.highest) {
    f.verdict = Verdict::watch;
    f.action = "too much voltage: fewer cells, or a lower output";
  }
  if (at_end < motor.starts.value) {
    f.verdict = Verdict::watch;
    f.action = "near the end of the charge it may not start again: stop earlier, or recharge before the last light-up";
  }
  if (start.fan_voltage < motor.starts.value) {
    f.verdict = start.fan_voltage < motor.starts.low ? Verdict::fail : Verdict::watch;
    f.action = "it may not start: more cells, a step-up, or full voltage for half a second before turning down";
  }
  f.formula = "V_start <= V_fan <= V_highest";
  f.terms = {computed(solved, "V_fan", "at the fan, pack fresh", start.fan_voltage),
             computed(solved, "V_end", "at the fan, end of run", at_end),
             computed(solved, "V_start", "starts from rest", motor.starts.value),
             computed(solved, "V_highest", "most that sheets allow", motor.highest)};
  return f;
}
}  // namespace

Check fan_voltage() {
  return {"fan.voltage", "Voltage at the fan", "Does the fan start, and is it spared too much voltage?", 300,
          judge_fan_voltage};
}
}  // namespace lumwright
