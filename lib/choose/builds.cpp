#include "choose/detail/parts.hpp"
#include "data/cells.hpp"
#include "data/choosing.hpp"
#include "description/stock_name.hpp"
#include "description/written.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_fit.hpp"
#include "workshop/stock.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <numeric>
#include <tuple>

namespace lumwright::choose {
namespace {
// Two fans as one of a description: the pair's curve, twice the current and the mass.
description::part::FanPart pair_part(const description::part::FanPart& one, draught::FanPairing pairing) {
  if (pairing == draught::FanPairing::one) return one;
  description::Build build;
  build.fan = one;
  model::Inputs inputs = quiet(nullptr);
  const model::Outcome<model::SolvedFan> fan = model::solve_fan(build, inputs);
  if (!fan) return one;  // the unit fails in the same way
  const draught::FanCurve curve = draught::paired(fan->curve, pairing);
  description::part::FanPart two = one;
  two.curve.points.clear();
  for (const draught::FanPoint& p : curve.points()) two.curve.points.push_back({p.flow, p.pressure});
  if (two.curve.x_unit.empty()) two.curve.x_unit = "l/min";
  if (two.curve.y_unit.empty()) two.curve.y_unit = "Pa";
  if (fan->current) {
    if (two.rated.current.unit.empty()) two.rated.current.unit = "A";
    const Band<Current> each = one.rated.current ? *one.rated.current.band : exactly(*fan->current);
    two.rated.current.band = Band<Current>{2.0 * each.value, 2.0 * each.low, 2.0 * each.high};
  }
  if (two.mass)
    two.mass.band = Band<Mass>{2.0 * one.mass.band->value, 2.0 * one.mass.band->low, 2.0 * one.mass.band->high};
  return two;
}

std::string fan_words(const std::string& name, draught::FanPairing pairing) {
  if (pairing == draught::FanPairing::one) return name;
  return fmt::format("two {} {}", name, pairing == draught::FanPairing::series ? "in series" : "side by side");
}
std::optional<Mass> fan_mass(const description::part::FanPart& fan, draught::FanPairing pairing) {
  if (fan.mass) return *fan.mass;  // of both already
  if (!fan.frame || !fan.thickness) return std::nullopt;
  const Mass one = data::choosing_rules().fan_block * *fan.frame * *fan.frame * *fan.thickness;
  return pairing == draught::FanPairing::one ? one : 2.0 * one;
}
Mass pack_mass(const description::part::BinPack& pack) {
  if (pack.mass) return *pack.mass;
  const double cells = pack.series.value.value_or(1) * pack.parallel.value.value_or(1);
  return cells * data::cell(*pack.cell).mass;
}
Mass step_up_mass(const description::part::BinStepUp& step_up) {
  if (step_up.direct) return 0.0 * g;
  return step_up.mass ? *step_up.mass : data::choosing_rules().step_up;
}

Unit unit_of(const description::Bin& bin, const Stock& stock, Combination at) {
  const description::part::BinFan& fan = bin.fans[at.fan];
  const description::part::BinPack& pack = bin.packs[at.pack];
  const description::part::BinStepUp& step_up = bin.step_ups[at.step_up];
  std::string how = step_up.direct ? "no step-up" : *step_up.name;
  if (at.lowered)
    how +=
        fmt::format(", turned down to {}", description::written(AnyQuantity(*step_up.lower_to), step_up.lower_to.unit));
  std::optional<Mass> mass = fan_mass(stock.fan(at.fan, at.pairing), at.pairing);
  if (mass) *mass += pack_mass(pack) + step_up_mass(step_up);
  return {.fan = at.fan,
          .pack = at.pack,
          .step_up = at.step_up,
          .pairing = at.pairing,
          .lowered = at.lowered,
          .fan_name = fan_words(*fan.name, at.pairing),
          .pack_name = *pack.name,
          .step_up_name = std::move(how),
          .mass = mass};
}

void add_units(Stock& stock, std::size_t fan, draught::FanPairing pairing) {
  const description::Bin& bin = stock.bin;
  for (std::size_t pack = 0; pack < bin.packs.size(); ++pack)
    for (std::size_t step_up = 0; step_up < bin.step_ups.size(); ++step_up)
      for (const bool lowered : {false, true}) {
        if (lowered && !bin.step_ups[step_up].lower_to) continue;
        stock.units.push_back(unit_of(bin, stock, {0, fan, pack, step_up, 0, pairing, lowered}));
      }
}

description::Build base_of(const description::part::BinEngine& engine, const description::Bin& bin) {
  description::Build build;
  build.file = bin.file;
  build.name = engine.name;
  build.place = engine.place;
  build.engine = engine.engine;
  build.fuel = engine.fuel;
  build.adapter = engine.adapter;
  build.supply.control = engine.supply.control;
  build.supply.leads = engine.supply.leads;
  build.supply.fuse = engine.supply.fuse;
  build.supply.stop_at = engine.supply.stop_at;
  build.want = engine.want;
  return build;
}

// What shops stock and fits this chimney cold and hot as it is, the nearest fit first.
void add_stock_tubes(Stall& stall, const description::part::BinEngine& engine, const model::Tuning* tuning) {
  if (!engine.engine.chimney.bore) return;
  description::Build build = stall.base;
  build.adapter.tube.outside = engine.engine.chimney.bore;  // any: only what lies around it counts
  build.adapter.tube.outside.band = exactly(0.9 * *engine.engine.chimney.bore);
  build.adapter.tube.wall = {};
  model::Inputs inputs = quiet(tuning);
  const model::Outcome<model::SolvedFit> fit = model::solve_fit(build, inputs, {});
  if (!fit) return;
  for (const workshop::StockTube& found : workshop::stock_tubes(fit->input, data::tubes().size())) {
    if (found.fit.skim.on_diameter > 0.0 * mm || stall.tubes.size() == description::most_stock_tubes) continue;
    description::part::AdapterTube tube = engine.adapter.tube;
    tube.outside = {found.outside, description::stock_unit(found.tube), true, {}};
    tube.wall = {exactly(found.tube.wall), description::stock_unit(found.tube), false, {}};
    if (!tube.material) tube.material.value = "brass";
    stall.tubes.push_back(std::move(tube));
    stall.tube_names.push_back(description::stock_tube(found.tube, UnitSystem::as_written));
  }
}

template <class Item>
std::vector<std::size_t> by_name(const std::vector<Item>& items) {
  std::vector<std::size_t> order(items.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return *items[a].name < *items[b].name; });
  return order;
}
}  // namespace

