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
}  // namespace

std::vector<View> plate_views(const draught::TestBox& box) {
  std::vector<View> views;
  int number = 0;
  for (const draught::PlannedPlate& plate : box.plates) views.push_back(plate_view(plate, ++number));
  return views;
}

std::vector<NamedText> plate_files(const draught::TestBox& box, const std::string& paper_name,
                                   const PrintOptions& print) {
  const Drawing sheets = lay_out({.name = "Orifice plates for the fan test", .tolerance = "holes to 0.1 mm"},
                                 paper(paper_name), plate_views(box), Oversize::split);
  std::vector<NamedText> files = {{"plates.pdf", "the orifice plates at true size", pdf(sheets, print)}};
  int number = 0;
  for (std::string& text : svg(sheets, print))
    files.push_back({fmt::format("plates-{}.svg", ++number), "the same, one sheet each", std::move(text)});
  return files;
}
}  // namespace lumwright::report
