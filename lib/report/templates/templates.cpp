#include "report/templates/templates.hpp"
#include "description/page_units.hpp"
#include "description/stock_name.hpp"
#include "quantity/units.hpp"
#include "report/templates/parts.hpp"
#include <fmt/format.h>

namespace lumwright::report {
namespace {
workshop::PlanePoint from_corner(workshop::PlanePoint p, Length half) { return {p.x + half, p.y + half}; }
void add_side(std::vector<HolePlace>& out, const model::MadeBox& box) {
  const workshop::PlanePoint half =
      box.square ? workshop::PlanePoint{0.5 * box.net->across.total, 0.5 * box.net->along.total}
                 : workshop::PlanePoint{0.5 * box.round->strip_length, 0.5 * box.round->strip_width};
  int bleeds = 0;
  for (const templates_of::SideHole& hole : templates_of::side_holes(box)) {
    const bool numbered = hole.what == "bleed" && box.bleed->count > 1;
    out.push_back({hole.part,
                   numbered ? fmt::format("{} {}", hole.what, ++bleeds) : hole.what,
                   {hole.at.x, hole.at.y},
                   {hole.at.x + half.x, hole.at.y + half.y},
                   hole.diameter});
  }
}
void add_all(std::vector<HolePlace>& out, const std::string& part, const std::string& what, Length half,
             const std::vector<workshop::PlanePoint>& holes, Length diameter) {
  int number = 0;
  for (const workshop::PlanePoint& hole : holes)
    out.push_back({part, holes.size() > 1 ? fmt::format("{} {}", what, ++number) : what, hole, from_corner(hole, half),
                   diameter});
}
}  // namespace

drawing::Figures figures_for(const description::Build& build, UnitSystem units) {
  using drawing::Figures;
  if (units != UnitSystem::as_written) return units == UnitSystem::metric ? Figures::mm : Figures::inches;
  const description::part::Adapter& a = build.adapter;
  constexpr Length any = 10.0 * mm;
  if (is_imperial(description::PageUnits(build).of(any))) return Figures::inches_mm;
  const bool some =
      is_imperial(a.flange.outside.unit) || is_imperial(a.box.diameter.unit) || is_imperial(a.tube.outside.unit);
  return some ? Figures::mm_inches : Figures::mm;
}
drawing::Figures one_rule(drawing::Figures figures) {
  const bool inches = figures == drawing::Figures::inches || figures == drawing::Figures::inches_mm;
  return inches ? drawing::Figures::inches : drawing::Figures::mm;
}

std::vector<Template> templates(const model::FanUnit& unit, const description::Build& build, UnitSystem units) {
  using namespace templates_of;
  const drawing::Figures figures = figures_for(build, units);
  const auto& tube = build.adapter.tube;
  std::vector<Template> all;
  if (unit.flange) all.push_back({"flange", flange_view(*unit.flange, figures)});
  if (unit.tube)
    all.push_back({"tube", tube_view(*unit.tube, description::stock_tube(tube.outside, tube.wall, units), figures)});
  if (unit.box) {
    all.push_back({"lid", lid_view(*unit.box, unit.fan ? model::lid_holes(*unit.fan) : std::nullopt, figures)});
    const auto screws = unit.flange ? unit.flange->screws : std::optional<model::FlangeScrews>();
    if (!unit.box->square)  // the bottom of a square one is part of its net
      all.push_back({"bottom", bottom_view(*unit.box, screws, figures)});
    all.push_back({"side", side_view(*unit.box, screws, figures)});
  }
  return all;
}
std::optional<drawing::View> section_of(const model::FanUnit& unit, const description::Build& build) {
  if (!unit.tube || !unit.box) return std::nullopt;
  return templates_of::section_view(unit, build, figures_for(build, UnitSystem::as_written));
}

bool marks_out_in_inches(const model::Solved& solved, UnitSystem units) {
  constexpr Length any = 10.0 * mm;
  return units == UnitSystem::imperial || (units == UnitSystem::as_written && is_imperial(solved.page.of(any)));
}
workshop::PlanePoint HolePlace::from_edges(Length digit) const {
  const auto printed = [&](Length size) -> Length { return std::stod(fixed_number(in(size, digit), 0)) * digit; };
  return {printed(corner.x - centre.x) + printed(centre.x), printed(corner.y - centre.y) + printed(centre.y)};
}
std::vector<HolePlace> hole_places(const model::FanUnit& unit) {
  std::vector<HolePlace> out;
  const workshop::PlanePoint middle{0.0 * mm, 0.0 * mm};
  if (unit.flange) {
    const Length half = 0.5 * unit.flange->outside;
    if (unit.flange->tube_hole) add_all(out, "flange", "tube", half, {middle}, *unit.flange->tube_hole);
    if (unit.flange->screws)
      add_all(out, "flange", "screw", half, templates_of::flange_holes(*unit.flange->screws),
              unit.flange->screws->drill);
  }
  if (!unit.box) return out;
  const model::MadeBox& box = *unit.box;
  const Length lid_half = 0.5 * (box.square ? box.plate : box.round->disc_blank),
               half = 0.5 * (box.square ? box.net->across.total : box.round->disc_blank);
  if (const auto lid = unit.fan ? model::lid_holes(*unit.fan) : std::nullopt) {
    if (lid->opening) add_all(out, "lid", "cut-out", lid_half, {middle}, *lid->opening);
    add_all(out, "lid", "fan screw", lid_half, lid->screws, lid->screw_hole);
  }
  if (box.tube_hole) add_all(out, "bottom", "tube", half, {middle}, *box.tube_hole);
  if (unit.flange && unit.flange->screws)
    add_all(out, "bottom", "flange screw", half, templates_of::flange_holes(*unit.flange->screws),
            unit.flange->screws->clearance);
  add_side(out, box);
  return out;
}

std::vector<std::string> failed_geometry(const plan::Assessment& assessment) {
  std::vector<std::string> failed;
  for (const plan::Finding& f : assessment.checks)
    if (f.verdict == plan::Verdict::fail && (f.id.starts_with("fit.") || f.id.starts_with("make.")))
      failed.push_back(fmt::format("{} [{}]", f.title, f.id));
  return failed;
}
}  // namespace lumwright::report
