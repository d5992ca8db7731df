#include "report/templates/templates.hpp"
#include "report/templates/parts.hpp"
#include <fmt/format.h>

namespace lumwright {
namespace {
bool wrote_inches(const Given<Length>& size) { return size.unit == "in" || size.unit == "thou"; }
PlanePoint from_corner(PlanePoint p, Length half) { return {p.x + half, p.y + half}; }
void add_all(std::vector<HolePlace>& out, const std::string& part, const std::string& what, Length half,
             const std::vector<PlanePoint>& holes, Length diameter) {
  int number = 0;
  for (const PlanePoint& hole : holes)
    out.push_back({part, holes.size() > 1 ? fmt::format("{} {}", what, ++number) : what, hole, from_corner(hole, half),
                   diameter});
}
}  // namespace

std::vector<Template> templates(const FanUnit& unit, const Build& build) {
  using namespace templates_of;
  const part::Adapter& adapter = build.adapter;
  const bool inches =
      wrote_inches(adapter.flange.outside) || wrote_inches(adapter.box.diameter) || wrote_inches(adapter.tube.outside);
  std::vector<Template> all;
  if (unit.flange) all.push_back({"flange", flange_view(*unit.flange, inches)});
  if (unit.tube) all.push_back({"tube", tube_view(*unit.tube, inches)});
  if (unit.box) {
    all.push_back({"lid", lid_view(*unit.box, unit.fan ? lid_holes(*unit.fan) : std::nullopt, inches)});
    if (!unit.box->square)  // the bottom of a square one is part of its net
      all.push_back({"bottom", bottom_view(*unit.box, unit.flange ? unit.flange->screws : std::optional<FlangeScrews>(),
                                           inches)});
    all.push_back({"side", side_view(*unit.box, inches)});
  }
  if (unit.tube && unit.flange && unit.box) all.push_back({"section", section_view(unit, build)});
  return all;
}

std::vector<HolePlace> hole_places(const FanUnit& unit) {
  std::vector<HolePlace> out;
  const PlanePoint middle{0.0 * mm, 0.0 * mm};
  if (unit.flange) {
    const Length half = 0.5 * unit.flange->outside;
    if (unit.flange->tube_hole) add_all(out, "flange", "tube", half, {middle}, *unit.flange->tube_hole);
    if (unit.flange->screws)
      add_all(out, "flange", "screw", half, templates_of::flange_holes(*unit.flange->screws),
              unit.flange->screws->drill);
  }
  if (!unit.box) return out;
  const Length half = 0.5 * (unit.box->square ? unit.box->plate : unit.box->round->disc_blank);
  if (const auto lid = unit.fan ? lid_holes(*unit.fan) : std::nullopt) {
    if (lid->opening) add_all(out, "lid", "cut-out", half, {middle}, *lid->opening);
    add_all(out, "lid", "fan screw", half, lid->screws, lid->screw_hole);
  }
  if (unit.box->tube_hole) add_all(out, "bottom", "tube", half, {middle}, *unit.box->tube_hole);
  if (unit.flange && unit.flange->screws)
    add_all(out, "bottom", "flange screw", half, templates_of::flange_holes(*unit.flange->screws),
            unit.flange->screws->clearance);
  return out;
}

std::vector<std::string> failed_geometry(const Assessment& assessment) {
  std::vector<std::string> failed;
  for (const Finding& f : assessment.checks)
    if (f.verdict == Verdict::fail && (f.id.starts_with("fit.") || f.id.starts_with("make.")))
      failed.push_back(fmt::format("{} [{}]", f.title, f.id));
  return failed;
}
}  // namespace lumwright
