#include "model/solved_draught.hpp"
#include "plan/check.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::string in_words(std::string_view element) {
  std::string text(element);
  std::replace(text.begin(), text.end(), '_', ' ');
  return text;
}
// The three elements that cost most, with their shares of the whole.
std::string greatest(std::vector<draught::ElementLoss> all) {
  Pressure sum = 0.0 * Pa;
  for (const draught::ElementLoss& one : all) sum += one.loss;
  std::sort(all.begin(), all.end(),
            [](const draught::ElementLoss& a, const draught::ElementLoss& b) { return a.loss > b.loss; });
  std::string text;
  for (std::size_t i = 0; i < std::min<std::size_t>(3, all.size()); ++i)
    text += fmt::format("{}{} {}", i == 0 ? "" : ", ", in_words(all[i].name), percent(all[i].loss / sum, 2));
  return text;
}
std::string how(const model::Solved& solved) {
  if (solved.draught->measured) return "you measured it";
  return fmt::format("the fan develops {} and moves {} of warm gas and bleed air",
                     say(solved, solved.draught->hot->static_pressure),
                     say(solved, solved.draught->hot_flow.fan_volume));
}
std::optional<Finding> judge_draught_flow(const model::Solved& solved) {
  if (!solved.draught) return unsolved(solved.draught);
  const model::SolvedDraught& d = *solved.draught;
  const auto all = draught::losses(d.path, d.hot_flow);
  Finding f;
  f.value = measure(solved, d.hot_flow.engine);
  f.verdict = Verdict::pass;
  f.why = fmt::format(
      "with the fire well alight {} of air goes through the engine ({}); before lighting it is {}. The pressure goes "
      "to: {}",
      say(solved, d.hot_flow.engine), how(solved), say(solved, d.cold_flow.engine), greatest(all));
  f.basis.source = "operating point of fan and gas path, every gas temperature solved with it";
  f.basis.standing = data::Standing::derived;
  f.formula = "fan pressure (at its own gas and speed) = sum of losses - natural draught";
  for (const draught::ElementLoss& loss : all)
    f.terms.push_back(computed(solved, "dp", "lost in: " + in_words(loss.name), loss.loss));
  f.terms.push_back(computed(solved, "dp_n", "natural draught", d.hot_flow.natural_draught));
  f.terms.push_back(computed(solved, "T_f", "gas in the firebox", d.hot_flow.firebox_gas));
  f.terms.push_back(computed(solved, "T_e", "gas at the end of the fire tubes", d.hot_flow.tube_exit_gas));
  f.terms.push_back(computed(solved, "m", "air through the engine", d.hot_flow.engine));
  return f;
}
}  // namespace

Check draught_flow() {
  return {"draught.flow", "Air through the fire",
          "How much air does the fan draw through the engine, and where does its pressure go?", judge_draught_flow};
}
}  // namespace lumwright::plan
