#include "model/detail/fire_side.hpp"
#include "data/fire.hpp"
#include "data/fuels.hpp"
#include "data/lagging.hpp"
#include "fire/burning_bed.hpp"
#include "fire/habits.hpp"
#include "fire/heating_value.hpp"
#include "matter/metal.hpp"
#include "quantity/errors.hpp"
#include <array>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::model {
namespace {
boiler::HeatCapacity metal_of(const description::Build& build, Inputs& inputs, Volume water) {
  const description::part::BoilerMetal& m = build.engine.boiler.metal;
  const bool any = m.copper || m.brass || m.steel;
  const auto mass = [&](const description::Given<Mass>& given) {
    if (any && !given) inputs.stands_in(given.key.text());
    return inputs.known(given).value_or(0.0 * g);
  };
  Mass copper = mass(m.copper);
  if (!any) copper = inputs.constant<double>("engine.boiler.copper_per_litre") * in(water, litre) * kg;
  const std::array masses = {boiler::MetalMass{&matter::metal("copper"), copper},
                             boiler::MetalMass{&matter::metal("brass"), mass(m.brass)},
                             boiler::MetalMass{&matter::metal("steel"), mass(m.steel)}};
  return boiler::heat_capacity(masses);
}
boiler::OutsideLoss loss_of(const description::Build& build, Inputs& inputs, Volume water) {
  const description::part::Boiler& boiler = build.engine.boiler;
  if (const auto written = inputs.known(boiler.heat_loss)) return *written;
  const Area surface =
      std::pow(in(water, litre), 2.0 / 3.0) * inputs.constant<Area>("engine.boiler.outside_at_one_litre");
  const auto lagging = inputs.known(boiler.lagging);
  if (!lagging)
    return boiler::plates_that_lose(surface, inputs.constant<HeatTransfer>("engine.boiler.loss_coefficient"));
  boiler::Plates plates = boiler::plates_that_lose(surface, data::bare_loss().coefficient);
  plates.lagging = boiler::lagging_lets_through(*lagging);
  return plates;
}
/// A fuel as it is fired: more ash than usual takes what burns, its heat and its air demand away alike; more water
/// takes its latent heat as well.
struct AsFired {
  data::FuelAnalysis analysis;  // with the usual ash
  double rich;                  // of a kilogram, over a kilogram of that
};
AsFired as_fired(const description::part::Fuel& fuel, Inputs& inputs, const data::FuelAnalysis& usual) {
  const auto why = [&] { return because("usual for this fuel", usual.basis); };
  const double ash = inputs.otherwise(fuel.ash, exactly(usual.ash), why());
  const double moisture = inputs.otherwise(fuel.moisture, exactly(usual.moisture), why());
  const double rich = (1.0 - ash) / (1.0 - usual.ash);
  data::FuelAnalysis a = usual;
  a.moisture = moisture / rich;
  const double keeps = (1.0 - a.ash - a.moisture) / (1.0 - usual.ash - usual.moisture);
  for (double* part : {&a.volatiles, &a.carbon, &a.hydrogen, &a.oxygen, &a.nitrogen, &a.sulphur}) *part *= keeps;
  return {a, rich};
}
/// From the match until the whole bed glows: as written, or by the fuel, its start and the grate.
Duration kindling_of(const description::part::Fuel& fuel, Inputs& inputs, const std::string& kind, Area grate) {
  const data::KindlingRow& usual = data::kindling(kind);
  if (!fuel.started_on) inputs.note({"fuel.started_on", usual.on, "", "how " + kind + " is usually lit", usual.basis});
  const data::KindlingRow& row = fuel.started_on ? data::kindling(kind, *fuel.started_on) : usual;
  return inputs.otherwise(
      fuel.catches_in, fire::kindling_time(row, grate),
      because(fmt::format("{} on {}, on a grate of this size; longer with less than 0.1 kg/m2s of air through it", kind,
                          row.on),
              row.basis));
}
double monoxide_of(const description::Build& build, Inputs& inputs, double lumps) {
  const double leak = inputs.usual(build.engine.leakage.past_bed);
  return inputs.otherwise(
      build.fuel.carbon_monoxide_share, fire::monoxide_share({.lumps = lumps, .leak = leak}),
      because(fmt::format("a fire {} lumps deep with {} of the air over it, much air or little", format_number(lumps),
                          percent(leak, 2)),
              data::Basis{data::Standing::secondary,
                          "thin beds, charcoal stoves and deep beds of char as measured, straight between"}));
}
}  // namespace

