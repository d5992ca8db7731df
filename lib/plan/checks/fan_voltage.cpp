#include "model/solved_fan.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/starting.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_fan_voltage(const model::Solved& solved) {
  if (!solved.fan || !solved.supply) return solved.fan ? unsolved(solved.supply) : unsolved(solved.fan);
  const draught::MotorLaw& motor = *solved.fan->motor;
  const power::SupplyState& start = solved.supply->start;
  const Voltage at_end = solved.supply->end ? solved.supply->end->fan_voltage : start.fan_voltage;
  const AnyQuantity most(motor.highest);
  Finding f;
  judge_by(f, measure(solved, start.fan_voltage), {Bound::at_most, most, most});
  if (f.verdict == Verdict::fail) {
    f.action = "too much voltage: fewer cells, a lower output, or a fan rated for it";
  } else {
    f = judge_start_voltage(solved);
    if (f.verdict == Verdict::pass && at_end < motor.starts.value) {
      judge_by(f, measure(solved, at_end), {Bound::at_least, AnyQuantity(motor.starts.value), {}});
      f.action =
          "near the end of the charge it may not start again: stop earlier, or recharge before the last light-up";
    }
  }
  f.basis.source = data::fan_voltage().basis.source;
  f.basis.standing = data::fan_voltage().basis.standing;
  f.why = fmt::format("the fan gets {} from a fresh pack and {} at the end; it starts from about {} and stands {}",
                      say(solved, start.fan_voltage), say(solved, at_end), say(solved, motor.starts.value),
                      say(solved, motor.highest));
  f.formula = "V_start <= V_fan <= V_highest";
  f.terms = {computed(solved, "V_fan", "at the fan, pack fresh", start.fan_voltage),
             computed(solved, "V_end", "at the fan, end of run", at_end),
             computed(solved, "V_start", "starts from rest", motor.starts.value),
             computed(solved, "V_highest", "most that it stands", motor.highest)};
  return f;
}
}  // namespace

Check fan_voltage() {
  return {"fan.voltage", "Voltage at the fan", "Does the fan start, and is it spared too much voltage?",
          judge_fan_voltage};
}
}  // namespace lumwright::plan
