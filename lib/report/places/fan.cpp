#include "report/places/sketch.hpp"
#include <cmath>
#include <numbers>

namespace lumwright::report::places {
namespace {
constexpr Pane front{52.0, 34.0, 186.0, 168.0}, side{250.0, 34.0, 290.0, 168.0};
constexpr Spot middle{119.0, 101.0};

void draw_blades(chart::Figure& figure, Spot at, double inner, double outer, int blades) {
  for (int i = 0; i < blades; ++i) {
    const double a = 2.0 * std::numbers::pi * i / blades, b = a + 0.5;
    figure.line({at.x + inner * std::cos(a), at.y + inner * std::sin(a)},
                {at.x + outer * std::cos(b), at.y + outer * std::sin(b)}, "seen");
  }
  figure.circle(at, inner, "seen");
}
double side_width(const Sketch& s) {
  return scaled(s.sizes().length("fan.thickness"), s.sizes().length("fan.frame"), front.width(), 14.0, 60.0);
}
void mark_body(Sketch& s) {
  const double thick = side_width(s);
  s.figure().box({side.left, side.top, side.left + thick, side.bottom}, "seen");
  s.between("fan.frame", {front.right, front.top}, {front.left, front.top}, 18.0);
  s.between("fan.thickness", {side.left, side.bottom}, {side.left + thick, side.bottom}, 16.0);
}
void draw_axial(Sketch& s) {
  const Length frame = s.sizes().length("fan.frame");
  const double opening = 0.5 * scaled(s.sizes().length("fan.holes.opening"), frame, front.width(), 70.0, 128.0);
  const double pitch = 0.5 * scaled(s.sizes().length("fan.holes.pitch"), frame, front.width(), 60.0, 118.0);
  const double hole = 0.5 * scaled(s.sizes().length("fan.holes.diameter"), frame, front.width(), 7.0, 14.0);
  s.figure().box(front, "seen");
  s.figure().circle(middle, opening, "seen");
  draw_blades(s.figure(), middle, 0.4 * opening, 0.95 * opening, 7);
  for (const double x : {-pitch, pitch})
    for (const double y : {-pitch, pitch}) s.figure().circle({middle.x + x, middle.y + y}, hole, "void-seen");
  mark_body(s);
  s.between("fan.holes.pitch", {middle.x - pitch, middle.y + pitch}, {middle.x + pitch, middle.y + pitch},
            front.bottom - middle.y - pitch + 16.0);
  s.at("fan.holes.diameter", {middle.x + pitch, middle.y - pitch}, {front.right + 26.0, front.top + 10.0});
  s.at("fan.holes.opening", {middle.x + opening, middle.y}, {front.right + 26.0, middle.y});
}
/// A place from the lower left corner of the body, as the description has it.
Spot from_corner(Length x, Length y, Length frame) {
  const auto share = [&](Length at) { return std::clamp((at / frame).value(), -0.1, 1.1); };
  return {front.left + front.width() * share(x), front.bottom - front.width() * share(y)};
}
void draw_centrifugal(Sketch& s) {
  const Length frame = s.sizes().length("fan.frame");
  const Spot inlet = from_corner(s.sizes().length("fan.holes.inlet_x"), s.sizes().length("fan.holes.inlet_y"), frame);
  const double opening = 0.5 * scaled(s.sizes().length("fan.holes.opening"), frame, front.width(), 40.0, 110.0);
  const double hole = 0.5 * scaled(s.sizes().length("fan.holes.diameter"), frame, front.width(), 7.0, 14.0);
  s.figure().box(front, "ghost-box");
  s.figure().circle(middle, 0.5 * front.width(), "seen");  // its housing, open at the bottom
  s.figure().trace({{front.left, middle.y}, {front.left, front.bottom}, {middle.x, front.bottom}}, "seen");
  s.figure().circle(inlet, opening, "void-seen");
  draw_blades(s.figure(), inlet, 0.35 * opening, 0.9 * opening, 9);
  std::vector<Spot> lugs;
  for (const auto& lug : s.sizes().build().fan.holes.lugs.points) lugs.push_back(from_corner(lug.x, lug.y, frame));
  if (lugs.empty()) lugs = {{front.left + 10.0, front.top + 12.0}, {front.right - 8.0, front.bottom - 18.0}};
  for (const Spot& lug : lugs) s.figure().circle(lug, hole, "void-seen");
  mark_body(s);
  s.at("fan.holes.lugs", lugs.front(), {front.left - 26.0, front.top + 4.0});
  s.at("fan.holes.diameter", {lugs.back().x + hole, lugs.back().y}, {front.right + 28.0, front.bottom - 6.0});
  s.at("fan.holes.opening", {inlet.x + opening, inlet.y}, {front.right + 28.0, front.top + 14.0});
  s.between("fan.holes.inlet_x", {front.left, front.bottom}, {inlet.x, front.bottom}, 18.0);
  s.between("fan.holes.inlet_y", {front.left, inlet.y}, {front.left, front.bottom}, 22.0);
}
}  // namespace

Drawing fan(const description::Build& build) {
  Drawing drawing{.id = "fan",
                  .part = "fan",
                  .title = "The fan",
                  .shows = "The fan from the front and from the side.",
                  .height = 208.0,
                  .marks = {{"fan.frame", "side of the frame"},
                            {"fan.thickness", "depth"},
                            {"fan.holes.opening", "air passage"},
                            {"fan.holes.diameter", "screw holes"}},
                  .draw = draw_axial};
  if (build.fan.kind && *build.fan.kind == "centrifugal") {
    drawing.marks.push_back({"fan.holes.lugs", "their places"});
    drawing.marks.push_back({"fan.holes.inlet_x", "inlet from the corner, along"});
    drawing.marks.push_back({"fan.holes.inlet_y", "inlet from the corner, up"});
    drawing.draw = draw_centrifugal;
  } else {
    drawing.marks.push_back({"fan.holes.pitch", "from hole to hole"});
  }
  return drawing;
}
}  // namespace lumwright::report::places
