#include "data/charging.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "power/charging.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
Finding must_not(const data::ChargingRow& row) {
  Finding f;
  f.verdict = Verdict::fail;
  f.why = row.never;
  f.action = "take the charger out of the description, and put new cells in when these are empty";
  f.basis = row.basis;
  return f;
}
std::optional<Finding> judge_power_charging(const model::Solved& solved) {
  const description::part::ChargerPart& charger = solved.build.supply.charger;
  if (!charger.current) return std::nullopt;
  if (!solved.supply) return unsolved(solved.supply);
  const power::PackInput& pack = solved.supply->pack_input;
  const data::ChargingRow& row = data::charging(pack.cell.chemistry.id);
  if (!row.never.empty()) return must_not(row);
  const bool stops = !charger.stops || *charger.stops == "yes";
  const Current gives = charger.current.band->value;
  const Charge full = pack.capacity * static_cast<double>(pack.parallel);
  const Current most = power::charging_limit(row, full, stops);
  Finding f;
  judge_by(f, measure(solved, gives), {Bound::at_most, AnyQuantity(most), AnyQuantity(most)});
  const Duration takes = power::charging_time(row, {.full = full, .missing = 1.0, .charger = gives});
  f.why = fmt::format("an empty pack takes {} at {}, {}", roughly(solved, takes), say(solved, gives), row.how);
  if (f.verdict == Verdict::fail)
    f.action = stops ? fmt::format("charge at {} or less", say(solved, most))
               : row.by_timer
                   ? fmt::format("charge at {} or less, or with a charger that stops by itself", say(solved, most))
                   : std::string("use a charger that is made for these cells and stops by itself");
  f.basis = row.basis;
  f.formula = "t = put back * Q / I + tail";
  f.terms = {computed(solved, "Q", "charge of the pack", full), computed(solved, "I", "current of the charger", gives),
             computed(solved, "put back", "charge in over charge out", row.put_back),
             computed(solved, "tail", "at the end, with the current falling", row.tail),
             computed(solved, "t", "from empty to full", takes)};
  return f;
}
}  // namespace

Check power_charging() {
  return {"power.charging", "Charging", "Does the charger suit the pack, and how long does it take?",
          judge_power_charging};
}
}  // namespace lumwright::plan
