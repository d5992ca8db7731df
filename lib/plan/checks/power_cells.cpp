#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_power_cells(const model::Solved& solved) {
  if (!solved.supply || solved.supply->pack_input.cell.bank) return std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  const Current one_hour = s.pack_input.capacity / hour,
                each = s.run.most_current / static_cast<double>(s.pack_input.parallel);
  const double rate = each / one_hour;
  const Band<double>& most = s.pack_input.cell.most_rate;
  Finding f;
  judge_by(f, measure(solved, each),
           {Bound::at_most, AnyQuantity(most.value * one_hour), AnyQuantity(most.high * one_hour)});
  f.why =
      fmt::format("each cell gives {} at most, {} times its one-hour current; cells of this kind are happy up to {}",
                  say(solved, each), format_number(rate, 2), format_number(most.value, 2));
  if (f.verdict != Verdict::pass) f.action = "larger cells, or more in parallel";
  f.basis = s.pack_input.cell.basis;
  f.formula = "rate = I / (capacity / 1 h)";
  f.terms = {computed(solved, "I", "most current of one cell", each),
             computed(solved, "Q", "capacity of one cell", s.pack_input.capacity),
             computed(solved, "rate", "share of the one-hour current", rate)};
  return f;
}
}  // namespace

Check power_cells() {
  return {"power.cells", "Current from the cells", "Can cells of this kind give that current for long?",
          judge_power_cells};
}
}  // namespace lumwright::plan
