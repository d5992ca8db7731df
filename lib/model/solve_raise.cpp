#include "boiler/fill.hpp"
#include "boiler/raise.hpp"
#include "matter/water.hpp"
#include "model/solving.hpp"
#include "model/solved.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include <algorithm>

namespace lumwright::model {
namespace {
constexpr Duration give_up = 4.0 * hour;

std::variant<boiler::MeasuredAir, boiler::FanDraught> draught_of(const SolvedDraught& draught,
                                                                 const Outcome<SolvedFan>& fan,
                                                                 const Outcome<SolvedSupply>& supply) {
  if (draught.measured)
    return boiler::MeasuredAir{draught.hot_flow.engine, std::get<draught::LeakShare>(*draught.path.past_bed).share};
  boiler::FanDraught made{.fan = [curve = fan->curve](Rotation speed) { return draught::running(curve, speed); },
                          .motor = *fan->motor,
                          .voltage = std::nullopt};
  if (!supply) made.voltage = fan->label.rated_voltage;
  return made;
}
// The share of the boiler that the water takes: of what the boiler holds, where that was measured.
double fill_of(Inputs& inputs, const description::part::Boiler& boiler, Volume water) {
  const auto holds = inputs.known(boiler.volume);
  return holds ? static_cast<double>(water / *holds) : inputs.constant<double>("raise.fill");
}
// Steam that drives the air out: some changes of the steam space over the water.
Mass purge_of(Inputs& inputs, Volume water, double fill, Pressure barometer) {
  return boiler::purge_steam(water * ((1.0 - fill) / fill), inputs.constant<double>("raise.purge"), barometer);
}
}  // namespace

boiler::RaiseInput raise_input(const description::Build& build, Inputs& inputs, const SolvedDraught& draught,
                               const Outcome<SolvedFan>& fan, const Outcome<SolvedSupply>& supply) {
  const description::part::Boiler& boiler = build.engine.boiler;
  const Volume water = inputs.known(boiler.water).value();
  const double fill = fill_of(inputs, boiler, water);
  boiler::RaiseInput input{.fire = *draught.fire,
                           .boiler = *draught.boiler,
                           .ambient = draught.ambient,
                           .water = std::max(draught.ambient.temperature, degC(1)),
                           .draught = draught_of(draught, fan, supply),
                           .path = draught::GasNetwork(draught.path, draught.ambient),
                           .battery = std::nullopt,
                           .own_blower = inputs.known(boiler.own_blower_from),
                           .working = inputs.known(boiler.working),
                           .purge = purge_of(inputs, water, fill, draught.ambient.pressure),
                           .inside = water / fill,
                           .fan_gas_limit = fan ? std::optional(fan->gas_limit) : std::nullopt,
                           .give_up = give_up,
                           .points_per_step = 6};
  if (supply && !draught.measured) input.battery = boiler::Battery{supply->pack, supply->feed, supply->stop_at};
  return input;
}

Outcome<SolvedRaise> solve_raise(const description::Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan,
                                 const Outcome<SolvedSupply>& supply, const Outcome<SolvedDraught>& draught) {
  return attempt<SolvedRaise>([&](std::vector<std::string>& missing) -> std::optional<SolvedRaise> {
    const description::part::Boiler& boiler = build.engine.boiler;
    if (!draught) missing = draught.missing;
    needed(inputs, boiler.water, missing);
    inputs.known(boiler.volume);
    if (!boiler.working) note_missing(boiler.own_blower_from, missing);
    if (!missing.empty()) return std::nullopt;
    if (!draught) refuse_with(draught);
    if (fan && !draught->measured && !supply.impossible.empty()) refuse_with(supply);  // then nothing turns the fan
    if (boiler.volume && *boiler.water > *boiler.volume)
      throw Refused("raise.water", "there is more water than the boiler holds",
                    "no boiler holds that: measure the water and the boiler once more");
    boiler::RaiseInput input = raise_input(build, inputs, *draught, fan, supply);
    boiler::Raise result = boiler::raise(input);
    const boiler::Fill fill{fill_of(inputs, boiler, *inputs.known(boiler.water)), input.water, input.ambient.pressure};
    return SolvedRaise{std::move(input), std::move(result), fill,
                       inputs.usual(build.want.steam_within)};
  });
}
}  // namespace lumwright::model
