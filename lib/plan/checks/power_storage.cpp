#include "data/limits.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "power/cell.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {

std::optional<Finding> judge_power_storage(const model::Solved& solved) {
  if (!solved.supply) return std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  const auto& chemistry = s.pack_input.cell.chemistry;
  static const Duration month = data::limit<Duration>("power.storage shelf");
  static const double least = data::limit<double>("power.storage kept"),
                      hardly = data::limit<double>("power.storage hardly");
  const double kept = power::charge_kept(chemistry, chemistry.loss_per_month.value, month, degC(20));
  Finding f;
  judge_by(f, {AnyQuantity(kept), "%"}, {Bound::at_least, AnyQuantity(least), {}});
  f.why = fmt::format("after a month on the shelf {} of a full charge is left", say_share(solved, kept));
  f.action = kept >= hardly ? "" : "charge it the day before";
  f.basis = chemistry.basis;
  f.formula = "kept = (1 - first day) exp(-loss * months)";
  f.terms = {computed(solved, "loss", "for each month at 20 degC", chemistry.loss_per_month.value),
             computed(solved, "kept", "after 30 days", kept)};
  return f;
}
}  // namespace

Check power_storage() {
  return {"power.storage", "Charge lost on the shelf", "What is left of a charge after a month?", judge_power_storage};
}
}  // namespace lumwright::plan
