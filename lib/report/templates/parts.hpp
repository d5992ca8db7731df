// The views of the single parts. Only the files of templates/ include it.
#pragma once
#include "drawing/drawing.hpp"
#include "model/fan_unit.hpp"
#include "model/solved.hpp"

namespace lumwright::report::templates_of {
inline constexpr drawing::Point middle{0.0 * mm, 0.0 * mm};
inline drawing::Point point(workshop::PlanePoint p) { return {p.x, p.y}; }
/// "3 x " before a diameter.
std::string times(int count);
/// " (17.05 to 17.28)" behind a size that must lie between these; nothing where there are none.
std::string between(const std::optional<workshop::Limits>& limits, drawing::Figures figures);
/// "holes within 0.1 mm of their places".
std::string places_within(const std::optional<Length>& strays, drawing::Figures figures);
/// An empty view of a piece of the box's sheet.
inline drawing::View of_sheet(const model::MadeBox& box, const char* name, drawing::Figures figures) {
  return {.name = name, .material = box.metal, .thickness = box.sheet, .figures = figures};
}

drawing::View flange_view(const model::MadeFlange& flange, drawing::Figures figures);
/// `stock` is what it is cut from, in words.
drawing::View tube_view(const model::MadeTube& tube, const std::string& stock, drawing::Figures figures);
drawing::View lid_view(const model::MadeBox& box, const std::optional<model::LidHoles>& lid, drawing::Figures figures);
drawing::View bottom_view(const model::MadeBox& box, const std::optional<model::FlangeScrews>& screws,
                          drawing::Figures figures);
/// The strip of a round box, inside up, about its middle; of a square one the whole net, with the holes of its floor.
drawing::View side_view(const model::MadeBox& box, const std::optional<model::FlangeScrews>& screws,
                        drawing::Figures figures);
/// Heights over the mouth of the chimney, and half widths.
struct SectionLevels {
  Length engaged, deep;             // below it: tube, chimney
  model::BoxLevels box;
  Length fan_foot, fan_head, top;   // of all
  Length half_box, opening;
};
inline Length half_flange(const model::FanUnit& unit) { return unit.flange ? 0.5 * unit.flange->outside : 0.0 * mm; }
SectionLevels section_levels(const model::FanUnit& unit, const description::Build& build);
/// All parts cut through the middle, standing on the chimney, with the way of the gas: their metal alone.
SectionLevels add_section(drawing::View& view, const model::FanUnit& unit, const description::Build& build);
/// The same with the names of the parts, for a picture.
drawing::View section_view(const model::FanUnit& unit, const description::Build& build, drawing::Figures figures);

/// A hole in the side, about the middle of the view that side_view() draws.
struct SideHole {
  std::string part, what;  // "left side", as the net lies on the bench; "bleed"
  drawing::Point at;
  Length diameter;
};
std::vector<SideHole> side_holes(const model::MadeBox& box);
/// Where the holes of the flange lie: the first at the top.
std::vector<workshop::PlanePoint> flange_holes(const model::FlangeScrews& screws);
}  // namespace lumwright::report::templates_of
