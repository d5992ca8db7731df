// The views of the single parts. Only the files of templates/ include it.
#pragma once
#include "drawing/drawing.hpp"
#include "model/fan_unit.hpp"
#include "model/solved.hpp"

namespace lumwright::templates_of {
inline constexpr drawing::Point middle{0.0 * mm, 0.0 * mm};
inline drawing::Point point(PlanePoint p) { return {p.x, p.y}; }
/// "3 x " before a diameter.
std::string times(int count);
/// "2.40 mm" without idle noughts.
std::string size(Length length);
/// An empty view of a piece of the box's sheet.
inline drawing::View of_sheet(const MadeBox& box, const char* name, bool inches) {
  return {.name = name, .material = box.metal, .thickness = box.sheet, .inches = inches};
}

drawing::View flange_view(const MadeFlange& flange, bool inches);
drawing::View tube_view(const MadeTube& tube, bool inches);
drawing::View lid_view(const MadeBox& box, const std::optional<LidHoles>& lid, bool inches);
drawing::View bottom_view(const MadeBox& box, const std::optional<FlangeScrews>& screws, bool inches);
/// The strip of a round box, inside up, about its middle; of a square one the whole net, with the holes of its floor.
drawing::View side_view(const MadeBox& box, const std::optional<FlangeScrews>& screws, bool inches);
/// All parts cut through the middle, standing on the chimney, with the way of the gas.
drawing::View section_view(const FanUnit& unit, const Build& build);

/// A hole in the side, about the middle of the view that side_view() draws.
struct SideHole {
  std::string part, what;  // "left side", as the net lies on the bench; "bleed"
  drawing::Point at;
  Length diameter;
};
std::vector<SideHole> side_holes(const MadeBox& box);
/// Where the holes of the flange lie: the first at the top.
std::vector<PlanePoint> flange_holes(const FlangeScrews& screws);
}  // namespace lumwright::templates_of
