#include "plan/check.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright {
namespace {
std::string how(const Solved& solved) {
  if (solved.draught->measured) return "you measured it";
  return fmt::format("the fan holds {} at {} through it, fire alight",
                     say(solved, solved.draught->hot->static_pressure),
                     say(solved, solved.draught->hot_flow.fan_volume));
}
Verdict judged(MassFlow has, MassFlow wants) {
  if (has >= wants) return Verdict::pass;
  return has >= 0.8 * wants ? Verdict::watch : Verdict::fail;
}
std::vector<Term> working(const Solved& solved) {
  std::vector<Term> terms = {
      computed(solved, "E", "heat that water and metal take up to own-blower pressure", solved.demand->absorbed),
      computed(solved, "T", "water temperature at own-blower pressure", solved.demand->take_over, "place.air"),
      term(solved, "t", "time you will wait", "want.steam_within"),
      term(solved, "t_k", "kindling time", "fuel.kindling"),
      term(solved, "f", "share alight at the start", "fuel.lit_at_start"),
      term(solved, "L", "share of the air that goes past the bed", "engine.leakage.past_bed"),
      term(solved, "q", "heat set free for each mass of air", "raise.heat_per_air"),
      term(solved, "n", "share of that heat that reaches the water", "raise.efficiency"),
      computed(solved, "m_need", "air needed", solved.demand->air)};
  for (const ElementLoss& loss : losses(solved.draught->path, solved.draught->hot_flow)) {
    std::string element(loss.name);
    std::replace(element.begin(), element.end(), '_', ' ');
    terms.push_back(computed(solved, "dp", "lost in: " + element, loss.loss));
  }
  return terms;
}

std::optional<Finding> judge(const Solved& solved) {
  if (!solved.draught)
    return unsolved(solved.draught, "shorten or widen the gas path, or take a fan with more pressure");
  const MassFlow air = solved.draught->hot_flow.engine;
  Finding f;
  f.value = measure(solved, air, "draught.air_flow");
  f.source = "operating point of fan and gas path; heat for each kilogram of air after Huggett (1980)";
  f.standing = "estimate";
  f.formula = "m_need = E / ((t - (1 - f) t_k / 2) (1 - L) q n)";
  if (!solved.demand) {
    f.missing = solved.demand.missing;
    f.why = solved.demand.impossible;
    if (!f.why.empty()) f.verdict = Verdict::fail;
    return f;
  }
  f.limit = measure(solved, solved.demand->air, "draught.air_flow");
  f.bound = Bound::at_least;
  f.verdict = judged(air, solved.demand->air);
  f.why = fmt::format(
      "{} of air goes through the engine ({}); own-blower pressure within {} asks for about {} by a plain heat balance",
      say(solved, air), how(solved), say(solved, solved.demand->within, "want.steam_within"),
      say(solved, solved.demand->air));
  if (f.verdict != Verdict::pass)
    f.action =
        "see where the pressure goes (`explain draught.flow`): a wider or shorter tube, a shallower bed, fewer leaks, "
        "or a fan with more shut-off pressure";
  f.terms = working(solved);
  return f;
}
}  // namespace

Check draught_flow() {
  return {"draught.flow", "Air through the fire", "Does the fan draw enough air for the time you will wait?", 100,
          judge};
}
}  // namespace lumwright
