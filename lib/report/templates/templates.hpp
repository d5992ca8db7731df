// True-scale templates of a fan unit: what is stuck on the metal, and a table of co-ordinates.
#pragma once
#include "drawing/drawing.hpp"
#include "model/fan_unit.hpp"
#include "model/solved.hpp"
#include "plan/assessment.hpp"
#include "quantity/format.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
/// One part to make, with its view and a name for files: "flange", "lid", "bottom", "side", "tube".
struct Template {
  std::string id;
  drawing::View view;
};
/// Every part that the unit gives enough of, in the order of making.
/// Sizes are in the units that are asked for; as written, in those that the description has most of, the others
/// beneath.
std::vector<Template> templates(const model::FanUnit& unit, const description::Build& build,
                                UnitSystem units = UnitSystem::as_written);

/// The unit on the chimney, cut through, with the names of its parts; nothing where tube or box is not there.
std::optional<drawing::View> section_of(const model::FanUnit& unit, const description::Build& build);
/// One sheet with the whole unit: section, seen from above, parts list. `items` have the numbers of the balloons, from
/// 1 Nothing as above.
std::optional<drawing::Sheet> general_arrangement(const model::FanUnit& unit, const description::Build& build,
                                                  UnitSystem units, const drawing::Paper& paper);

/// What sizes are written in, on drawings and in the limits of the build sheet.
drawing::Figures figures_for(const description::Build& build, UnitSystem units);
/// The same with one of the two rules alone, where room is scarce.
drawing::Figures one_rule(drawing::Figures figures);

/// A hole by its place, for marking out.
struct HolePlace {
  std::string part, what;  // "lid", "fan screw 1"; "bottom" and "left side" of a square box lie on its net
  workshop::PlanePoint centre;  // about the middle of the part, of a square box's net where it lies on that
  workshop::PlanePoint corner;  // from the edges that touch it at left and below, before anything is folded or rolled
  Length diameter;
  /// From the edges, as it is printed in such digits: its distance from the middle is then the one that is printed too.
  workshop::PlanePoint from_edges(Length digit) const;
};
std::vector<HolePlace> hole_places(const model::FanUnit& unit);
/// Tables of places are in inches, all of a table: where that is asked for, or where the description writes most sizes
/// so.
bool marks_out_in_inches(const model::Solved& solved, UnitSystem units);
/// What is drilled where fold lines cross, so that the sheet does not tear there.
inline const char* fold_drill(bool inches) { return inches ? "1/32 in" : "1 mm"; }

/// Checks of geometry that this build fails: it is not drawn unless as a draft.
std::vector<std::string> failed_geometry(const plan::Assessment& assessment);
}  // namespace lumwright::report
