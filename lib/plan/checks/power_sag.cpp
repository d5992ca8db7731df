#include "data/limits.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_power_sag(const model::Solved& solved) {
  if (!solved.supply || !solved.supply->end || solved.supply->feed.step_up) return std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  const double speed = s.end->speed / s.start.speed, pressure = speed * speed;
  Finding f;
  static const double least = data::limit<double>("power.sag pressure");
  judge_by(f, {AnyQuantity(pressure), "%"}, {Bound::at_least, AnyQuantity(least), {}});
  f.why = fmt::format(
      "straight from the pack the fan slows to {} of its first speed by the end, and its pressure falls to {}",
      percent(speed, 2), say_share(solved, pressure));
  if (f.verdict != Verdict::pass) f.action = "stop earlier, use cells that hold their voltage, or a step-up";
  f.basis.source = "similarity laws (ISO 5801): pressure goes with the square of speed";
  f.basis.standing = data::Standing::standard;
  f.formula = "p_end / p_start = (n_end / n_start)^2";
  f.terms = {computed(solved, "V_0", "fan voltage, pack fresh", s.start.fan_voltage),
             computed(solved, "V_1", "fan voltage at the end", s.end->fan_voltage),
             computed(solved, "n", "speed at the end over the first", speed)};
  return f;
}
}  // namespace

Check power_sag() {
  return {"power.sag", "Does the fan slow down", "How much draught is lost as the pack runs down?", judge_power_sag};
}
}  // namespace lumwright::plan
