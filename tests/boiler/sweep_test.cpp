// Engines thrown by chance, within what people build and far outside it: a result with every number in order, or a
// refusal.
#include "../draught/random_path.hpp"
#include "boiler/raise.hpp"
#include "boiler/stores.hpp"
#include "example.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>
#include <map>
#include <string>

using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::fire;
using namespace lumwright::power;
using namespace lumwright::boiler;

namespace {
FanDraught random_draught(Dice& dice) {
  const FanCurve curve = random_curve(dice);
  FanDraught draught{
      .fan = [curve](Rotation n) { return running(curve, n); },
      .motor =
          motor_law({.rated_voltage = 12.0 * V, .rated_speed = 4000.0 * rpm, .starts_at = 5.0 * V, .speed_at = {}}),
      .voltage = {}};
  if (dice.chance(0.3)) draught.voltage = dice.between(3.0, 14.0) * V;
  return draught;
}
Battery random_battery(Dice& dice) {
  static const char* cells[] = {"NiMH AA", "Li-ion 18650", "NiMH AAA"};
  const data::CellRow* cell = nullptr;
  for (const data::CellRow& row : data::cells())
    if (!row.bank && row.id == cells[dice.whole(0, 2)]) cell = &row;
  if (!cell) cell = &data::cell("NiMH AA");
  const PackInput pack{.cell = *cell,
                       .series = dice.whole(1, 8),
                       .parallel = dice.whole(1, 2),
                       .capacity = dice.decade(50.0, 3000.0) * mAh,
                       .capacity_factor = dice.between(0.5, 1.0),
                       .resistance_factor = dice.between(1.0, 4.0),
                       .charged = dice.between(0.2, 1.0),
                       .rate_exponent = dice.between(1.0, 1.2),
                       .temperature = degC(dice.between(0.0, 40.0)),
                       .measured = {},
                       .contacts = dice.decade(10.0, 300.0) * mohm,
                       .outside = dice.decade(10.0, 300.0) * mohm,
                       .cell_resistance = {},
                       .weakest = {}};
  FanSupply feed{.fan = {.rated_voltage = 12.0 * V,
                         .rated_current = dice.decade(0.03, 1.0) * A,
                         .current_exponent = dice.between(1.2, 2.0)},
                 .control = uncontrolled(),
                 .step_up = {},
                 .motor = data::motor_shares(),
                 .regulator_dropout = 0.5 * V};
  if (dice.chance(0.6)) feed.step_up = step_up_of(data::step_up("small 1.2 MHz"), dice.between(8.0, 14.0) * V, 2.5 * V);
  if (dice.chance(0.2))
    feed.control = {Control::Kind::series_regulator, 1.0, dice.between(4.0, 12.0) * V};
  else if (dice.chance(0.2))
    feed.control = {Control::Kind::chopped_supply, dice.between(0.3, 1.0), 0.0 * V};
  std::optional<Voltage> stop;
  if (dice.chance(0.7)) stop = dice.between(1.0, 8.0) * V;
  return {.pack = make_pack(pack), .feed = feed, .stop_at = stop};
}

RaiseInput random_raise(Dice& dice) {
  const GasPath path = with_walls(random_path(dice, dice.chance(0.5)));
  const auto& fuels = data::fuels();
  const data::FuelAnalysis& fuel =
      fuels[static_cast<std::size_t>(dice.whole(0, static_cast<int>(fuels.size()) - 1))].analysis;
  const Ambient ambient{.temperature = degC(dice.between(-10.0, 40.0)), .pressure = dice.between(800.0, 1050.0) * hPa};
  const double litres = dice.decade(0.05, 6.0);
  return {.fire = Fire({.fuel = fuel,
                        .net_heat = net_heat(fuel),
                        .ash_left = dice.between(0.0, 0.2),
                        .depth = {.bed = path.bed->depth, .burn = dice.decade(1.0, 30.0) * mm},
                        .monoxide_loss = dice.between(0.0, 0.4),
                        .bed = path.bed->grate * path.bed->depth * (dice.between(100.0, 800.0) * kg_per_m3),
                        .bed_capacity = 1400.0 * J_per_kg_K,
                        .glow = kelvin(dice.between(900.0, 1400.0)),
                        .bed_exit = kelvin(dice.between(1000.0, 1900.0)),
                        .kindling = {.lit_at_start = dice.chance(0.1) ? 1.0 : dice.share(),
                                     .duration = dice.chance(0.1) ? 0.0 * s : dice.decade(10.0, 1000.0) * s},
                        .air = ambient.temperature}),
          .boiler = {.water = litres * kg,
                     .metal = litres * dice.between(500.0, 3000.0) * J / K,
                     .firebox = {.surface = dice.decade(20.0, 600.0) * cm2,
                                 .emissivity = dice.share(),
                                 .convection = dice.between(0.0, 50.0) * W_per_m2_K},
                     .tubes = {.count = path.tubes->count,
                               .bore = path.tubes->each.bore,
                               .length = path.tubes->each.length},
                     .outside = dice.chance(0.5) ? OutsideLoss(dice.decade(0.05, 3.0) * W_per_K)
                                                 : OutsideLoss(Barrel{.diameter = 60.0 * mm,
                                                                      .surface = dice.decade(0.01, 0.2) * m2,
                                                                      .emissivity = dice.share(),
                                                                      .bare_share = dice.share()}),
                     .heat_factor = dice.chance(0.3) ? dice.between(0.5, 1.4) : 1.0},
          .ambient = ambient,
          .water = degC(dice.between(0.5, 60.0)),
          .draught = random_draught(dice),
          .path = GasNetwork(path, ambient),
          .battery = dice.chance(0.9) ? std::optional(random_battery(dice)) : std::nullopt,
          .own_blower = GaugePressure{dice.between(0.3, 3.0) * bar},
          .working = GaugePressure{dice.between(1.0, 8.0) * bar},
          .purge = dice.chance(0.5) ? litres * dice.between(0.0, 30.0) * g : 0.0 * g,
          .inside = dice.chance(0.5) ? std::optional(litres * dice.between(1.3, 2.0) * litre) : std::nullopt,
          .fan_gas_limit = degC(dice.between(50.0, 200.0)),
          .give_up = dice.decade(60.0, 7200.0) * s,
          .points_per_step = dice.whole(1, 4)};
}

bool in_order(const RaiseInstant& i) {
  bool fine = is_finite(i.time) && is_finite(i.water) && is_finite(i.gauge.above_barometer) && is_finite(i.air) &&
              is_finite(i.burning.to_gas) && is_finite(i.heat.absorbed) && is_finite(i.heat.stack) &&
              is_finite(i.heat.outside) && is_finite(i.heat.tubes.exit) && std::isfinite(i.burning.air_used) &&
              i.burning.air_used <= 1.0 + 1e-9;
  if (i.path)
    fine = fine && is_finite(i.path->fan_gas) && is_finite(i.path->fan_suction) && i.path->fan > 0.0 * kg_per_s;
  if (i.supply)
    fine = fine && is_finite(i.supply->pack) && is_finite(i.supply->current) && i.supply->charge_left >= -1e-9;
  return fine;
}
}  // namespace

