#include "model/fan_unit.hpp"
#include "model/solved.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_fit.hpp"
#include "model/solved_light_ups.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"

namespace lumwright::model {
namespace {
/// All that the fire's course stands on.
void solve_parts(Solved& solved) {
  const description::Build& build = solved.build;
  solved.fan = solve_fan(build, solved.inputs);
  solved.supply = solve_supply(build, solved.inputs, solved.fan);
  solved.draught = solve_draught(build, solved.inputs, solved.fan, solved.supply);
  solved.fit = solve_fit(build, solved.inputs, solved.draught);
}
workshop::LimitsWhenAsked limits_of(const Solved& solved) {
  return solved.fit ? workshop::LimitsWhenAsked(solved.fit->input, solved.fit->fit) : workshop::LimitsWhenAsked();
}
}  // namespace

Solved solve_cold(const description::Build& build, const Tuning* tuning) {
  Solved solved{.build = build, .inputs = Inputs({}, tuning), .units = UnitSystem::as_written};
  solve_parts(solved);
  solved.page = description::PageUnits(build);
  solved.unit = solve_unit(build, solved.inputs, limits_of(solved));
  return solved;
}
Solved solve_sample(const description::Build& build, Draw draw, SampleReach reach, const Tuning* tuning) {
  Solved solved{.build = build, .inputs = Inputs(std::move(draw), tuning), .units = UnitSystem::as_written};
  solve_parts(solved);
  if (reach == SampleReach::fire)
    solved.raise = solve_raise(build, solved.inputs, solved.fan, solved.supply, solved.draught);
  return solved;
}
Solved solve(const description::Build& build, Draw draw, const Tuning* tuning) {
  Solved solved{.build = build, .inputs = Inputs(std::move(draw), tuning), .units = UnitSystem::as_written};
  solve_parts(solved);
  solved.raise = solve_raise(build, solved.inputs, solved.fan, solved.supply, solved.draught);
  if (!solved.inputs.one_of_many()) solved.page = description::PageUnits(build);
  if (!solved.inputs.one_of_many()) solved.unit = solve_unit(build, solved.inputs, limits_of(solved));
  const auto steam = solved.raise ? solved.raise->raise.time_of(boiler::RaiseEventKind::own_blower) : std::nullopt;
  solved.light_up = steam ? *steam : solved.inputs.usual(build.want.steam_within);
  if (solved.supply && !solved.raise) solved.inputs.stands_in("raise.light_up");
  solved.light_ups = solve_light_ups(solved);
  return solved;
}
}  // namespace lumwright::model
