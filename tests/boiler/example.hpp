// The worked example of a 300 ml boiler, and a whole engine with fan and pack. Invented, but near what people build.
#pragma once
#include "boiler/raise.hpp"
#include "data/cells.hpp"
#include "data/fans.hpp"
#include "data/speed_control.hpp"
#include "data/step_ups.hpp"
#include "draught/fan_estimate.hpp"
#include "fire/heating_value.hpp"
#include "usual_fans.hpp"

namespace lumwright {
/// What the sensitivities vary.
struct ExampleA {
  double air = 0.4, past_bed = 0.25, monoxide = 0.12, kindling = 150.0, lit = 0.1, start = 15.0, room = 15.0;
  double water = 300.0, copper = 1.10, brass = 0.25, steel = 0.30, bed = 16.0, length = 150.0, loss = 0.35;
  double emissivity = 0.7, surface = 65.0, heat_factor = 1.0;
  int tubes = 7;
};
inline boiler::HeatCapacity metal_of(double copper, double brass, double steel) {  // kg; Kaye and Laby, from memory
  return (copper * 390.0 + brass * 380.0 + steel * 480.0) * J / K;
}
inline boiler::RaiseInput example_a(const ExampleA& a = {}) {
  const data::FuelAnalysis& fuel = data::fuel("lump charcoal").analysis;
  return {
      .fire = fire::Fire({.fuel = fuel,
                          .net_heat = fire::net_heat(fuel),
                          .ash_left = 0.0,  // the worked example lets it go with the gas
                          .depth = {.bed = 34.0 * mm, .burn = 6.0 * mm},
                          .monoxide_loss = a.monoxide,
                          .bed = a.bed * g,
                          .bed_capacity = 1400.0 * J_per_kg_K,
                          .glow = kelvin(1200.0),
                          .bed_exit = kelvin(1200.0),
                          .kindling = {.lit_at_start = a.lit, .duration = a.kindling * s},
                          .air = degC(a.room)}),
      .boiler = {.water = a.water * g,
                 .metal = metal_of(a.copper, a.brass, a.steel),
                 .firebox = {.surface = a.surface * cm2, .emissivity = a.emissivity, .convection = 20.0 * W_per_m2_K},
                 .tubes = {.count = a.tubes, .bore = 8.0 * mm, .length = a.length * mm},
                 .outside = a.loss * W_per_K,
                 .heat_factor = a.heat_factor},
      .ambient = {.temperature = degC(a.room), .pressure = atmosphere},
      .water = degC(a.start),
      .draught = boiler::MeasuredAir{.engine = a.air * g_per_s, .past_bed = a.past_bed},
      .path = {},
      .battery = {},
      .own_blower = GaugePressure{1.0 * bar},
      .working = GaugePressure{3.0 * bar},
      .purge = 0.0 * g,
      .inside = {},
      .fan_gas_limit = {},
      .give_up = 2.0 * hour,
      .points_per_step = 4};
}
inline Duration to_own_blower(const boiler::RaiseInput& input) {
  return boiler::raise(input).time_of(boiler::RaiseEventKind::own_blower).value();
}

/// Grate, bed, leaks, tubes, adapter and box round the boiler of `example_a`; `fan` is the frame of the fan on the box.
inline draught::GasPath example_path(Length fan) {
  const Area grate = 40.0 * mm * 55.0 * mm;
  const Length bore = 14.2 * mm;
  draught::GasPath path;
  path.grate = draught::Grate{.area = grate, .open_share = 0.175};
  path.bed = draught::Bed{.particle = 6.0 * mm, .sphericity = 0.7, .voidage = 0.5, .depth = 34.0 * mm, .grate = grate};
  path.past_bed = draught::LeakShare{0.25};
  path.smokebox = draught::LeakShare{0.05};
  path.tubes = draught::FireTubes{.count = 7,
                                  .each = {.bore = 8.0 * mm, .length = 150.0 * mm, .roughness = 0.1 * mm},
                                  .firebox = grate,
                                  .rise = 0.0 * mm};
  path.adapter = draught::Adapter{
      .tube = {.bore = bore, .length = 40.0 * mm, .roughness = 0.1 * mm},
      .inlet =
          {.kind = draught::Inlet::square, .bore = bore, .wall = 0.4 * mm, .projection = 7.0 * mm, .radius = 1.0 * mm},
      .fittings = 0.0,
      .rise = 40.0 * mm,
      .wall = draught::TubeWall{.bore = bore, .outside = 15.0 * mm, .length = 40.0 * mm, .emissivity = 0.3}};
  path.blast_pipe_gap = bore;
  path.box = draught::Box{
      .bore = 80.0 * mm,
      .depth = {.fan_opening = 0.95 * fan, .distance = 40.0 * mm},
      .rise = 40.0 * mm,
      .wall = draught::BoxWall{.height = 40.0 * mm, .area = 0.015 * m2, .emissivity = 0.3, .stirring = 2.0}};
  return path;
}
inline boiler::FanDraught example_fan(const UsualFan& fan) {
  const draught::FanCurve curve =
      draught::curve_from_sheet({.kind = fan.kind,
                                 .speed = fan.rated_speed,
                                 .points = {{0.0 * m3_per_s, fan.shut_off}, {fan.free_air, 0.0 * Pa}},
                                 .thickness = fan.thickness});
  return {.fan = [curve](Rotation n) { return draught::running(curve, n); },
          .motor = draught::motor_law({.rated_voltage = fan.rated_voltage,
                                       .rated_speed = fan.rated_speed,
                                       .starts_at = 0.3 * fan.rated_voltage,
                                       .speed_at = {}}),
          .voltage = {}};
}
inline boiler::Battery example_battery(const UsualFan& fan, bool step_up) {
  const power::PackInput pack{.cell = data::cell("NiMH AA"),
                              .series = 5,
                              .parallel = 1,
                              .capacity = 1900.0 * mAh,
                              .capacity_factor = 0.9,
                              .resistance_factor = 1.5,
                              .charged = 1.0,
                              .rate_exponent = 1.05,
                              .temperature = degC(15),
                              .measured = {},
                              .contacts = 60.0 * mohm,
                              .outside = 60.0 * mohm,
                              .cell_resistance = {},
                              .weakest = {}};
  power::FanSupply feed{
      .fan = {.rated_voltage = fan.rated_voltage, .rated_current = fan.rated_current, .current_exponent = 2.0},
      .control = power::uncontrolled(),
      .step_up = {},
      .motor = data::motor_shares(),
      .regulator_dropout = 0.5 * V};
  if (step_up) feed.step_up = power::step_up_of(data::step_up("small 1.2 MHz"), fan.rated_voltage, 2.5 * V);
  return {.pack = power::make_pack(pack), .feed = feed, .stop_at = 4.5 * V};
}
inline boiler::BoilerHeat heat_of(const boiler::RaiseInput& input, const fire::Burning& burning, Temperature water) {
  return boiler::boiler_heat(input.boiler, input.fire, burning, boiler::zones(input.boiler, burning, water), water);
}
/// The boiler of `example_a` with a usual fan on a pack.
inline boiler::RaiseInput example_coupled(std::string_view fan_id = "axial 60x25", bool step_up = true) {
  const UsualFan& fan = usual_fan(fan_id);
  boiler::RaiseInput input = example_a();
  input.path = draught::GasNetwork(example_path(fan.frame), input.ambient);
  input.draught = example_fan(fan);
  input.battery = example_battery(fan, step_up);
  input.fan_gas_limit = fan.gas_limit;
  return input;
}
}  // namespace lumwright
