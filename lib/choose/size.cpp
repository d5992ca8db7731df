#include "choose/parts.hpp"
#include "data/fuses.hpp"
#include "data/wires.hpp"
#include "description/written.hpp"
#include "plan/check.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright {
namespace {
std::optional<Verdict> verdict_of(std::string_view id, const Solved& solved) {
  for (const Check& check : all_checks()) {
    if (check.id != id) continue;
    const auto finding = check.judge(solved);
    return finding ? std::optional(finding->verdict) : std::nullopt;
  }
  throw std::logic_error("no check is called " + std::string(id));
}
bool settled(std::optional<Verdict> verdict) {  // passes, does not arise, or cannot be helped by a size
  return !verdict || *verdict == Verdict::pass || *verdict == Verdict::unknown;
}

Verdict lid_verdict(const Build& build, const Stock& stock) {
  Solved solved{.build = build, .inputs = quiet(stock.tuning)};
  solved.unit = solve_unit(build, solved.inputs);
  const auto verdict = verdict_of("make.lid", solved);
  return settled(verdict) ? Verdict::pass : *verdict;
}
// The narrowest box, in steps of a rule's marks, whose lid takes the fan.
void size_box(Sized& sized, const Stall& stall, Build& build, const Stock& stock) {
  if (stall.own_box || !build.fan.frame) return;
  if (build.adapter.box.diameter && lid_verdict(build, stock) == Verdict::pass) return;
  const double frame = in(*build.fan.frame, unit::mm);
  constexpr double step = 2.0, widest = 2.0;
  for (double across = step * std::ceil(frame / step); across <= widest * frame; across += step) {
    build.adapter.box.diameter = {exactly(across * unit::mm), "mm", false, {}};
    if (lid_verdict(build, stock) != Verdict::pass) continue;
    sized.box = across * unit::mm;
    return;
  }
  build.adapter.box.diameter = stall.base.adapter.box.diameter;
}

/// Fan and supply of a build as it stands.
Solved driven(const Build& build, const Stock& stock) {
  Solved solved{.build = build, .inputs = quiet(stock.tuning)};
  solved.fan = solve_fan(build, solved.inputs);
  solved.supply = solve_supply(build, solved.inputs, solved.fan);
  return solved;
}
bool fuse_passes(const Build& build, const Stock& stock) {
  const Solved solved = driven(build, stock);
  return solved.supply && settled(verdict_of("power.fuse", solved));
}
void size_fuse(Sized& sized, const Stall& stall, Build& build, const Stock& stock) {
  if (stall.own_fuse || (build.supply.fuse && fuse_passes(build, stock))) return;
  Build bare = build;
  bare.supply.fuse = {};
  const Solved solved = driven(bare, stock);
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
bool wire_passes(const Build& build, const Stock& stock) {
  const part::LeadsPart& leads = build.supply.leads;
  if (!leads.section) return false;
  const Solved solved = driven(build, stock);
  return !solved.supply ||
         (settled(verdict_of("power.fuse_wire", solved)) && settled(verdict_of("power.leads", solved)));
}
void size_wire(Sized& sized, const Stall& stall, Build& build, const Stock& stock) {
  if (stall.own_wire || (!build.supply.leads.section && !build.supply.leads.length)) return;
  if (wire_passes(build, stock)) return;
  const Given<Area> before = build.supply.leads.section;
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
  Build build = with_unit(stall, stock, unit);
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
  if (sized.box) parts.push_back("a box of " + written(AnyQuantity(*sized.box), "mm"));
  if (sized.fuse) parts.push_back("a fuse of " + written(AnyQuantity(*sized.fuse), "A"));
  if (sized.wire) parts.push_back("wires of " + written(AnyQuantity(*sized.wire), "mm2"));
  return fmt::format("{}", fmt::join(parts, ", "));
}
}  // namespace lumwright
