// True-scale templates of a fan unit: what is stuck on the metal, and a table of co-ordinates.
#pragma once
#include "drawing/drawing.hpp"
#include "model/solved.hpp"
#include "plan/assessment.hpp"
#include <string>
#include <vector>

namespace lumwright {
/// One part to make, with its view and a name for files: "flange", "lid", "bottom", "side", "tube".
struct Template {
  std::string id;
  drawing::View view;
};
/// Every part that the unit gives enough of, in the order of making, and the section of the whole last (id "section").
std::vector<Template> templates(const FanUnit& unit, const Build& build);

/// A hole by its place, for marking out.
struct HolePlace {
  std::string part, what;  // "lid", "fan screw 1"; "bottom" and "left side" of a square box lie on its net
  PlanePoint centre;       // about the middle of the part, of a square box's net where it lies on that
  PlanePoint corner;       // from the edges that touch it at left and below, before anything is folded or rolled
  Length diameter;
};
std::vector<HolePlace> hole_places(const FanUnit& unit);

/// Checks of geometry that this build fails: it is not drawn unless as a draft.
std::vector<std::string> failed_geometry(const Assessment& assessment);
}  // namespace lumwright
