// What is proved of a raise before it is followed.
//
// Bound on the air. At any instant of a raise the engine's air is no more than what the fan would draw at the highest
// voltage that can reach it, its curve made to fall throughout, through the same path with no fire in it, with all the
// natural draught there can be added to its pressure. Proof: at one mass flow every loss of the path is least cold, for
// velocity heads go with 1/density and friction with a power of viscosity over density, both of which rise with
// temperature; leaks and bleed grow with the suctions; so the cold path asks for less suction, from a lesser flow at
// the fan, than the hot one at the same air through the bed. The fan gives at most its pressure in cold gas, for that
// goes with the density, and at most the pressure of the falling envelope of its curve at the highest speed
// (similarity: both scales of the curve grow with the speed). Natural draught is at most g times the height times the
// air's density. So beyond the operating point of the cold path fan and hot path cannot balance.
//
// Bound on the time. A raise with that air held throughout takes no longer than the real one. Proof: at equal water
// temperature and time the heat to the water grows with the air (the gas leaves the bed no colder, for what the
// kindling bed takes is spread over more gas; in firebox and tubes more gas at no lower a temperature gives more heat),
// and the water's temperature obeys one first-order equation; so of two solutions that start together the one with the
// larger right-hand side stays ahead (comparison theorem). A raise that fails even so never gets there. The bound is
// about half of the time.
#include "choose/detail/parts.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_raise.hpp"
#include <algorithm>
#include <vector>

namespace lumwright::choose {
namespace {
constexpr double tolerance = 1e-3;  // of the raise and of the search, with room

// The least curve that falls throughout and lies nowhere below this one.
draught::RunningFan falling_envelope(const draught::RunningFan& fan) {
  if (!fan.rises) return fan;
  constexpr int steps = 400;
  std::vector<double> highest(steps + 1);  // from each flow on
  double most = 0.0;
  for (int i = steps; i >= 0; --i) {
    most = std::max(most, in(fan.static_pressure((static_cast<double>(i) / steps) * fan.free_air), Pa));
    highest[static_cast<std::size_t>(i)] = most;
  }
  draught::RunningFan out = fan;
  out.rises = false;
  // between two flows the pressure may lie above both by the little that a cubic swells: 2 %
  out.static_pressure = [fan, highest](VolumeFlow q) {
    const double at = in(q, fan.free_air) * steps;
    if (at >= steps) return fan.static_pressure(q);
    return 1.02 * highest[static_cast<std::size_t>(std::max(at, 0.0))] * Pa;
  };
  out.highest = 1.02 * fan.highest;
  return out;
}

Pressure most_natural_draught(const draught::GasPath& path, Density air) {
  Length height = 0.0 * m;
  const auto add = [&](Length rise) { height += std::max(rise, 0.0 * m); };
  if (path.bed) add(path.bed->depth);
  if (path.tubes) add(path.tubes->rise), add(path.tubes->above_bed);
  add(path.smokebox_rise);
  if (path.adapter) add(path.adapter->rise);
  if (path.box) add(path.box->rise);
  return height * air * standard_gravity;
}

draught::RunningFan strongest(const model::SolvedDraught& draught, const model::SolvedFan& fan, Voltage most) {
  draught::RunningFan out = falling_envelope(draught::running(fan.curve, draught::fan_speed(*fan.motor, most)));
  const Density air = draught::GasNetwork(draught.path, draught.ambient).ambient_density();
  // times the gas's density over that of the curve the fan gives the lift at least
  const Pressure lift = most_natural_draught(draught.path, air) / std::min(1.0, in(air, 1.2 * kg_per_m3));
  out.static_pressure = [given = out.static_pressure, lift](VolumeFlow q) { return given(q) + lift; };
  out.highest += lift;
  return out;
}
MassFlow most_air(const model::SolvedDraught& draught, const draught::RunningFan& fan) {
  return draught::solve_duty(draught::GasNetwork(draught.path, draught.ambient), draught::unlit(draught.ambient), fan)
      .flow.engine;
}

std::optional<Duration> time_of_goal(const boiler::RaiseInput& input) {
  return boiler::raise(input).time_of(input.own_blower ? boiler::RaiseEventKind::own_blower
                                                       : boiler::RaiseEventKind::working);
}
boiler::RaiseInput with_air(boiler::RaiseInput input, const model::SolvedDraught& draught, MassFlow air) {
  input.draught = boiler::MeasuredAir{air, std::get<draught::LeakShare>(*draught.path.past_bed).share};
  input.path.reset();
  input.battery.reset();
  input.inside.reset();
  input.fan_gas_limit.reset();
  input.points_per_step = 1;
  if (input.own_blower) input.working.reset();
  return input;
}

}  // namespace

void bound(Yard& yard, const Stock& stock, const std::vector<std::size_t>& same) {
  const Task& one = yard.tasks[same.front()];
  const std::size_t unit = yard.drives[one.drive].key.unit;
  description::Build build = with_unit(yard.stall, stock, unit);
  build.adapter.tube = yard.stall.tubes[one.tube];
  if (build.supply.control.kind && *build.supply.control.kind == "chopped supply") return;  // its speed has a law of its own
  model::Inputs inputs = quiet(stock.tuning);
  const auto fan = model::solve_fan(build, inputs);
  const auto draught = model::solve_draught(build, inputs, fan, {});  // at the rated voltage: only its path is used
  if (!draught) return;
  const boiler::RaiseInput input = model::raise_input(build, inputs, *draught, fan, {});
  for (const std::size_t i : same) {
    Task& task = yard.tasks[i];
    try {
      const MassFlow air = most_air(*draught, strongest(*draught, *fan, yard.drives[task.drive].most));
      const auto time = time_of_goal(with_air(input, *draught, air));
      if (time) task.least = (1.0 - tolerance) * *time;
      task.hopeless = !time;
      if (task.hopeless) task.loss = Loss::no_steam;
    } catch (const ModelError&) {  // nothing is proved
    }
  }
}
}  // namespace lumwright::choose
