#include "quantity/format.hpp"
#include "report/templates/parts.hpp"
#include <fmt/format.h>

namespace lumwright::report::templates_of {
using namespace drawing;

std::string times(int count) { return count > 1 ? fmt::format("{} x ", count) : ""; }
std::string between(const std::optional<workshop::Limits>& limits, Figures figures) {
  return limits ? fmt::format(" ({})", limits_text(limits->least, limits->most, figures)) : "";
}
std::string places_within(const std::optional<Length>& strays, Figures figures) {
  if (!strays) return "";
  const bool inches = figures == Figures::inches || figures == Figures::inches_mm;
  const double step = inches ? 1.0 : 0.05, most = inches ? in(*strays, thou) : in(*strays, mm);
  const double within = std::floor(most / step + 1e-9) * step;
  if (within == 0.0) return "drill the holes through both parts together";  // nobody marks out so well
  return fmt::format("holes within {} of their places",
                     inches ? fmt::format("{:.0f} thou", within) : fixed_number(within, 2) + " mm");
}
std::vector<workshop::PlanePoint> flange_holes(const model::FlangeScrews& screws) {
  return workshop::hole_circle({screws.count, screws.pitch_circle, 90.0 * workshop::degree, workshop::Datum::centre});
}

View flange_view(const model::MadeFlange& flange, Figures figures) {
  View view{.name = "Flange", .material = flange.metal.name, .thickness = flange.thickness, .figures = figures};
  const Length outside = flange.outside;
  view.entities.push_back(Circle{middle, outside, Layer::cut});
  add_centre_lines(view, middle, 0.5 * outside + 3.0 * mm);
  if (flange.tube_hole) {
    add_bore(view, middle, *flange.tube_hole);
    view.entities.push_back(DiameterDimension{.centre = middle,
                                              .diameter = *flange.tube_hole,
                                              .at = degrees(200.0),
                                              .away = 0.5 * (outside - *flange.tube_hole) + 8.0 * mm,
                                              .before = "tube hole ",
                                              .after = between(flange.tube_hole_limits, figures)});
  }
  view.entities.push_back(
      DiameterDimension{.centre = middle, .diameter = outside, .at = degrees(-45.0), .away = 8.0 * mm});
  if (!flange.screws) return view;
  const model::FlangeScrews& screws = *flange.screws;
  view.entities.push_back(Circle{middle, screws.pitch_circle, Layer::centre});
  for (const workshop::PlanePoint& hole : flange_holes(screws)) add_hole(view, point(hole), screws.drill);
  const Point first = point(flange_holes(screws).front());
  view.entities.push_back(DiameterDimension{
      .centre = first,
      .diameter = screws.drill,
      .at = degrees(50.0),
      .away = 0.5 * outside - 0.5 * screws.pitch_circle + 6.0 * mm,
      .before = times(screws.count) + "drill ",
      .after = (screws.tapped ? ", tap " : " for ") + screws.thread.name + (screws.count > 1 ? ", evenly round" : "")});
  view.entities.push_back(DiameterDimension{.centre = middle,
                                            .diameter = screws.pitch_circle,
                                            .at = degrees(20.0),
                                            .away = 0.5 * (outside - screws.pitch_circle) + 8.0 * mm,
                                            .before = "pitch circle "});
  view.note = places_within(screws.strays, figures);
  if (screws.count > 1)
    view.note +=
        "; dividers, hole to hole: " + size_text(workshop::chord({screws.count, screws.pitch_circle, 1}), figures);
  return view;
}

View tube_view(const model::MadeTube& tube, const std::string& stock, Figures figures) {
  View view{.name = "Tube", .material = tube.metal.name, .thickness = tube.wall, .figures = figures};
  const Length half = 0.5 * tube.outside, bore = half - tube.wall, end = tube.length, c = tube.chamfer;
  const Point corners[] = {{c, half}, {end, half}, {end, bore}, {0.0 * mm, bore}, {0.0 * mm, half - c}};
  for (const double side : {1.0, -1.0}) {  // the upper wall and the lower one
    std::vector<Point> wall;
    for (const Point& p : corners) wall.push_back({p.x, side * p.y});
    view.entities.push_back(Polyline{wall, true, Layer::outline});
    view.entities.push_back(Hatch{{wall}, 1.2 * mm});
  }
  view.entities.push_back(Line{{0.0 * mm, bore}, {0.0 * mm, -bore}, Layer::outline});
  view.entities.push_back(Line{{end, bore}, {end, -bore}, Layer::outline});
  view.entities.push_back(Line{{-4.0 * mm, 0.0 * mm}, {end + 4.0 * mm, 0.0 * mm}, Layer::centre});
  view.entities.push_back(LinearDimension{{0.0 * mm, -half}, {end, -half}, Along::horizontal, -9.0 * mm});
  if (tube.engaged && *tube.engaged < end)
    view.entities.push_back(
        LinearDimension{{0.0 * mm, half}, {*tube.engaged, half}, Along::horizontal, 9.0 * mm, "goes in "});
  view.entities.push_back(LinearDimension{
      {end, -half}, {end, half}, Along::vertical, 14.0 * mm, "outside ", between(tube.limits().tube, figures)});
  view.entities.push_back(Leader{{0.5 * c, -half + 0.5 * c},
                                 {-6.0 * mm, -half - 7.0 * mm},
                                 fmt::format("this end goes into the chimney:\nbreak the edge {} all round; inlet {}",
                                             size_text(c, figures), tube.inlet)});
  if (!stock.empty()) view.note = "of " + stock;
  return view;
}
}  // namespace lumwright::report::templates_of
