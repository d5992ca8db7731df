#include "choose/detail/parts.hpp"
#include "data/choosing.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_fit.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include "model/solving.hpp"
#include "plan/check.hpp"
#include <algorithm>
#include <variant>

namespace lumwright::choose {
namespace {
description::Build with_tube(const Yard& yard, const Stock& stock, std::size_t unit, std::size_t tube) {
  description::Build build = with_unit(yard.stall, stock, unit);
  build.adapter.tube = yard.stall.tubes[tube];
  return build;
}

bool fails(std::string_view id, const model::Solved& solved) {
  for (const plan::Check& check : plan::all_checks()) {
    if (check.id != id) continue;
    const auto finding = check.judge(solved);
    return finding && finding->verdict == plan::Verdict::fail;
  }
  throw std::logic_error("no check is called " + std::string(id));
}

/// Fan, supply, draught and fit, all at one unit and tube.
model::Solved solve_steady(const description::Build& build, const Stock& stock) {
  model::Solved solved{.build = build, .inputs = quiet(stock.tuning)};
  solved.fan = model::solve_fan(build, solved.inputs);
  solved.supply = model::solve_supply(build, solved.inputs, solved.fan);
  solved.draught = model::solve_draught(build, solved.inputs, solved.fan, solved.supply);
  if (solved.draught) solved.fit = model::solve_fit(build, solved.inputs, solved.draught);
  return solved;
}

// Only the time to steam is wanted of this raise.
boiler::RaiseInput bare(boiler::RaiseInput input) {
  if (input.own_blower) input.working.reset();
  input.inside.reset();
  input.fan_gas_limit.reset();
  input.points_per_step = 1;
  return input;
}
boiler::RaiseEventKind goal(const boiler::RaiseInput& input) {
  return input.own_blower ? boiler::RaiseEventKind::own_blower : boiler::RaiseEventKind::working;
}
void hold(boiler::RaiseInput& input, Voltage v) {
  input.battery.reset();
  std::get<boiler::FanDraught>(input.draught).voltage = v;
}

void raise_plain(const boiler::RaiseInput& input, Task& task) {
  const boiler::Raise result = boiler::raise(input);
  if (const auto time = result.time_of(goal(input)))
    task.to_steam = *time;
  else
    task.loss = result.end == boiler::RaiseEnd::pack_stopped ? Loss::pack_stops_first : Loss::no_steam;
}

// First to the pressure at which the owner turns the step-up down, then from there at the lower output. The boiler is
// past its boil and its air is out; a fire not yet all alight goes on at the pace it had.
void raise_lowered(const boiler::RaiseInput& input, Voltage lowered, Task& task) {
  boiler::RaiseInput first = input;
  const GaugePressure goal_pressure = input.own_blower ? *input.own_blower : *input.working;
  const Pressure near =
      std::min(data::choosing_rules().near_steam.above_barometer, 0.5 * goal_pressure.above_barometer);
  first.own_blower = GaugePressure{near};
  first.working.reset();
  const boiler::Raise to_near = boiler::raise(first);
  const boiler::RaiseEvent* event = to_near.find(boiler::RaiseEventKind::own_blower);
  if (event == nullptr) {
    task.loss = Loss::no_steam;
    return;
  }
  boiler::RaiseInput second = input;
  hold(second, lowered);
  fire::FireInput fire = input.fire.input();
  fire.kindling.duration = std::max(fire.kindling.duration - event->at.time, 0.0 * s);
  fire.kindling.lit_at_start = event->at.lit;
  second.fire = fire::Fire(fire);
  second.water = event->at.water;
  second.boiler.water -= event->account.steam;
  second.purge = 0.0 * kg;
  raise_plain(second, task);
  task.turned_down = event->at.time;
  task.to_steam += event->at.time;
}

Loss steady_loss(const model::Solved& solved) {
  if (!solved.draught) return solved.draught.missing.empty() ? Loss::no_draught : Loss::lacking;
  if (fails("fit.hot", solved)) return Loss::seizes_hot;
  if (fails("fit.leak", solved) || fails("draught.leak", solved)) return Loss::tube_too_loose;
  if (fails("heat.fan_gas", solved)) return Loss::fan_too_hot;
  if (fails("fire.bed_lift", solved) || fails("fire.flux", solved)) return Loss::fire_lifts;
  return Loss::none;
}
}  // namespace

std::vector<std::string> lacking_keys(const Stall& stall, const Stock& stock) {
  description::Build build = with_unit(stall, stock, 0);
  if (!stall.tubes.empty()) build.adapter.tube = stall.tubes.front();
  build.draught.air_flow.band = exactly(1.0 * unit::g / s);  // stands for fan, pack and tube: the engine alone is asked
  model::Inputs inputs = quiet(stock.tuning);
  std::vector<std::string> missing;
  const auto draught = model::solve_draught(build, inputs, {}, {});
  missing = draught.missing;
  const auto raised = model::solve_raise(build, inputs, {}, {}, draught);
  for (const std::string& key : raised.missing)
    if (std::find(missing.begin(), missing.end(), key) == missing.end()) missing.push_back(key);
  note_missing(build.engine.chimney.bore, missing);
  return missing;
}

Loss cold_fit(const Stall& stall, const Stock& stock, std::size_t tube) {
  description::Build build = stall.base;
  build.adapter.tube = stall.tubes[tube];
  model::Solved solved{.build = build, .inputs = quiet(stock.tuning)};
  // as cold as the day: what heat needs comes on top, and never makes room
  solved.fit =
      model::attempt<model::SolvedFit>([&](std::vector<std::string>& missing) -> std::optional<model::SolvedFit> {
        auto usual = model::solve_fit(build, solved.inputs, {});
        missing = usual.missing;
        if (!usual) return std::nullopt;
        workshop::FitInput in = usual->input;
        in.tube_hot = in.chimney_hot = in.chimney_cold;
        in.heat.reset();
        return model::SolvedFit{in, workshop::fit(in)};
      });
  if (!solved.fit && !solved.fit.missing.empty()) return Loss::lacking;
  if (!solved.fit || fails("fit.cold", solved)) return Loss::tube_too_large;
  return fails("fit.leak", solved) ? Loss::tube_too_loose : Loss::none;  // judged cold, whatever the heat
}

void solve_task(const Yard& yard, const Stock& stock, Task& task) {
  task.solved = true;
  const Drive& drive = yard.drives[task.drive];
  const SupplyFact& supply = yard.supplies[drive.key.unit];
  const description::Build build = with_tube(yard, stock, drive.key.unit, task.tube);
  try {
    model::Solved solved = solve_steady(build, stock);
    task.loss = steady_loss(solved);
    if (task.loss == Loss::none && fails("fit.cold", solved)) task.loss = Loss::tube_too_large;
    if (task.loss != Loss::none) return;
    boiler::RaiseInput input =
        bare(model::raise_input(build, solved.inputs, *solved.draught, solved.fan, solved.supply));
    if (supply.held) hold(input, supply.fan_voltage);
    if (stock.units[drive.key.unit].lowered)
      raise_lowered(input, supply.lowered, task);
    else
      raise_plain(input, task);
  } catch (const ModelError&) {
    task.loss = Loss::no_draught;
  }
}
}  // namespace lumwright::choose
