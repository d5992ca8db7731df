#include "model/solved.hpp"
#include "model/solved_light_ups.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include "power/light_ups.hpp"
#include "power/output_draw.hpp"
#include <algorithm>

namespace lumwright::model {
namespace {
/// The fan gets one voltage from the first light-up to the last: a step-up holds it, or the socket of a power bank.
bool supply_holds(const SolvedSupply& supply) {
  if (supply.pack_input.cell.bank) return true;
  const std::optional<power::StepUp> step_up = power::step_up_in_use(supply.feed);
  return step_up && power::boosts(*step_up, supply.pack.curve.at(supply.pack.drawn));
}
SolvedLightUps all_alike(const SolvedSupply& supply, Duration each, std::optional<Duration> within) {
  if (within && each > *within)
    return {.count = 0, .first = each, .last = each, .end = boiler::LightUpsEnd::too_slow, .ends = {}};
  SolvedLightUps out{.count = power::light_ups(supply.run.runtime, each),
                     .first = each,
                     .last = each,
                     .end = boiler::LightUpsEnd::pack_stops,
                     .ends = {}};
  for (int i = 1; i <= std::min(out.count, most_light_ups_kept); ++i) out.ends.push_back(static_cast<double>(i) * each);
  return out;
}
SolvedLightUps of_lived(const boiler::LightUpsLived& lived, Duration first) {
  SolvedLightUps out{.count = static_cast<int>(lived.each.size()),
                     .first = lived.each.empty() ? first : lived.each.front().time,
                     .last = lived.each.empty() ? first : lived.each.back().time,
                     .end = lived.end,
                     .ends = {}};
  Duration run;
  for (const boiler::LivedLightUp& one : lived.each) {
    run += one.time;
    if (out.ends.size() < most_light_ups_kept) out.ends.push_back(run);
  }
  return out;
}
SolvedLightUps light_ups_of(const Solved& solved) {
  const SolvedSupply& supply = *solved.supply;
  if (!solved.raise) return all_alike(supply, solved.light_up, std::nullopt);
  const SolvedRaise& raise = *solved.raise;
  const auto goal = raise.input.own_blower ? boiler::RaiseEventKind::own_blower : boiler::RaiseEventKind::working;
  const auto first = raise.raise.time_of(goal);
  if (!first)
    return SolvedLightUps{
        .count = 0, .first = solved.light_up, .last = solved.light_up, .end = boiler::LightUpsEnd::never, .ends = {}};
  // Only a wish that was written ends the count.
  const auto within = solved.build.want.steam_within ? std::optional(raise.within) : std::nullopt;
  if (!raise.input.battery || supply_holds(supply)) return all_alike(supply, *first, within);
  return of_lived(boiler::live_through(raise.input, raise.raise, goal, within), *first);
}
}  // namespace

Part<SolvedLightUps> solve_light_ups(const Solved& solved) {
  if (!solved.supply) return {};
  return Part<SolvedLightUps>::holding(light_ups_of(solved));
}
}  // namespace lumwright::model
