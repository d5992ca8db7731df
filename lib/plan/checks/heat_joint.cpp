#include "data/joints.hpp"
#include "data/limits.hpp"
#include "model/solved_draught.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_heat_joint(const model::Solved& solved) {
  const description::Text& written = solved.build.adapter.joint;
  if (solved.draught && !solved.draught->path.adapter && !written) return std::nullopt;
  if (!written) return lacking(solved.build.adapter.joint);
  const data::JointRow& joint = data::joint(*written);
  Finding f;
  f.basis = joint.basis;
  f.formula = "gas that enters the tube <= melting begins - reserve";
  if (!joint.melts) {
    f.verdict = Verdict::pass;
    f.why = fmt::format("a {} joint has nothing in it that melts before tube and flange do", joint.name);
    return f;
  }
  if (!solved.draught) return unsolved(solved.draught);
  const Temperature gas = solved.draught->hot_flow.smokebox_gas, limit = *joint.limit();
  static const TemperatureRise kept = data::limit<TemperatureRise>("heat.joint kept");
  judge_by(f, measure(solved, gas), {Bound::at_most, AnyQuantity(limit - kept), AnyQuantity(limit)});
  f.why = fmt::format("gas of {} goes through the tube; {} begins to melt at {} and is good to {}", say(solved, gas),
                      joint.name, say(solved, *joint.melts), say(solved, limit));
  if (f.verdict != Verdict::pass) f.action = "silver-braze the flange to the tube, or screw or press it on";
  f.terms = {computed(solved, "T", "gas in the chimney, with leaks", gas),
             computed(solved, "T_m", "where the joint begins to melt", *joint.melts),
             computed(solved, "r", "reserve", joint.reserve)};
  return f;
}
}  // namespace

Check heat_joint() {
  return {"heat.joint", "Joint of tube and flange", "Does the joint stand the gas?", judge_heat_joint};
}
}  // namespace lumwright::plan
