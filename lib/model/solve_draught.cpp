#include "data/fuels.hpp"
#include "data/losses.hpp"
#include "draught/openings.hpp"
#include "draught/orifice.hpp"
#include "matter/water.hpp"
#include "model/fire_side.hpp"
#include "model/solved.hpp"
#include "quantity/format.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <numbers>

namespace lumwright {
namespace {
using Missing = std::vector<std::string>;
/// Lumps lie looser along a wall, by the more the fewer of them go across the box: the upper end of the band allows it.
Band<double> in_a_box(const data::FuelRow& row, const Input* lump, Area grate) {
  Band<double> voidage = row.voidage;
  const double across = root<2>(grate) / (lump->value.si * m);
  voidage.high = std::min(voidage.high + wall_voidage(across), 0.8);
  return voidage;
}
std::optional<Bed> bed_of(const Build& build, Inputs& inputs, Area grate, std::optional<Density>& piece) {
  const part::Fuel& fuel = build.fuel;
  const data::FuelRow& row = data::fuel(inputs.usual("fuel.kind", fuel.kind));
  piece = row.piece_density.value;
  return Bed{.particle = inputs.otherwise("fuel.lump", fuel.lump, row.lump,
                                          because("usual for this fuel", row.source, row.standing)),
             .sphericity = inputs.otherwise("fuel.sphericity", fuel.sphericity, row.sphericity,
                                            because("shape of this fuel", row.source, row.standing)),
             .voidage = inputs.otherwise("fuel.voidage", fuel.voidage, in_a_box(row, inputs.find("fuel.lump"), grate),
                                         because("gaps in a bed of this fuel", row.source, row.standing)),
             .depth = inputs.usual("fuel.bed", fuel.bed),
             .grate = grate,
             .resistance = inputs.constant<double>("gas.bed_resistance")};
}

void engine_parts(const Build& build, Inputs& inputs, GasPath& path, std::optional<Density>& piece, Missing& missing) {
  const part::Engine& engine = build.engine;
  const auto length = needed(inputs, "engine.grate.length", engine.grate.length, missing);
  const auto width = needed(inputs, "engine.grate.width", engine.grate.width, missing);
  if (!engine.tubes.count) missing.emplace_back("engine.tubes.count");
  const auto bore = needed(inputs, "engine.tubes.bore", engine.tubes.bore, missing);
  const auto reach = needed(inputs, "engine.tubes.length", engine.tubes.length, missing);
  if (!missing.empty()) return;
  const Area grate = *length * *width;
  const Area through = static_cast<double>(*engine.tubes.count) * circle(*bore);
  if (through >= grate)
    throw Refused(
        "draught.flow",
        fmt::format("the bores of the fire tubes add up to {}, more than the grate's {}: they cannot stand in "
                    "one firebox",
                    format(through, "mm2"), format(grate, "mm2")),
        "count the fire tubes once more, and measure their bore and the grate");
  const double clear =
      inputs.usual("engine.grate.open_share", engine.grate.open_share) * inputs.constant<double>("gas.grate_clear");
  const auto entry_width = inputs.known("engine.air_entry.width", engine.air_entry.width);
  const auto entry_height = inputs.known("engine.air_entry.height", engine.air_entry.height);
  if (entry_width && !entry_height) missing.emplace_back("engine.air_entry.height");
  if (entry_height && !entry_width) missing.emplace_back("engine.air_entry.width");
  if (!entry_width && !entry_height) inputs.stands_in("engine.air_entry");
  if (entry_width && entry_height)
    path.air_entry = Hole{*entry_width * *entry_height, discharge_coefficient("door").value};
  path.grate = Grate{grate, clear};
  path.bed = bed_of(build, inputs, grate, piece);
  path.past_bed = LeakShare{inputs.usual("engine.leakage.past_bed", engine.leakage.past_bed)};
  path.smokebox = LeakShare{inputs.usual("engine.leakage.smokebox", engine.leakage.smokebox)};
  const Length across = root<2>(grate);
  path.tubes = FireTubes{.count = *engine.tubes.count,
                         .each = {*bore, *reach, data::roughness("sooted").value.value},
                         .firebox = grate,
                         .rise = 0.0 * mm,
                         .above_bed = inputs.constant<double>("gas.firebox_height") * across};
  path.smokebox_rise = inputs.constant<double>("gas.smokebox_height") * across;
}

InletShape inlet_shape(const std::string& kind, Length bore, Length wall) {
  return {.kind = kind == "projecting" ? Inlet::projecting
                  : kind == "rounded"  ? Inlet::rounded
                                       : Inlet::square,
          .bore = bore,
          .wall = wall,
          .projection = 0.5 * bore,
          .radius = 0.1 * bore};
}

void adapter_parts(const Build& build, Inputs& inputs, GasPath& path, Missing& missing) {
  const part::AdapterTube& tube = build.adapter.tube;
  const auto outside = needed(inputs, "adapter.tube.outside", tube.outside, missing);
  const auto length = needed(inputs, "adapter.tube.length", tube.length, missing);
  if (!outside || !length) return;
  const Length wall = inputs.usual("adapter.tube.wall", tube.wall), bore = *outside - 2.0 * wall;
  if (bore <= 0.0 * mm)
    throw Refused("draught.flow", "the walls of the adapter tube leave no bore",
                  "measure `adapter.tube.outside` and `adapter.tube.wall` once more");
  const auto engaged = engaged_length(build, inputs);
  const Length in_chimney = engaged.value_or(0.0 * mm);
  path.adapter = Adapter{.tube = {bore, *length, data::roughness("sooted").value.value},
                         .inlet = inlet_shape(inputs.usual("adapter.tube.inlet", tube.inlet), bore, wall),
                         .fittings = 0.0,
                         .rise = *length,
                         .wall = TubeWall{bore, *outside, std::max(*length - in_chimney, 0.0 * mm),
                                          inputs.constant<double>("gas.tube_emissivity")}};
  const part::Cylinders& cylinders = build.engine.cylinders;
  if (!cylinders.count && !cylinders.blast_nozzle) inputs.stands_in("engine.cylinders");
  if (cylinders.count || cylinders.blast_nozzle)
    path.blast_pipe_gap = inputs.constant<double>("gas.blast_pipe_gap") * bore;
  const auto chimney = inputs.known("engine.chimney.bore", build.engine.chimney.bore);
  if (!chimney) inputs.stands_in("engine.chimney.bore");
  if (chimney && *chimney > *outside)
    path.annulus = Annulus{0.5 * (*chimney + *outside), 0.5 * (*chimney - *outside), engaged.value_or(*length),
                           inputs.constant<double>("gas.annulus_eccentricity")};
}

void box_parts(const Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan, GasPath& path) {
  const part::Box& box = build.adapter.box;
  const auto diameter = inputs.known("adapter.box.diameter", box.diameter),
             height = inputs.known("adapter.box.height", box.height);
  if (!diameter || !height) inputs.stands_in("adapter.box");
  if (diameter && height) {
    if (fan && fan->label.frame <= 0.0 * mm) inputs.stands_in("fan.frame");
    const Length frame = fan && fan->label.frame > 0.0 * mm ? fan->label.frame : *diameter;
    const double wheel = data::fan_wheel_share(fan ? fan->label.kind : FanKind::axial);
    const Length taken = fan && fan->inside ? fan->thickness.value() : 0.0 * mm;
    const Length distance = std::max(*height - taken, 0.1 * *height);
    const Area skin =
        std::numbers::pi * *diameter * *height + 2.0 * circle(*diameter) - circle(std::min(frame, *diameter));
    if (path.adapter && path.adapter->tube.bore > *diameter)
      throw Refused("draught.flow",
                    fmt::format("the tube is {} wide inside, wider than the box of {} that it opens into",
                                format(path.adapter->tube.bore, "mm"), format(*diameter, "mm")),
                    "measure tube and box once more");
    path.box = Box{.bore = *diameter,
                   .depth = {wheel * frame, distance},
                   .rise = distance,
                   .wall = BoxWall{*height, skin, inputs.constant<double>("gas.tin_emissivity"),
                                   inputs.constant<double>("gas.box_stirring")}};
  }
  const int holes = build.adapter.bleed.holes ? *build.adapter.bleed.holes : 0;
  const auto each = inputs.known("adapter.bleed.diameter", build.adapter.bleed.diameter);
  if (holes == 0 || !each) inputs.stands_in("adapter.bleed");
  if (holes > 0 && each)
    path.bleed = Hole{static_cast<double>(holes) * circle(*each), discharge_coefficient("sharp hole").value};
}

// Water at own-blower pressure: the fire burns brightest against it, and the gas is hottest.
Temperature judged_at(const Build& build, Inputs& inputs, Pressure barometer) {
  const auto gauge = take_over(build, inputs);
  if (!build.engine.boiler.own_blower_from)
    inputs.stands_in(gauge ? "engine.boiler.own_blower_from" : "engine.boiler.working");
  return gauge ? saturation_temperature(gauge->above_barometer + barometer) : degC(110);
}

constexpr const char* too_little_air =
    "measure `draught.air_flow` once more: the hot gas draws more than that by itself";
constexpr const char* too_little_suction = "take a fan with more pressure, or shorten or widen the way of the gas";

// What the fan is given, and how fast that turns it.
void run_fan(const SolvedFan& fan, const Outcome<SolvedSupply>& supply, Inputs& inputs, SolvedDraught& draught) {
  if (!supply) inputs.stands_in("supply.pack");
  draught.fan_voltage = supply ? supply->start.fan_voltage : fan.label.rated_voltage;
  const bool chopped = supply && supply->feed.control.kind == Control::Kind::chopped_supply;
  const FanDrive drive{draught.fan_voltage, chopped ? std::optional(supply->start.speed) : std::nullopt};
  draught.fan_speed = told_by("fan.voltage", "", "more cells, a higher output, or a fan rated for less",
                              [&] { return driven_speed(*fan.motor, drive); });
}
}  // namespace

Outcome<SolvedDraught> solve_draught(const Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan,
                                     const Outcome<SolvedSupply>& supply) {
  return attempt<SolvedDraught>([&](Missing& missing) -> std::optional<SolvedDraught> {
    SolvedDraught d{};
    d.ambient = {inputs.usual("place.air", build.place.air), inputs.usual("place.barometer", build.place.barometer)};
    engine_parts(build, inputs, d.path, d.fuel_piece, missing);
    const auto measured = inputs.known("draught.air_flow", build.draught.air_flow);
    d.measured = measured.has_value();
    if (!measured || build.adapter.tube.outside) {
      Missing adapter_missing;
      adapter_parts(build, inputs, d.path, adapter_missing);
      if (!measured) missing.insert(missing.end(), adapter_missing.begin(), adapter_missing.end());
    }
    if (!measured && !fan) missing.insert(missing.end(), fan.missing.begin(), fan.missing.end());
    if (!measured && !fan && fan.missing.empty()) refuse_with(fan);
    if (!missing.empty()) return std::nullopt;
    if (!d.path.adapter) inputs.stands_in("adapter.tube");
    box_parts(build, inputs, fan, d.path);

    const GasNetwork hot(d.path, d.ambient);
    d.fire = fire_of(build, inputs, d.path.grate->area);
    d.boiler = boiler_of(build, inputs, d.path.grate->area);
    d.water = judged_at(build, inputs, d.ambient.pressure);
    const FiredBoiler alight(*d.fire, *d.boiler, {.lit = 1.0, .wanted_by_bed = 0.0 * W, .water = d.water});
    const FixedTemperatures out = unlit(d.ambient);
    std::optional<RunningFan> running_fan;
    if (measured) {
      d.hot_flow = at_engine_flow(hot, alight, *measured);
    } else {
      run_fan(*fan, supply, inputs, d);
      running_fan = running(fan->curve, d.fan_speed);
      d.hot = solve_duty(hot, alight, *running_fan);
      d.hot_flow = d.hot->flow;
    }
    d.burning = d.fire->burn(1.0, 0.0 * W, d.hot_flow.bed, d.hot_flow.past_bed);
    d.cold_path = with_openings(d.path, told_by("draught.flow", "", d.measured ? too_little_air : too_little_suction,
                                                [&] { return openings(hot, d.hot_flow); }));
    const GasNetwork cold(d.cold_path, d.ambient);
    if (running_fan) d.cold = solve_duty(cold, out, *running_fan);
    if (!inputs.one_of_many()) d.fan_off = without_fan(hot, alight, d.hot_flow.bed);
    d.cold_flow = d.cold ? d.cold->flow : at_engine_flow(cold, out, *measured);
    return d;
  });
}
}  // namespace lumwright
