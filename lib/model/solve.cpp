#include "model/solved.hpp"

namespace lumwright {
namespace {
/// All that the fire's course stands on.
void solve_parts(Solved& solved) {
  const Build& build = solved.build;
  solved.fan = solve_fan(build, solved.inputs);
  solved.supply = solve_supply(build, solved.inputs, solved.fan);
  solved.draught = solve_draught(build, solved.inputs, solved.fan, solved.supply);
  solved.fit = solve_fit(build, solved.inputs, solved.draught);
}
}  // namespace

Solved solve_cold(const Build& build, const Tuning* tuning) {
  Solved solved{.build = build, .inputs = Inputs({}, tuning), .units = UnitSystem::as_written};
  solve_parts(solved);
  solved.page = PageUnits(build);
  solved.unit = solve_unit(build, solved.inputs);
  return solved;
}
Solved solve(const Build& build, Draw draw, const Tuning* tuning) {
  Solved solved{.build = build, .inputs = Inputs(std::move(draw), tuning), .units = UnitSystem::as_written};
  solve_parts(solved);
  solved.raise = solve_raise(build, solved.inputs, solved.fan, solved.supply, solved.draught);
  if (!solved.inputs.one_of_many()) solved.page = PageUnits(build);
  if (!solved.inputs.one_of_many()) solved.unit = solve_unit(build, solved.inputs);
  const auto steam = solved.raise ? solved.raise->raise.time_of(RaiseEventKind::own_blower) : std::nullopt;
  solved.light_up = steam ? *steam : solved.inputs.usual(build.want.steam_within);
  if (solved.supply && !solved.raise) solved.inputs.stands_in("raise.light_up");
  solved.light_ups = solve_light_ups(solved);
  return solved;
}
}  // namespace lumwright
