#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "plan/curves.hpp"
#include "boiler/boiler.hpp"
#include <algorithm>

namespace lumwright::plan {
namespace {
constexpr int points = 48;
constexpr double headroom = 1.12;  // of the picture over the highest fan curve

std::vector<FlowPoint> path_curve(const draught::GasNetwork& network, const draught::TemperatureSource& source,
                                  MassFlow about, VolumeFlow widest, Pressure highest) {
  const auto beyond = [&](const draught::PathFlow& f) { return f.fan_suction > highest || f.fan_volume > widest; };
  MassFlow most = about;
  for (int i = 0; i < 40 && !beyond(network.follow(most, source)); ++i) most *= 1.25;
  std::vector<FlowPoint> curve;
  for (int i = 0; i <= points; ++i) {
    const double share = static_cast<double>(i) / points;
    const draught::PathFlow f = network.follow(most * share, source);
    curve.push_back({std::max(f.fan_volume, 0.0 * m3_per_s), f.fan_suction});
  }
  return curve;
}
std::vector<FlowPoint> fan_curve(const draught::RunningFan& fan, Density gas) {
  std::vector<FlowPoint> curve;
  for (int i = 0; i <= points; ++i) {
    const VolumeFlow flow = fan.free_air * (static_cast<double>(i) / points);
    curve.push_back({flow, std::max(draught::static_pressure(fan, flow, gas), 0.0 * Pa)});
  }
  return curve;
}
DraughtState state(const draught::GasPath& path, const draught::PathFlow& flow,
                   const std::optional<draught::Duty>& duty) {
  DraughtState s{.gas = flow.fan_gas,
                 .fan = {},
                 .path = {},
                 .at = {flow.fan_volume, duty ? duty->static_pressure : flow.fan_suction},
                 .others = {},
                 .losses = draught::losses(path, flow),
                 .natural_draught = flow.natural_draught};
  if (duty)
    for (const draught::Crossing& crossing : duty->crossings)
      if (crossing.fan_volume != flow.fan_volume) s.others.push_back({crossing.fan_volume, crossing.static_pressure});
  return s;
}
void add_fan(DraughtCurves& curves, const model::SolvedDraught& draught, const model::SolvedFan& fan) {
  const draught::RunningFan turning = draught::running(fan.curve, draught.fan_speed);
  curves.hot.fan = fan_curve(turning, draught.hot_flow.fan_density);
  curves.cold.fan = fan_curve(turning, draught.cold_flow.fan_density);
  curves.widest = turning.free_air;
  for (const auto* curve : {&curves.hot.fan, &curves.cold.fan})
    for (const FlowPoint& point : *curve) curves.highest = std::max(curves.highest, headroom * point.pressure);
  if (const data::FanStall* stall = data::fan_stall(turning.kind))
    curves.stall = StallFlows{stall->from * turning.free_air, stall->to * turning.free_air};
}
}  // namespace

DraughtCurves draught_curves(const model::SolvedDraught& d, const model::Outcome<model::SolvedFan>& fan) {
  DraughtCurves curves{.hot = state(d.path, d.hot_flow, d.hot),
                       .cold = state(d.cold_path, d.cold_flow, d.cold),
                       .stall = std::nullopt,
                       .widest = 1.5 * std::max(d.hot_flow.fan_volume, d.cold_flow.fan_volume),
                       .highest = 1.5 * std::max(d.hot_flow.fan_suction, d.cold_flow.fan_suction),
                       .fan_band = {},
                       .path_band = {}};
  if (d.hot) add_fan(curves, d, *fan);
  const boiler::FiredBoiler alight(*d.fire, *d.boiler, {.lit = 1.0, .wanted_by_bed = 0.0 * W, .water = d.water});
  const draught::FixedTemperatures out = draught::unlit(d.ambient);
  curves.hot.path =
      path_curve(draught::GasNetwork(d.path, d.ambient), alight, d.hot_flow.bed, curves.widest, curves.highest);
  curves.cold.path =
      path_curve(draught::GasNetwork(d.cold_path, d.ambient), out, d.cold_flow.bed, curves.widest, curves.highest);
  return curves;
}
}  // namespace lumwright::plan
