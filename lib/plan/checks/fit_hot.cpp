#include "model/solved_fit.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {

/// "the gap is 0.12 mm", and of a further one "it is 0.12 mm"; where there is none, by how much.
std::string gap_left(const model::Solved& solved, Length gap, Length like, bool first = false) {
  const std::string told = say_like(solved, gap < 0.0 * mm ? -gap : gap, like);
  if (gap >= 0.0 * mm) return (first ? "the gap is " : "it is ") + told;
  const std::string& lacking = told;
  return first ? "the tube has grown " + lacking + " beyond the bore" : lacking + " is lacking";
}
std::optional<Finding> judge_fit_hot(const model::Solved& solved) {
  if (!solved.fit) return unsolved(solved.fit);
  if (auto waiting = waits_for_the_tube(solved)) return waiting;
  const workshop::Fit& fit = solved.fit->fit;
  const workshop::FitInput& in = solved.fit->input;
  Finding f;
  const Length tightest = std::min({fit.lighting_up.clearance.value, fit.both_hot.clearance.value,
                                    fit.put_back ? fit.put_back->clearance.value : fit.both_hot.clearance.value});
  judge_by(f, measure(solved, tightest), {Bound::at_least, AnyQuantity(in.running_clearance), AnyQuantity(0.0 * mm)});
  f.why = fmt::format("at lighting-up, where the tube is at {} and the chimney still at {}, {}; with both hot {}",
                      say(solved, fit.lighting_up.tube), say(solved, fit.lighting_up.chimney),
                      gap_left(solved, fit.lighting_up.clearance.value, fit.lighting_up.clearance.value, true),
                      gap_left(solved, fit.both_hot.clearance.value, fit.both_hot.clearance.value));
  if (fit.put_back)
    f.why += fmt::format(", and after the unit is put back on a hot chimney {}",
                         gap_left(solved, fit.put_back->clearance.value, fit.both_hot.clearance.value));
  if (f.verdict == Verdict::fail) f.action = "it seizes hot: never pull on it; let it cool, and make a smaller tube";
  if (f.verdict == Verdict::watch)
    f.action = "it will be tight when sooty: clean the tube before each use, or take a smaller one";
  f.basis.source =
      "heat through tube, gap and chimney, followed along the length inside; linear expansion from 20 degC with "
      "handbook "
      "coefficients; the larger for the tube, the smaller for the chimney";
  f.basis.standing = data::Standing::derived;
  f.formula = "c_hot = D (1 + e_b) - d (1 + e_t) - 2 s";
  f.terms = {term(solved, "D", "chimney bore", solved.build.engine.chimney.bore),
             term(solved, "d", "tube outside", solved.build.adapter.tube.outside),
             computed(solved, "T_gas", "gas in the tube", in.tube_hot),
             computed(solved, "T_t", "tube where the gap is least", fit.lighting_up.tube),
             computed(solved, "T_b", "chimney there", fit.lighting_up.chimney),
             computed(solved, "e_t", "strain of the tube", fit.lighting_up.tube_strain),
             computed(solved, "e_b", "strain of the chimney", fit.lighting_up.chimney_strain),
             term(solved, "s", "soot on each side", solved.build.adapter.tube.soot),
             computed(solved, "c_run", "gap left for sliding", in.running_clearance)};
  if (fit.seizes_at)
    f.terms.push_back(computed(solved, "T_seize", "tube temperature that uses up the gap", *fit.seizes_at));
  return f;
}
}  // namespace

Check fit_hot() {
  return {"fit.hot", "Tube in the chimney, hot",
          "Does the hot tube still slide in a chimney that is cold, and in one that is hot?", judge_fit_hot};
}
}  // namespace lumwright::plan