model::Inputs quiet(const model::Tuning* tuning) {
  return model::Inputs([](std::string_view, const model::Input& input) { return input.value.si; }, tuning);
}

Stock stock_of(const description::Bin& bin, const model::Tuning* tuning) {
  Stock stock{.bin = bin, .tuning = tuning, .units = {}, .fans = {}, .time_spread = {}};
  for (const description::part::BinFan& fan : bin.fans) {
    const bool pairs = description::pairs_of(bin, fan);
    for (const draught::FanPairing pairing :
         {draught::FanPairing::one, draught::FanPairing::series, draught::FanPairing::side_by_side}) {
      stock.fans.push_back(pairs ? pair_part(fan, pairing) : description::part::FanPart(fan));
      const bool known = !pairs && pairing != draught::FanPairing::one;  // the same fan once more
      stock.time_spread.push_back(known ? stock.time_spread.back() : time_spread(stock.fans.back(), tuning));
    }
  }
  for (std::size_t fan = 0; fan < bin.fans.size(); ++fan) {
    add_units(stock, fan, draught::FanPairing::one);
    if (!description::pairs_of(bin, bin.fans[fan])) continue;
    add_units(stock, fan, draught::FanPairing::series);
    add_units(stock, fan, draught::FanPairing::side_by_side);
  }
  const auto key = [&](const Unit& u) {
    return std::tie(*bin.fans[u.fan].name, u.pairing, u.pack_name, *bin.step_ups[u.step_up].name, u.lowered);
  };
  std::sort(stock.units.begin(), stock.units.end(), [&](const Unit& a, const Unit& b) { return key(a) < key(b); });
  return stock;
}

std::vector<Stall> stalls_of(const description::Bin& bin, const model::Tuning* tuning) {
  std::vector<Stall> stalls;
  for (const std::size_t i : by_name(bin.engines)) {
    const description::part::BinEngine& engine = bin.engines[i];
    model::Inputs inputs = quiet(tuning);
    description::Build base = base_of(engine, bin);
    const Duration within = inputs.usual(base.want.steam_within);
    Stall stall{.index = i,
                .base = std::move(base),
                .tubes = {},
                .tube_names = {},
                .within = within,
                .wanted = engine.want.light_ups_per_charge ? *engine.want.light_ups_per_charge : 1.0,
                .own_box = engine.own_box,
                .own_fuse = engine.own_fuse,
                .own_wire = engine.own_wire};
    if (bin.tubes_from_stock) add_stock_tubes(stall, engine, tuning);
    if (!bin.tubes_from_stock)
      for (const std::size_t t : by_name(bin.tubes)) {
        stall.tubes.push_back(description::tube_for(bin.tubes[t], engine));
        stall.tube_names.push_back(*bin.tubes[t].name);
      }
    stalls.push_back(std::move(stall));
  }
  return stalls;
}

namespace {
void put_sizes(description::Build& build, const Sized& sized) {
  if (sized.box) build.adapter.box.diameter = {exactly(*sized.box), "mm", false, {}};
  if (sized.fuse) build.supply.fuse = {exactly(*sized.fuse), "A", false, {}};
  if (sized.wire) build.supply.leads.section = {exactly(*sized.wire), "mm2", false, {}};
}
}  // namespace

description::Build with_unit(const Stall& stall, const Stock& stock, std::size_t unit) {
  const Unit& u = stock.units[unit];
  const description::part::BinPack& pack = stock.bin.packs[u.pack];
  description::Build build = stall.base;
  build.fan = stock.fan(u.fan, u.pairing);
  build.supply.pack = pack;
  if (pack.stop_at) build.supply.stop_at = pack.stop_at;
  if (unit < stall.sized.size()) put_sizes(build, stall.sized[unit]);
  const description::part::BinStepUp& step_up = stock.bin.step_ups[u.step_up];
  if (step_up.direct) return build;
  build.supply.step_up = step_up;
  if (!step_up.module && !step_up.output && !step_up.efficiency) build.supply.step_up.module.value = "small 1.2 MHz";
  return build;
}

description::Build build_of(const description::Bin& bin, const Combination& c) {
  const Stock stock = stock_of(bin, nullptr);
  for (Stall& stall : stalls_of(bin, nullptr)) {
    if (stall.index != c.engine) continue;
    for (std::size_t unit = 0; unit < stock.units.size(); ++unit) {
      const Unit& u = stock.units[unit];
      if (u.fan != c.fan || u.pack != c.pack || u.step_up != c.step_up || u.pairing != c.pairing) continue;
      const Sized sized = size_for(stall, stock, unit);
      stall.sized.resize(stock.units.size());
      stall.sized[unit] = sized;
      description::Build build = with_unit(stall, stock, unit);
      build.adapter.tube = stall.tubes.at(c.tube);
      return build;
    }
  }
  throw ModelError("the bin has no such combination");
}
}  // namespace lumwright::choose
