#include "model/solved_raise.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
const boiler::RaiseInstant& at_take_over(const boiler::Raise& raise) {
  for (const auto kind : {boiler::RaiseEventKind::own_blower, boiler::RaiseEventKind::working})
    if (const boiler::RaiseEvent* event = raise.find(kind)) return event->at;
  return raise.series.back();
}
/// Only a factor from measured readings can ask for too much: in a spread that is assumed no more is drawn than the
/// fire gives.
std::optional<Finding> judge_raise_heat(const model::Solved& solved) {
  const model::Input* factor = solved.inputs.find("tuned.heat");
  if (!solved.raise || factor == nullptr || factor->origin != model::Origin::tuned) return std::nullopt;
  const boiler::RaiseInstant& at = at_take_over(solved.raise->raise);
  const auto most = boiler::most_heat_factor(at.heat);
  if (!most) return std::nullopt;
  const double asked = factor->value.si;
  Finding f;
  judge_by(f, model::Measure{AnyQuantity(asked), ""}, {Bound::at_most, AnyQuantity(*most), AnyQuantity(*most)});
  f.why = fmt::format(
      "the tuned file has the water take {} times the heat that the model says, and the gas, cooled to the water's "
      "temperature, would give {} times",
      format_number(asked), format_number(*most));
  if (f.verdict == Verdict::fail) {
    f.why += "; energy cannot be made, and every time here is worked out with no more than the fire gives";
    f.action =
        "look for a slip in the log (time, water, or a reading), or for more air than the description says: fewer "
        "leaks "
        "past the bed, less carbon monoxide; then tune again";
  }
  f.basis.source = "energy is neither made nor lost, and heat does not flow from colder gas to hotter water";
  f.basis.standing = data::Standing::derived;
  f.formula = "k <= (H_t + m (h(T_e) - h(T_w))) / H_t";
  f.terms = {
      term(solved, "k", "heat that reaches the water over what the model says", "tuned.heat"),
      computed(solved, "H_t", "heat from firebox and tubes by the model", at.heat.firebox.heat + at.heat.tubes.heat),
      computed(solved, "m", "gas through the tubes", at.burning.gas),
      computed(solved, "T_e", "gas at the end of the tubes", at.heat.tubes.exit),
      computed(solved, "T_w", "water", at.water),
      computed(solved, "H_m", "the most that the gas could give", at.heat.most)};
  return f;
}
}  // namespace

Check raise_heat() {
  return {"raise.heat", "Heat no greater than the fire's", "Does the tuned file ask for more heat than the fire gives?",
          judge_raise_heat};
}
}  // namespace lumwright::plan