TEST_CASE("a raise by chance gives numbers in order or a refusal") {
  Dice dice(20240611);
  std::map<std::string, int> ends;
  int results = 0;
  for (int i = 0; i < 600; ++i) {
    CAPTURE(i);
    try {
      const RaiseInput input = random_raise(dice);
      const Raise run = raise(input);
      ++results;
      ++ends[run.end == RaiseEnd::pressure ? "pressure" : run.end == RaiseEnd::pack_stopped ? "pack" : "time"];
      for (const RaiseInstant& at : run.series) {
        CHECK(in_order(at));
        CHECK(std::abs(in(at.burning.to_gas - at.heat.absorbed - at.heat.stack - at.heat.astray, W)) <
              1e-9 + 1e-6 * in(at.burning.chemical, W));
      }
      const RaiseAccount& a = run.account;
      CHECK(std::abs(in(a.chemical - a.carbon_monoxide - a.bed - a.absorbed - a.stack - a.astray, J)) <
            1e-6 + 1e-9 * in(a.chemical, J));
      const RaiseInstant& last = run.series.back();
      const Mass left = input.boiler.water - (run.find(RaiseEventKind::purged) ? input.purge : 0.0 * g);
      if (!run.find(RaiseEventKind::boils)) {
        const Energy held = left * heat_to(input.water, last.water) + input.boiler.metal * (last.water - input.water);
        CHECK(std::abs(in(a.absorbed - a.outside - held, J)) <
              5e-3 * std::abs(in(held, J)) + 1e-3 * in(a.chemical, J) + 1.0);
      }
      CHECK(last.time <= input.give_up * (1.0 + 1e-12));
    } catch (const ModelError& e) {
      CHECK(std::string(e.what()).size() > 10);
    }
  }
  CHECK(results > 250);
  CHECK(ends["pressure"] > 60);
  CHECK(ends["pack"] > 10);
  CHECK(ends["time"] > 10);
}
