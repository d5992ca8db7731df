#include "report/templates/orifice_plates.hpp"
#include "report/templates/parts.hpp"
#include "workshop/hole_circle.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
using namespace drawing;
constexpr double apart = 3.0;  // middles of several holes, in diameters
constexpr Length rim = 25.0 * mm;

// One in the middle; more on a circle, so that neighbours are three diameters apart.
std::vector<workshop::PlanePoint> holes_of(const draught::PlannedPlate& plate) {
  if (plate.holes < 2) return {{0.0 * mm, 0.0 * mm}};
  const double chord_over_circle = workshop::chord({plate.holes, 1.0 * m, 1}) / (1.0 * m);
  return workshop::hole_circle({plate.holes, apart * plate.hole / chord_over_circle, 0.0, workshop::Datum::centre});
}
View plate_view(const draught::PlannedPlate& plate, int number) {
  View view{.name = fmt::format("Plate {}", number), .material = "flat sheet"};
  const std::vector<workshop::PlanePoint> holes = holes_of(plate);
  Length right = 0.0 * mm, up = 0.0 * mm;
  for (const workshop::PlanePoint& hole : holes) {
    right = std::max({right, hole.x, -hole.x});
    up = std::max({up, hole.y, -hole.y});
  }
  right += 0.5 * plate.hole + rim;
  up += 0.5 * plate.hole + rim;
  add_rectangle(view, {{-right, -up}, {right, up}});
  for (const workshop::PlanePoint& hole : holes) add_bore(view, {hole.x, hole.y}, plate.hole);
  constexpr double slope = 35.0;
  const workshop::PlanePoint& first = holes.front();
  const double cosine = std::cos(slope * workshop::degree);
  view.entities.push_back(DiameterDimension{.centre = {first.x, first.y},
                                            .diameter = plate.hole,
                                            .at = degrees(slope),
                                            .away = (right - first.x) / cosine - 0.5 * plate.hole + 6.0 * mm,
                                            .before = templates_of::times(plate.holes) + "bore sharp "});
  view.entities.push_back(LinearDimension{{-right, -up}, {right, -up}, Along::horizontal, -8.0 * mm});
  view.entities.push_back(LinearDimension{{-right, -up}, {-right, up}, Along::vertical, -8.0 * mm});
  view.note = fmt::format("sharp, square edge; expect {:.3g} Pa at {:.3g} l/min", in(plate.depression, Pa),
                          in(plate.flow, m3_per_s) * 60000.0);
  return view;
}
// Cut along its middle: lid with plate at the left, fan at the right, everything from the lid.
View box_view(const draught::TestBox& box, Length frame, Length thickness, double scale) {
  View view{.name = "Test box, cut along its middle", .scale = scale};
  const auto paper = [scale](double by) -> Length { return by / scale * mm; };
  const Length half = 0.5 * box.side, wall = paper(1.0), fan = 0.5 * frame;
  const auto line = [&](Point from, Point to, Layer layer) { view.entities.push_back(Line{from, to, layer}); };
  for (const double side : {-1.0, 1.0}) {
    line({0.0 * mm, side * half}, {box.length, side * half}, Layer::outline);
    line({0.0 * mm, side * half}, {0.0 * mm, side * 0.25 * box.side}, Layer::outline);
    line({box.length, side * half}, {box.length, side * fan}, Layer::outline);
  }
  add_rectangle(view, {{-wall, -0.4 * box.side}, {0.0 * mm, 0.4 * box.side}}, Layer::outline);  // plate
  add_rectangle(view, {{box.length, -fan}, {box.length + thickness, fan}}, Layer::outline);
  line({box.screen, -half}, {box.screen, half}, Layer::hidden);
  const Length tap = 0.5 * (box.screen + box.length);
  line({tap, half}, {tap, half + paper(8.0)}, Layer::outline);
  const auto words = [&](Point at, const char* text, Across across) {
    view.entities.push_back(Text{.at = at, .words = text, .across = across, .up = Up::base});
  };
  words({tap + paper(2.0), half + paper(4.0)}, "to the U-tube", Across::left);
  words({box.screen - paper(2.0), half + paper(4.0)}, "screen of gauze", Across::right);
  words({0.0 * mm, half + paper(4.0)}, "plate", Across::left);
  words({box.length + thickness + paper(2.0), 0.0 * mm}, "fan, blowing out", Across::left);
  view.entities.push_back(LinearDimension{{0.0 * mm, -half}, {box.screen, -half}, Along::horizontal, -8.0 * mm});
  view.entities.push_back(
      LinearDimension{{0.0 * mm, -half}, {box.length, -half}, Along::horizontal, -16.0 * mm, "", " inside"});
  view.entities.push_back(
      LinearDimension{{0.0 * mm, -half}, {0.0 * mm, half}, Along::vertical, -14.0 * mm, "", " square inside"});
  return view;
}
/// One sheet; half of its own size, a fifth or a tenth, as it fits.
Sheet box_sheet(const draught::TestBox& box, const draught::ExpectedFan& fan, const Paper& paper) {
  const Box room = room_on(paper, false);
  Sheet sheet;
  sheet.to_cut = false;
  for (const double scale : {0.5, 0.2, 0.1, 0.05}) {
    const View view = box_view(box, fan.frame, fan.thickness, scale);
    const Box reach = bounds(view);
    const Length wide = reach.high.x - reach.low.x, high = reach.high.y - reach.low.y;
    if (scale > 0.05 && (wide > room.high.x - room.low.x || high > room.high.y - room.low.y)) continue;
    sheet.views.push_back(
        {view,
         {0.5 * (room.low.x + room.high.x - reach.low.x - reach.high.x), room.high.y - 6.0 * mm - reach.high.y},
         false,
         std::nullopt,
         false});
    break;
  }
  return sheet;
}
}  // namespace

std::vector<View> plate_views(const draught::TestBox& box) {
  std::vector<View> views;
  int number = 0;
  for (const draught::PlannedPlate& plate : box.plates) views.push_back(plate_view(plate, ++number));
  return views;
}

std::vector<NamedText> plate_files(const draught::TestBox& box, const draught::ExpectedFan& fan,
                                   const std::string& paper_name, const PrintOptions& print) {
  Drawing sheets = lay_out({.name = "Orifice plates for the fan test", .tolerance = "holes to 0.1 mm"},
                           paper(paper_name), plate_views(box), Oversize::split);
  sheets.sheets.insert(sheets.sheets.begin(), box_sheet(box, fan, sheets.paper));
  std::vector<NamedText> files = {
      {"plates.pdf", "the test box with its sizes, then the orifice plates at true size", pdf(sheets, print)}};
  int number = 0;
  for (std::string& text : svg(sheets, print))
    files.push_back({fmt::format("plates-{}.svg", ++number), "the same, one sheet each", std::move(text)});
  return files;
}
}  // namespace lumwright::report
