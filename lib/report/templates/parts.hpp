// The views of the single parts. Only the files of templates/ include it.
#pragma once
#include "drawing/drawing.hpp"
#include "plan/fan_unit.hpp"
#include "plan/solved.hpp"

namespace lumwright::templates_of {
inline constexpr drawing::Point middle{0.0 * mm, 0.0 * mm};
inline drawing::Point point(PlanePoint p) { return {p.x, p.y}; }
/// "3 x " before a diameter.
std::string times(int count);
/// "2.40 mm" without idle noughts.
std::string size(Length length);

drawing::View flange_view(const MadeFlange& flange, bool inches);
drawing::View tube_view(const MadeTube& tube, bool inches);
drawing::View lid_view(const MadeBox& box, const std::optional<LidHoles>& lid, bool inches);
drawing::View bottom_view(const MadeBox& box, const std::optional<FlangeScrews>& screws, bool inches);
drawing::View side_view(const MadeBox& box, bool inches);
/// All parts cut through the middle, standing on the chimney, with the way of the gas.
drawing::View section_view(const FanUnit& unit, const Build& build);

/// Where the holes of the flange lie: the first at the top.
std::vector<PlanePoint> flange_holes(const FlangeScrews& screws);
}  // namespace lumwright::templates_of
