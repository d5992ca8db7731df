#include "data/limits.hpp"
#include "description/build.hpp"
#include "draught/cooling.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_raise.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
TemperatureRise kept_below() {
  static const TemperatureRise kept = data::limit<TemperatureRise>("heat.fan_gas kept");
  return kept;
}
std::string cooler_fan(const model::Solved& solved, Temperature limit) {
  const model::SolvedDraught& d = *solved.draught;
  const draught::PathFlow& hot = d.hot_flow;
  static const double sensible_bleed = data::limit<double>("heat.fan_gas sensible bleed");
  const Temperature aim = limit - kept_below();  // what passes
  if (aim <= d.ambient.temperature + 5.0 * K) return "the day is too hot for this fan";
  const double ratio = draught::bleed_ratio({hot.fan_gas, d.ambient.temperature, aim});
  const std::string others = std::string("a longer tube and a larger blackened box") +
                             (solved.fan && solved.fan->inside ? ", and mount the fan outside the box" : "");
  if (ratio > sensible_bleed) return others + "; a bleed that cools it by itself takes much of the draught";
  return fmt::format("let cool air into the box, {} of the gas by weight (bleed holes; costs draught), or {}",
                     percent(ratio, 2), others);
}
// The hottest before the engine's own blower takes over and the fan comes off, and when the limit is passed.
std::string on_the_way(const model::Solved& solved, Temperature limit) {
  if (!solved.raise) return "";
  const boiler::Raise& raise = solved.raise->raise;
  const auto end = raise.time_of(boiler::RaiseEventKind::own_blower);
  const boiler::RaiseInstant* hottest = nullptr;
  for (const boiler::RaiseInstant& at : raise.series)
    if (at.path && (!end || at.time <= *end) && (!hottest || at.path->fan_gas > hottest->path->fan_gas)) hottest = &at;
  if (!hottest) return "";
  std::string text =
      fmt::format("; on the way to pressure it comes to {} at most", say(solved, hottest->path->fan_gas));
  const auto passed = raise.time_of(boiler::RaiseEventKind::fan_too_hot);
  if (passed && (!end || *passed <= *end))
    text += fmt::format(" and passes {} after {}", say(solved, limit), roughly(solved, *passed));
  return text;
}
std::optional<Finding> judge_heat_fan_gas(const model::Solved& solved) {
  if (!solved.draught) return unsolved(solved.draught);
  if (!solved.fan) {
    const description::part::FanPart& fan = solved.build.fan;
    const bool begun = fan.kind || fan.frame || fan.rated.voltage || fan.curve;
    return begun ? std::optional(unsolved(solved.fan)) : std::nullopt;
  }
  const draught::PathFlow& hot = solved.draught->hot_flow;
  const Temperature limit = solved.fan->gas_limit;
  Finding f;
  judge_by(f, measure(solved, hot.fan_gas), {Bound::at_most, AnyQuantity(limit - kept_below()), AnyQuantity(limit)});
  f.why = fmt::format("gas leaves the chimney at {} and reaches the fan at {}; the fan stands {}",
                      say(solved, hot.smokebox_gas), say(solved, hot.fan_gas), say(solved, limit));
  f.why += on_the_way(solved, limit);
  if (f.verdict != Verdict::pass) f.action = cooler_fan(solved, limit);
  f.basis.source =
      "cooling in tube and box (Hausen 1943, Churchill and Chu 1975, radiation) and mixing with leaks and bleed";
  f.basis.standing = data::Standing::estimate;
  f.formula = "T_fan = mix(cooled gas, bleed); cooled = T_a + (T - T_a) exp(-NTU) in the tube, / (1 + NTU) in the box";
  f.terms = {computed(solved, "T_e", "gas at the end of the fire tubes", hot.tube_exit_gas),
             computed(solved, "T_s", "gas in the chimney, with leaks", hot.smokebox_gas),
             computed(solved, "T_t", "gas at the end of the adapter tube", hot.adapter_exit_gas),
             computed(solved, "m", "gas through the tube", hot.chimney),
             computed(solved, "m_b", "bleed air", hot.bleed),
             computed(solved, "T_fan", "gas at the fan", hot.fan_gas)};
  return f;
}
}  // namespace

Check heat_fan_gas() {
  return {"heat.fan_gas", "How hot the fan gets", "Is the gas at the fan within what the fan stands?",
          judge_heat_fan_gas};
}
}  // namespace lumwright::plan
