#include "data/limits.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_power_weak_cell(const model::Solved& solved) {
  if (!solved.supply || !solved.supply->with_weak_cell) return std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  const auto& chemistry = s.pack_input.cell.chemistry;
  if (chemistry.reversed_soc.empty()) return std::nullopt;  // power.over_discharge judges those
  const int cells = s.pack_input.series;
  const Voltage good = chemistry.good_cell_when_weak_one_reverses.value_or(chemistry.nominal),
                least = power::reversal_voltage(cells, good);
  const power::Run& run = *s.with_weak_cell;
  const Duration backwards = run.weak ? run.weak->in_reversal : 0.0 * unit::s;
  Finding f;
  static const AnyQuantity long_backwards(data::limit<Duration>("power.weak_cell backwards"));
  judge_by(f, measure(solved, backwards), {Bound::at_most, long_backwards, long_backwards});
  if (f.verdict == Verdict::pass)
    judge_by(f, measure(solved, run.end.voltage), {Bound::at_least, AnyQuantity(least), {}});
  f.why = fmt::format(
      "with one cell at {} of the others' capacity the run ends at {}; that cell is driven backwards for {}",
      percent(s.weakest, 2), say(solved, run.end.voltage), say(solved, backwards));
  if (f.verdict != Verdict::pass)
    f.action = fmt::format("stop at {} or above, or match the cells; a reversed cell is damaged and may leak",
                           say(solved, least));
  f.basis.source = "makers' rule: good cell voltage times one cell fewer";
  f.basis.standing = chemistry.basis.standing;
  f.formula = "V_stop >= V_good (N - 1)";
  f.terms = {computed(solved, "N", "cells in series", static_cast<double>(cells)),
             computed(solved, "V_good", "good cell while the weak one reverses", good),
             computed(solved, "V_end", "pack at the end, one cell weak", run.end.voltage),
             computed(solved, "t_rev", "time driven backwards", backwards)};
  return f;
}
}  // namespace

Check power_weak_cell() {
  return {"power.weak_cell", "Weakest cell", "Is a weaker cell driven backwards before the run ends?",
          judge_power_weak_cell};
}
}  // namespace lumwright::plan
