#include "prove/detail/suppose.hpp"
#include "draught/orifice.hpp"
#include "matter/air.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_supply.hpp"
#include "numeric/root.hpp"
#include <stdexcept>

namespace lumwright::prove {
namespace {
int cells_in(const model::SolvedSupply& supply) {
  return supply.pack_input.series * supply.pack_input.cell.cells_inside;
}
/// The scale must be there.
AnyQuantity scale_named(std::string_view of, const Scales& scales) {
  if (of == "opening for all the air") return scales.opening.value();
  if (of == "gap for all the air") return scales.gap.value();
  if (of == "resistance of the load") return scales.load.value();
  if (of == "resistance of a cell") return scales.cell_resistance.value();
  if (of == "voltage of a cell") return scales.cell.value();
  if (of == "one" || of == "value") return 1.0;
  throw std::logic_error("causes.yaml: a share of `" + std::string(of) + "`, which nothing gives");
}
void add_draught(const model::SolvedDraught& d, Scales& scales) {
  const draught::PathFlow& cold = d.cold->flow;
  const MassFlow each = draught::orifice_flow(draught::discharge_coefficient("sharp hole").value, 1.0 * m2,
                                              cold.fan_density, cold.box_suction);
  scales.opening = in(cold.fan, each) * m2;
  if (!d.cold_path.annulus) return;
  const draught::Annulus& planned = *d.cold_path.annulus;
  const auto short_of = [&](double wider) {
    draught::Annulus wide = planned;
    wide.radial_gap += 0.5 * wider * m;
    wide.mean_diameter += 0.5 * wider * m;
    return in(draught::annulus_flow(wide, cold.smokebox_suction, cold.fan_density,
                                    matter::air_viscosity(d.ambient.temperature)) -
                  cold.engine,
              g_per_s);
  };
  const double widest = in(planned.mean_diameter, m);
  if (short_of(0.0) < 0.0 && short_of(widest) > 0.0)
    scales.gap = numeric::bracketed_root(short_of, 0.0, widest, "width of the gap", 30) * m;
}
/// Which part of the model a cause of that key is about.
bool is_electric(std::string_view key) {
  return key.starts_with("supply.") || key == "fault.contact" || key.starts_with("fault.cell");
}
}  // namespace

Resistance cells_alone(const model::SolvedSupply& supply) {
  return supply.pack_input.measured ? supply.pack.inside : supply.pack.inside - supply.pack_input.contacts;
}
Scales scales_of(const model::Solved& planned) {
  Scales scales;
  if (planned.draught && planned.draught->cold && planned.draught->path.adapter) add_draught(*planned.draught, scales);
  if (!planned.supply) return scales;
  const model::SolvedSupply& supply = *planned.supply;
  scales.load = supply.run.start.open_circuit / supply.run.start.current;
  const double cells = cells_in(supply);
  scales.cell = supply.run.start.open_circuit / cells;
  scales.cell_resistance = cells_alone(supply) / cells;
  return scales;
}

std::string not_asked(const data::CauseRow& cause, const model::Solved& planned) {
  const bool draught = planned.draught && planned.draught->cold && planned.draught->path.adapter;
  if (!planned.fan) return "the description has no fan";
  if (is_electric(cause.moves.front().key) || !cause.fan.empty()) {
    if (!planned.supply) return "the description has no pack";
  } else if (!draught) {
    return "the draught is not known";
  }
  const auto* supply = planned.supply ? &*planned.supply : nullptr;
  if (cause.needs == "step-up" && !supply->feed.step_up) return "there is no step-up";
  if (cause.needs == "cells" && supply->pack_input.cell.bank) return "a power bank hides its cells";
  if (cause.needs == "several cells" && (supply->pack_input.cell.bank || cells_in(*supply) < 2))
    return "there is one cell, or none that can be got at";
  if (cause.needs == "axial fan" && planned.fan->label.kind != data::FanKind::axial)
    return "a blower draws whichever way up it sits";
  if (cause.needs == "bore of the chimney" && !planned.draught->path.annulus)
    return "the bore of the chimney is not known";
  if (cause.needs == "bore of the chimney" && !scales_of(planned).gap)
    return "no gap of this chimney lets in as much as the engine draws";
  return "";
}

AnyQuantity size_of(const data::CauseMove& move, double u, const Scales& scales) {
  AnyQuantity size = move.adds ? scale_named(move.of, scales) : AnyQuantity(1.0);
  size.si *= move.at(u);
  return size;
}

Supposed::Supposed(const data::CauseRow& cause, const std::vector<double>& places, const Scales& scales)
    : cause_(&cause) {
  for (std::size_t i = 0; i < cause.moves.size(); ++i) {
    const data::CauseMove& move = cause.moves[i];
    const double size = move.at(places.at(i));
    if (!move.adds)
      moved_.push_back({move.key, size, 0.0});
    else if (move.of == "value")
      moved_.push_back({move.key, 1.0 + size, 0.0});
    else
      moved_.push_back({move.key, 1.0, size * scale_named(move.of, scales).si});
  }
}
model::Draw Supposed::on(model::Draw base) const {
  return [base = std::move(base), moved = moved_](std::string_view key, const model::Input& input) {
    const double drawn = base(key, input);
    for (const Moved& one : moved)
      if (one.key == key) return drawn * one.times + one.plus;
    return drawn;
  };
}
double Supposed::added(std::string_view key) const {
  for (const Moved& one : moved_)
    if (one.key == key) return one.plus;
  return 0.0;
}
}  // namespace lumwright::prove
