#include "model/solved_fan.hpp"
#include "model/solved_supply.hpp"
#include "plan/detail/starting.hpp"
#include "data/fans.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
Finding judge_start_voltage(const model::Solved& solved) {
  const draught::MotorLaw& motor = *solved.fan->motor;
  const Voltage gets = solved.supply->start.fan_voltage;
  Finding f;
  judge_by(f, measure(solved, gets), {Bound::at_least, AnyQuantity(motor.starts.value), AnyQuantity(motor.starts.low)});
  f.why = fmt::format("the fan gets {} from a fresh pack; it starts from rest at about {}", say(solved, gets),
                      say(solved, motor.starts.value));
  if (f.verdict != Verdict::pass)
    f.action = "more cells, a step-up, or full voltage for half a second before it is turned down";
  f.basis =
      solved.build.fan.starts_at ? data::Basis{data::Standing::measured, "what you stated"} : data::fan_voltage().basis;
  f.formula = "V_fan >= V_start";
  f.terms = {computed(solved, "V_fan", "at the fan, pack fresh", gets),
             computed(solved, "V_start", "starts from rest", motor.starts.value)};
  return f;
}
}  // namespace lumwright::plan
