#include "choose/detail/parts.hpp"
#include "data/fuses.hpp"
#include "data/wires.hpp"
#include "description/written.hpp"
#include "model/fan_unit.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright::choose {
namespace {
std::optional<plan::Verdict> verdict_of(std::string_view id, const model::Solved& solved) {
  for (const plan::Check& check : plan::all_checks()) {
    if (check.id != id) continue;
    const auto finding = check.judge(solved);
    return finding ? std::optional(finding->verdict) : std::nullopt;
  }
  throw std::logic_error("no check is called " + std::string(id));
}
bool settled(std::optional<plan::Verdict> verdict) {  // passes, does not arise, or cannot be helped by a size
  return !verdict || *verdict == plan::Verdict::pass || *verdict == plan::Verdict::unknown;
}

plan::Verdict lid_verdict(const description::Build& build, const Stock& stock) {
  model::Solved solved{.build = build, .inputs = quiet(stock.tuning)};
  solved.unit = model::solve_unit(build, solved.inputs);
  const auto verdict = verdict_of("make.lid", solved);
  return settled(verdict) ? plan::Verdict::pass : *verdict;
}
// The narrowest box, in steps of a rule's marks, whose lid takes the fan.
void size_box(Sized& sized, const Stall& stall, description::Build& build, const Stock& stock) {
  if (stall.own_box || !build.fan.frame) return;
  if (build.adapter.box.diameter && lid_verdict(build, stock) == plan::Verdict::pass) return;
  const double frame = in(*build.fan.frame, unit::mm);
  constexpr double step = 2.0, widest = 2.0;
  for (double across = step * std::ceil(frame / step); across <= widest * frame; across += step) {
    build.adapter.box.diameter = {exactly(across * unit::mm), "mm", false, {}};
    if (lid_verdict(build, stock) != plan::Verdict::pass) continue;
    sized.box = across * unit::mm;
    return;
  }
  build.adapter.box.diameter = stall.base.adapter.box.diameter;
}

/// Fan and supply of a build as it stands.
model::Solved driven(const description::Build& build, const Stock& stock) {
  model::Solved solved{.build = build, .inputs = quiet(stock.tuning)};
  solved.fan = model::solve_fan(build, solved.inputs);
  solved.supply = model::solve_supply(build, solved.inputs, solved.fan);
  return solved;
}
bool fuse_passes(const description::Build& build, const Stock& stock) {
  const model::Solved solved = driven(build, stock);
  return solved.supply && settled(verdict_of("power.fuse", solved));
}
void size_fuse(Sized& sized, const Stall& stall, description::Build& build, const Stock& stock) {
  if (stall.own_fuse || (build.supply.fuse && fuse_passes(build, stock))) return;
  description::Build bare = build;
  bare.supply.fuse = {};
  const model::Solved solved = driven(bare, stock);
  if (!solved.supply || solved.supply->pack_input.cell.bank) return;
  for (const data::FuseRow& row : data::fuses()) {
    if (row.rating < solved.supply->run.most_current) continue;
    bare.supply.fuse = {exactly(row.rating), "A", false, {}};
    if (!fuse_passes(bare, stock)) continue;
    build.supply.fuse = bare.supply.fuse;
    sized.fuse = row.rating;
    return;
  }
}
bool wire_passes(const description::Build& build, const Stock& stock) {
  const description::part::LeadsPart& leads = build.supply.leads;
  if (!leads.section) return false;
  const model::Solved solved = driven(build, stock);
  return !solved.supply ||
         (settled(verdict_of("power.fuse_wire", solved)) && settled(verdict_of("power.leads", solved)));
}
void size_wire(Sized& sized, const Stall& stall, description::Build& build, const Stock& stock) {
  if (stall.own_wire || (!build.supply.leads.section && !build.supply.leads.length)) return;
  if (wire_passes(build, stock)) return;
  const description::Given<Area> before = build.supply.leads.section;
  std::vector<Area> sections;
  for (const data::WireRow& row : data::wires())
    if (!before || row.section > *before) sections.push_back(row.section);
  std::sort(sections.begin(), sections.end());
  for (const Area& section : sections) {
    build.supply.leads.section = {exactly(section), "mm2", false, {}};
    if (!wire_passes(build, stock)) continue;
    sized.wire = section;
    return;
  }
  build.supply.leads.section = before;
}
}  // namespace

Sized size_for(const Stall& stall, const Stock& stock, std::size_t unit) {
  Sized sized;
  description::Build build = with_unit(stall, stock, unit);
  try {
    size_box(sized, stall, build, stock);
    size_fuse(sized, stall, build, stock);
    size_wire(sized, stall, build, stock);
    if (sized.wire && !stall.own_fuse && !fuse_passes(build, stock)) size_fuse(sized, stall, build, stock);
  } catch (const ModelError&) {
    return sized;  // what cannot be solved is told by its own loss
  }
  return sized;
}

std::string words(const Sized& sized) {
  std::vector<std::string> parts;
  if (sized.box) parts.push_back("a box of " + description::written(AnyQuantity(*sized.box), "mm"));
  if (sized.fuse) parts.push_back("a fuse of " + description::written(AnyQuantity(*sized.fuse), "A"));
  if (sized.wire) parts.push_back("wires of " + description::written(AnyQuantity(*sized.wire), "mm2"));
  return fmt::format("{}", fmt::join(parts, ", "));
}
}  // namespace lumwright::choose
