#include "plan/solved.hpp"

namespace lumwright {
Solved solve(const Build& build, Draw draw) {
  Solved solved{.build = build, .inputs = Inputs(std::move(draw)), .units = UnitSystem::as_written};
  solved.fan = solve_fan(build, solved.inputs);
  solved.supply = solve_supply(build, solved.inputs, solved.fan);
  solved.draught = solve_draught(build, solved.inputs, solved.fan, solved.supply);
  solved.fit = solve_fit(build, solved.inputs, solved.draught);
  solved.demand = solve_demand(build, solved.inputs);
  return solved;
}
}  // namespace lumwright
