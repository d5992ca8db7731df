#include "boiler/detail/instant.hpp"
#include "matter/water.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>

namespace lumwright::boiler {
namespace {
std::optional<draught::MotorLaw> motor_of(const RaiseInput& input) {
  const auto* fan = std::get_if<FanDraught>(&input.draught);
  return fan ? std::optional(fan->motor) : std::nullopt;
}

void check_draught(const RaiseInput& input) {
  if (const auto* air = std::get_if<MeasuredAir>(&input.draught)) {
    require_above_zero("air through the engine", air->engine);
    require_within("share of the air that misses the bed", air->past_bed, {0.0, 1.0});
    require_above_zero("share of the air that meets the bed", 1.0 - air->past_bed);
    return;
  }
  const auto& fan = std::get<FanDraught>(input.draught);
  if (!fan.fan) throw ModelError("a fan needs its pressure against flow");
  if (!input.path) throw ModelError("a fan needs a gas path to draw on");
  if (!fan.voltage && !input.battery) throw ModelError("a fan needs a voltage or a battery");
}
}  // namespace

InstantSolver::InstantSolver(const RaiseInput& input)
    : input_(input),
      speed_(0.0 * rpm),
      running_{.static_pressure = {}, .free_air = {}, .highest = {}, .rises = false, .kind = {}} {
  check_draught(input);
  if (input.battery) battery_.emplace(*input.battery, motor_of(input));
  if (std::holds_alternative<FanDraught>(input.draught)) tracker_.emplace(*input.path);
}

draught::FanDrive InstantSolver::drive(const FanDraught& draught, const std::optional<SupplyPoint>& supply) const {
  if (draught.voltage) return {*draught.voltage, {}};
  if (input_.battery->feed.control.kind == power::Control::Kind::chopped_supply)
    return {supply->fan, supply->fan_speed};
  return {supply->fan, {}};
}

draught::PathFlow InstantSolver::through_fan(const FanDraught& draught, const FiredBoiler& source,
                                             const InstantPlace& place, const std::optional<SupplyPoint>& supply) {
  const Rotation n = draught::driven_speed(draught.motor, drive(draught, supply));
  if (n != speed_) {
    running_ = draught.fan(n);
    speed_ = n;
  }
  return tracker_->solve(source, running_, place.along);
}

RaiseInstant InstantSolver::solve(const InstantPlace& place) {
  ++solved_;
  std::optional<SupplyPoint> supply;
  if (battery_) supply = battery_->at(place.drawn);
  const FiredBoiler source(input_.fire, input_.boiler, place.condition, zones_);
  std::optional<draught::PathFlow> path;
  MassFlow bed, past_bed;
  if (const auto* air = std::get_if<MeasuredAir>(&input_.draught)) {
    past_bed = air->past_bed * air->engine;
    bed = air->engine - past_bed;
    if (input_.path) {
      path = draught::at_engine_flow(*input_.path, source, air->engine);
      ++measured_paths_;
    }
  } else {
    path = through_fan(std::get<FanDraught>(input_.draught), source, place, supply);
  }
  if (path) {
    bed = path->bed;
    past_bed = path->past_bed;
  }
  const Condition& at = place.condition;
  const BoilerHeat heat = source.heat(bed, past_bed);
  zones_ = source.guess();
  const Pressure gauge = matter::saturation_pressure(at.water) - input_.ambient.pressure;
  return {.time = place.time,
          .water = at.water,
          .gauge = {std::max(gauge, 0.0 * Pa)},
          .lit = at.lit,
          .air = bed + past_bed,
          .burning = source.burning(bed, past_bed),
          .heat = heat,
          .path = path,
          .supply = supply};
}
}  // namespace lumwright::boiler
