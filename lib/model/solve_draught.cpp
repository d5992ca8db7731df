#include "data/fuels.hpp"
#include "data/losses.hpp"
#include "description/stock_name.hpp"
#include "draught/openings.hpp"
#include "draught/orifice.hpp"
#include "matter/water.hpp"
#include "model/detail/fire_side.hpp"
#include "model/solving.hpp"
#include "model/solved.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_fit.hpp"
#include "model/solved_supply.hpp"
#include "quantity/format.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <numbers>

namespace lumwright::model {
namespace {
using Missing = std::vector<std::string>;
/// Lumps lie looser along a wall, by the more the fewer of them go across the box: the upper end of the band allows it.
Band<double> in_a_box(const data::FuelRow& row, const Input* lump, Area grate) {
  Band<double> voidage = row.voidage;
  const double across = square_root(grate) / (lump->value.si * m);
  voidage.high = std::min(voidage.high + draught::wall_voidage(across), 0.8);
  return voidage;
}
std::optional<draught::Bed> bed_of(const description::Build& build, Inputs& inputs, Area grate,
                                   std::optional<Density>& piece) {
  const description::part::Fuel& fuel = build.fuel;
  const data::FuelRow& row = data::fuel(inputs.usual(fuel.kind));
  piece = row.piece_density.value;
  return draught::Bed{
      .particle = inputs.otherwise(fuel.lump, row.lump, because("usual for this fuel", row.basis)),
      .sphericity = inputs.otherwise(fuel.sphericity, row.sphericity, because("roundness of its lumps, 1 for balls", row.basis)),
      .voidage = inputs.otherwise(fuel.voidage, in_a_box(row, inputs.find("fuel.lump"), grate),
                                  because("share of its bed that is gaps", row.basis)),
      .depth = inputs.usual(fuel.bed),
      .grate = grate,
      .resistance = inputs.constant<double>("gas.bed_resistance")};
}

void engine_parts(const description::Build& build, Inputs& inputs, draught::GasPath& path,
                  std::optional<Density>& piece, Missing& missing) {
  const description::part::Engine& engine = build.engine;
  const auto length = needed(inputs, engine.grate.length, missing);
  const auto width = needed(inputs, engine.grate.width, missing);
  note_missing(engine.tubes.count, missing);
  const auto bore = needed(inputs, engine.tubes.bore, missing);
  const auto reach = needed(inputs, engine.tubes.length, missing);
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
      inputs.usual(engine.grate.open_share) * inputs.constant<double>("gas.grate_clear");
  const auto entry_width = inputs.known(engine.air_entry.width);
  const auto entry_height = inputs.known(engine.air_entry.height);
  if (entry_width) note_missing(engine.air_entry.height, missing);
  if (entry_height) note_missing(engine.air_entry.width, missing);
  if (!entry_width && !entry_height) inputs.stands_in("engine.air_entry");
  if (entry_width && entry_height)
    path.air_entry = draught::Hole{*entry_width * *entry_height, draught::discharge_coefficient("door").value};
  path.grate = draught::Grate{grate, clear};
  path.bed = bed_of(build, inputs, grate, piece);
  path.past_bed = draught::LeakShare{inputs.usual(engine.leakage.past_bed)};
  path.smokebox = draught::LeakShare{inputs.usual(engine.leakage.smokebox)};
  const Length across = square_root(grate);
  path.tubes = draught::FireTubes{.count = *engine.tubes.count,
                                  .each = {*bore, *reach, data::roughness("sooted").value.value},
                                  .firebox = grate,
                                  .rise = 0.0 * mm,
                                  .above_bed = inputs.constant<double>("gas.firebox_height") * across};
  path.smokebox_rise = inputs.constant<double>("gas.smokebox_height") * across;
}

draught::InletShape inlet_shape(const std::string& kind, Length bore, Length wall) {
  return {.kind = kind == "projecting" ? draught::Inlet::projecting
                  : kind == "rounded"  ? draught::Inlet::rounded
                                       : draught::Inlet::square,
          .bore = bore,
          .wall = wall,
          .projection = 0.5 * bore,
          .radius = 0.1 * bore};
}

void adapter_parts(const description::Build& build, Inputs& inputs, draught::GasPath& path, Missing& missing) {
  const description::part::AdapterTube& tube = build.adapter.tube;
  const auto outside = needed(inputs, tube.outside, missing);
  const auto length = needed(inputs, tube.length, missing);
  if (!outside || !length) return;
  const Length wall = inputs.usual(tube.wall);
  // what lies in the tube leaves a rounder, narrower way
  const Length bore = (*outside - 2.0 * wall) * std::sqrt(1.0 - inputs.hidden<double>("fault.tube_shut"));
  if (bore <= 0.0 * mm)
    throw Refused("draught.flow", "the walls of the adapter tube leave no bore",
                  "measure `adapter.tube.outside` and `adapter.tube.wall` once more");
  const auto engaged = engaged_length(build, inputs);
  const Length in_chimney = engaged.value_or(0.0 * mm);
  path.adapter = draught::Adapter{.tube = {bore, *length, data::roughness("sooted").value.value},
                                  .inlet = inlet_shape(inputs.usual(tube.inlet), bore, wall),
                                  .fittings = 0.0,
                                  .rise = *length,
                                  .wall = draught::TubeWall{bore, *outside, std::max(*length - in_chimney, 0.0 * mm),
                                                            inputs.constant<double>("gas.tube_emissivity")}};
  const description::part::Cylinders& cylinders = build.engine.cylinders;
  if (!cylinders.count && !cylinders.blast_nozzle) inputs.stands_in("engine.cylinders");
  if (cylinders.count || cylinders.blast_nozzle)
    path.blast_pipe_gap = inputs.constant<double>("gas.blast_pipe_gap") * bore;
  const auto chimney = inputs.known(build.engine.chimney.bore);
  if (!chimney) inputs.stands_in(build.engine.chimney.bore);
  if (chimney && *chimney > *outside)
    path.annulus = draught::Annulus{0.5 * (*chimney + *outside), 0.5 * (*chimney - *outside), engaged.value_or(*length),
                                    inputs.constant<double>("gas.annulus_eccentricity")};
}

/// On the head in the fan's own opening; a guard that is described by its kind alone is as open as such guards are.
std::optional<draught::FanGuard> guard_of(const description::Build& build, Inputs& inputs, Length opening) {
  const description::part::FanGuard& guard = build.fan.guard;
  if (!guard.kind || *guard.kind == "none") return std::nullopt;
  const bool plate = *guard.kind == "drilled plate";
  const data::GuardRow& row = data::fan_guard(*guard.kind);
  const double open = inputs.otherwise(guard.open_share, row.open_share, because("as such guards are", row.basis));
  return draught::FanGuard{plate ? draught::perforated_plate(open) : draught::wire_screen(open), circle(opening)};
}
void box_parts(const description::Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan, draught::GasPath& path) {
  const description::part::Box& box = build.adapter.box;
  const auto diameter = inputs.known(box.diameter),
             height = inputs.known(box.height);
  if (!diameter || !height) inputs.stands_in("adapter.box");
  if (fan && fan->label.frame > 0.0 * mm)
    path.guard = guard_of(build, inputs, data::fan_wheel_share(fan->label.kind) * fan->label.frame);
  if (diameter && height) {
    if (fan && fan->label.frame <= 0.0 * mm) inputs.stands_in(build.fan.frame);
    const Length frame = fan && fan->label.frame > 0.0 * mm ? fan->label.frame : *diameter;
    const double wheel = data::fan_wheel_share(fan ? fan->label.kind : data::FanKind::axial);
    const Length taken = fan && fan->inside ? fan->thickness.value() : 0.0 * mm;
    const Length distance = std::max(*height - taken, 0.1 * *height);
    const Area skin =
        std::numbers::pi * *diameter * *height + 2.0 * circle(*diameter) - circle(std::min(frame, *diameter));
    if (path.adapter && path.adapter->tube.bore > *diameter)
      throw Refused("draught.flow",
                    fmt::format("the tube is {} wide inside, wider than the box of {} that it opens into",
                                description::length_on_page(path.adapter->tube.bore, build),
                                description::length_on_page(*diameter, build)),
                    "measure tube and box once more");
    path.box = draught::Box{.bore = *diameter,
                            .depth = {wheel * frame, distance},
                            .rise = distance,
                            .wall = draught::BoxWall{*height, skin, inputs.constant<double>("gas.tin_emissivity"),
                                                     inputs.constant<double>("gas.box_stirring")}};
  }
  const int holes = build.adapter.bleed.holes ? *build.adapter.bleed.holes : 0;
  const auto each = inputs.known(build.adapter.bleed.diameter);
  if (holes == 0 || !each) inputs.stands_in("adapter.bleed");
  if (holes > 0 && each)
    path.bleed =
        draught::Hole{static_cast<double>(holes) * circle(*each), draught::discharge_coefficient("sharp hole").value};
  // a lid or joint that leaks lets air in where bleed holes do
  if (const Area leak = inputs.hidden<Area>("fault.box_leak"); leak > 0.0 * m2)
    path.bleed = draught::Hole{(path.bleed ? path.bleed->area : 0.0 * m2) + leak,
                               draught::discharge_coefficient("sharp hole").value};
}

// Water at own-blower pressure: the fire burns brightest against it, and the gas is hottest.
Temperature judged_at(const description::Build& build, Inputs& inputs, Pressure barometer) {
  const auto gauge = take_over(build, inputs);
  if (!build.engine.boiler.own_blower_from)
    inputs.stands_in(gauge ? build.engine.boiler.own_blower_from : build.engine.boiler.working);
  return gauge ? matter::saturation_temperature(gauge->above_barometer + barometer) : degC(110);
}

constexpr const char* too_little_air =
    "measure `draught.air_flow` once more: the hot gas draws more than that by itself";
constexpr const char* too_little_suction = "take a fan with more pressure, or shorten or widen the way of the gas";

// What the fan is given, and how fast that turns it.
void run_fan(const SolvedFan& fan, const Outcome<SolvedSupply>& supply, Inputs& inputs, SolvedDraught& draught) {
  if (!supply) inputs.stands_in("supply.pack");
  draught.fan_voltage = supply ? supply->start.fan_voltage : fan.label.rated_voltage;
  const bool chopped = supply && supply->feed.control.kind == power::Control::Kind::chopped_supply;
  const draught::FanDrive drive{draught.fan_voltage, chopped ? std::optional(supply->start.speed) : std::nullopt};
  draught.fan_speed = told_by("fan.voltage", "", "more cells, a higher output, or a fan rated for less",
                              [&] { return draught::driven_speed(*fan.motor, drive); });
}
}  // namespace

Outcome<SolvedDraught> solve_draught(const description::Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan,
                                     const Outcome<SolvedSupply>& supply) {
  return attempt<SolvedDraught>([&](Missing& missing) -> std::optional<SolvedDraught> {
    SolvedDraught d{};
    d.ambient = {inputs.usual(build.place.air), inputs.usual(build.place.barometer)};
    engine_parts(build, inputs, d.path, d.fuel_piece, missing);
    const auto measured = inputs.known(build.draught.air_flow);
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

    const draught::GasNetwork hot(d.path, d.ambient);
    d.fire = fire_of(build, inputs, d.path.grate->area);
    d.boiler = boiler_of(build, inputs, d.path.grate->area);
    d.water = judged_at(build, inputs, d.ambient.pressure);
    const boiler::FiredBoiler alight(*d.fire, *d.boiler, {.lit = 1.0, .wanted_by_bed = 0.0 * W, .water = d.water});
    const draught::FixedTemperatures out = draught::unlit(d.ambient);
    std::optional<draught::RunningFan> running_fan;
    if (measured) {
      d.hot_flow = draught::at_engine_flow(hot, alight, *measured);
    } else {
      run_fan(*fan, supply, inputs, d);
      running_fan = draught::running(fan->curve, d.fan_speed);
      d.hot = draught::solve_duty(hot, alight, *running_fan);
      d.hot_flow = d.hot->flow;
    }
    d.burning = d.fire->burn(1.0, 0.0 * W, d.hot_flow.bed, d.hot_flow.past_bed);
    d.cold_path =
        draught::with_openings(d.path, told_by("draught.flow", "", d.measured ? too_little_air : too_little_suction,
                                               [&] { return draught::openings(hot, d.hot_flow); }));
    const draught::GasNetwork cold(d.cold_path, d.ambient);
    if (running_fan) d.cold = draught::solve_duty(cold, out, *running_fan);
    if (!inputs.one_of_many()) d.fan_off = draught::without_fan(hot, alight, d.hot_flow.bed);
    d.cold_flow = d.cold ? d.cold->flow : draught::at_engine_flow(cold, out, *measured);
    return d;
  });
}
}  // namespace lumwright::model