fire::Fire fire_of(const description::Build& build, Inputs& inputs, Area grate) {
  const description::part::Fuel& fuel = build.fuel;
  const std::string kind = inputs.usual(fuel.kind);
  const data::FuelRow& row = data::fuel(kind);
  const data::GlowingBed& glow = data::glowing_bed();
  const AsFired fired = as_fired(fuel, inputs, row.analysis);
  const Length lump = inputs.otherwise(fuel.lump, row.lump, because("usual for this fuel", row.basis));
  const Length depth = inputs.usual(fuel.bed);
  const Mass heap = fire::bed_mass(grate, depth, row.bulk_density.value);
  return fire::Fire(
      {.fuel = fired.analysis,
       .net_heat = inputs.otherwise(fuel.heating_value, exactly(fired.rich * fire::net_heat(fired.analysis)),
                                    because("from the analysis of this fuel", row.analysis.basis)),
       .ash_left = fired.analysis.ash,
       .depth = {.bed = depth,
                 .burn = inputs.otherwise(
                     fuel.burn_depth, {lump, 0.5 * lump, 2.0 * lump},
                     because("one lump", data::Basis{data::Standing::secondary, "film diffusion and measured beds"}))},
       .monoxide_loss = monoxide_of(build, inputs, static_cast<double>(depth / lump)),
       .bed = inputs.otherwise(fuel.bed_mass,
                               {heap, fire::bed_mass(grate, depth, row.bulk_density.low),
                                fire::bed_mass(grate, depth, row.bulk_density.high)},
                               because("grate, depth and heap density of this fuel", row.basis)),
       .bed_capacity = glow.specific_heat.value,
       .glow = inputs.taken("gas.glow", glow.temperature, because("glow of the bed", glow.basis)),
       .bed_exit = inputs.constant<Temperature>("gas.bed_exit"),
       .kindling = {.lit_at_start = inputs.usual(fuel.lit_at_start),
                    .duration = kindling_of(fuel, inputs, kind, grate)},
       .air = inputs.usual(build.place.air)});
}

boiler::Boiler boiler_of(const description::Build& build, Inputs& inputs, Area grate) {
  const description::part::Engine& engine = build.engine;
  const Volume water = inputs.known(engine.boiler.water).value_or(1.0 * litre);
  const double share =
      engine.firebox.heating_surface ? 0.0 : inputs.constant<double>("engine.firebox.surface_over_grate");
  const Area surface = inputs.known(engine.firebox.heating_surface).value_or(share * grate);
  const auto bore = inputs.known(engine.tubes.bore), length = inputs.known(engine.tubes.length);
  return {.water = water * (1000.0 * kg_per_m3),
          .metal = metal_of(build, inputs, water),
          .firebox = {.surface = surface,
                      .emissivity = inputs.usual(engine.firebox.emissivity),
                      .convection = inputs.usual(engine.firebox.convection)},
          .tubes = {.count = engine.tubes.count.value.value_or(1), .bore = bore.value(), .length = length.value()},
          .outside = loss_of(build, inputs, water),
          .heat_factor = inputs.constant<double>("tuned.heat")};
}

std::optional<GaugePressure> take_over(const description::Build& build, Inputs& inputs) {
  if (auto own = inputs.known(build.engine.boiler.own_blower_from)) return own;
  return inputs.known(build.engine.boiler.working);
}
}  // namespace lumwright::model
