#include "report/places/sketch.hpp"
#include <cmath>
#include <numbers>

namespace lumwright::report::places {
namespace {
void draw_the_chimney(Sketch& s) {
  chart::Figure& figure = s.figure();
  const Length bore = s.sizes().length("engine.chimney.bore");
  const double deep = scaled(s.sizes().length("engine.chimney.depth"), bore, 80.0, 70.0, 130.0);
  const double wall = scaled(s.sizes().length("engine.chimney.wall"), bore, 80.0, 7.0, 30.0);
  constexpr double left = 130.0, right = 210.0, top = 24.0;
  const double step = top + deep, end = step + 22.0;
  s.wall({left - wall, top, left, end});
  s.wall({right, top, right + wall, end});
  for (const double x : {left, right - 9.0}) s.wall({x, step, x + 9.0, end});
  figure.shape({{right, top + 0.34 * deep}, {right - 5.0, top + 0.42 * deep}, {right, top + 0.5 * deep}}, "cut-metal");
  figure.line({170.0, top - 8.0}, {170.0, end + 6.0}, "centre");
  s.between("engine.chimney.bore", {left, top + 0.72 * deep}, {right, top + 0.72 * deep});
  s.between("engine.chimney.depth", {left - wall, top}, {left - wall, step}, 26.0);
  s.at("engine.chimney.wall", {right + 0.5 * wall, top + 12.0}, {right + wall + 30.0, top + 4.0});
  s.at("engine.chimney.seam_ridge", {right - 3.0, top + 0.42 * deep}, {right + wall + 30.0, top + 0.42 * deep + 8.0});
}
}  // namespace

Drawing chimney() {
  return {.id = "chimney",
          .part = "engine.chimney",
          .title = "The chimney",
          .shows =
              "The chimney cut through: its walls, a seam that stands proud inside, and a step on which a tube "
              "comes to stand.",
          .height = 184.0,
          .marks = {{"engine.chimney.bore", "bore at its narrowest"},
                    {"engine.chimney.depth", "depth for a tube"},
                    {"engine.chimney.wall", "wall"},
                    {"engine.chimney.seam_ridge", "height of a seam"}},
          .draw = draw_the_chimney};
}

namespace {
struct TubeShown {
  double half, wall, flange, flange_half;  // px; half: of the tube's outside
  double mouth, top;                       // of the tube: its mouth below, the underside of the box above
};
TubeShown tube_shown(const Sizes& sizes) {
  const Length outside = sizes.length("adapter.tube.outside");
  TubeShown t{.half = 22.0, .wall = 0.0, .flange = 0.0, .flange_half = 0.0, .mouth = 178.0, .top = 50.0};
  t.wall = scaled(sizes.length("adapter.tube.wall"), outside, 2.0 * t.half, 3.5, 9.0);
  t.flange = scaled(sizes.length("adapter.flange.thickness"), outside, 2.0 * t.half, 6.0, 16.0);
  t.flange_half = scaled(sizes.length("adapter.flange.outside"), outside, t.half, t.half + 14.0, 58.0);
  return t;
}
void draw_tube(Sketch& s, const TubeShown& t, double x, double chimney_top) {
  constexpr double gap = 7.0, chimney_wall = 12.0;
  for (const double side : {-1.0, 1.0}) {
    const auto both = [&](double a, double b) { return std::pair{x + side * a, x + side * b}; };
    const auto [in, out] = both(t.half - t.wall, t.half);
    s.wall({std::min(in, out), t.top, std::max(in, out), t.mouth});
    const auto [near, far] = both(t.half, t.flange_half);
    s.wall({std::min(near, far), t.top, std::max(near, far), t.top + t.flange});
    const auto [bore, skin] = both(t.half + gap, t.half + gap + chimney_wall);
    s.figure().box({std::min(bore, skin), chimney_top, std::max(bore, skin), t.mouth + 20.0}, "seen");
    s.figure().box({std::min(out, bore), chimney_top + 30.0, std::max(out, bore), t.mouth - 14.0}, "soot-shown");
  }
  s.figure().line({x, t.top - 12.0}, {x, t.mouth + 24.0}, "centre");
  s.figure().line({x - t.flange_half - 10.0, t.top}, {x + t.flange_half + 10.0, t.top}, "ghost");  // the box
}
/// The flange from below, with as many holes as it has.
Spot draw_flange(Sketch& s, Spot middle, double radius, double circle) {
  s.figure().circle(middle, radius, "seen");
  s.figure().circle(middle, 0.42 * radius, "seen");
  s.figure().circle(middle, circle, "circle-of-holes");
  const int holes = s.sizes().count("adapter.flange.holes.count", 24);
  Spot first{};
  for (int i = 0; i < holes; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / holes - 0.25 * std::numbers::pi;
    const Spot at{middle.x + circle * std::cos(angle), middle.y + circle * std::sin(angle)};
    if (i == 0) first = at;
    s.figure().circle(at, holes > 12 ? 2.5 : 4.0, "void-seen");
  }
  return first;
}
void draw_the_tube(Sketch& s) {
  const TubeShown t = tube_shown(s.sizes());
  const double whole = t.mouth - t.top;
  const double engaged = scaled(s.sizes().length("adapter.tube.engaged"), s.sizes().length("adapter.tube.length"),
                                whole, 50.0, whole - t.flange - 12.0);
  constexpr double x = 102.0;
  const double chimney_top = t.mouth - engaged, edge = x + t.half + 19.0;
  draw_tube(s, t, x, chimney_top);
  const double circle = scaled(s.sizes().length("adapter.flange.holes.pitch_circle"),
                               s.sizes().length("adapter.flange.outside"), 52.0, 28.0, 45.0);
  constexpr Spot plan{274.0, 104.0};
  const Spot hole = draw_flange(s, plan, 52.0, circle);
  s.between("adapter.tube.outside", {x - t.half, t.mouth}, {x + t.half, t.mouth}, 28.0);
  s.at("adapter.tube.wall", {x + t.half - 0.5 * t.wall, t.mouth - 6.0}, {edge + 22.0, t.mouth + 18.0});
  s.between("adapter.tube.length", {x - t.flange_half, t.top}, {x - t.flange_half, t.mouth}, 24.0);
  s.between("adapter.tube.engaged", {edge, t.mouth}, {edge, chimney_top}, 22.0);
  s.at("adapter.tube.soot", {x - t.half - 3.5, t.mouth - 22.0}, {x - t.half - 30.0, t.mouth + 22.0});
  s.between("adapter.flange.outside", {x + t.flange_half, t.top}, {x - t.flange_half, t.top}, 26.0);
  s.at("adapter.flange.thickness", {x + t.flange_half - 4.0, t.top + 0.5 * t.flange},
       {x + t.flange_half + 26.0, t.top + 18.0});
  s.at("adapter.flange.holes.count", hole, {hole.x + 14.0, hole.y - 36.0});
  s.between("adapter.flange.holes.pitch_circle", {plan.x - circle, plan.y}, {plan.x + circle, plan.y}, 68.0);
}
}  // namespace

Drawing tube() {
  return {.id = "tube",
          .part = "adapter",
          .title = "Tube and flange",
          .shows =
              "The tube in the chimney, cut through, with the flange that carries it under the box; beside it the "
              "flange from below.",
          .height = 216.0,
          .marks = {{"adapter.tube.outside", "tube, outside"},
                    {"adapter.tube.wall", "its wall"},
                    {"adapter.tube.length", "its length"},
                    {"adapter.tube.engaged", "of that in the chimney"},
                    {"adapter.tube.soot", "soot on each side"},
                    {"adapter.flange.outside", "flange, outside"},
                    {"adapter.flange.thickness", "its thickness"},
                    {"adapter.flange.holes.count", "screw holes"},
                    {"adapter.flange.holes.pitch_circle", "circle of the holes"}},
          .draw = draw_the_tube};
}

namespace {
void draw_the_box(Sketch& s) {
  chart::Figure& figure = s.figure();
  const Length across = s.sizes().length("adapter.box.diameter");
  const double high = scaled(s.sizes().length("adapter.box.height"), across, 150.0, 50.0, 112.0);
  constexpr double left = 96.0, right = 246.0, top = 32.0, sheet = 4.0;
  const double low = top + high;
  figure.box({left - sheet, top, left, low}, "cut-metal");
  figure.box({right, top, right + sheet, low}, "cut-metal");
  for (const double y : {top - sheet, low}) {
    s.wall({left - sheet, y, 150.0, y + sheet});
    s.wall({192.0, y, right + sheet, y + sheet});
  }
  figure.words({171.0, top - 12.0}, "fan", "small", chart::Anchor::middle);
  figure.words({171.0, low + 16.0}, "tube", "small", chart::Anchor::middle);
  const double size = scaled(s.sizes().length("adapter.bleed.diameter"), across, 150.0, 7.0, 24.0);
  const int holes =
      std::clamp(s.sizes().count("adapter.bleed.holes", 200) / 2, 1, static_cast<int>(140.0 / (size + 4.0)));
  const double pitch = 150.0 / holes, middle = low - 0.5 * size - 8.0;
  for (int i = 0; i < holes; ++i) figure.circle({left + (i + 0.5) * pitch, middle}, 0.5 * size, "seen");
  s.between("adapter.box.diameter", {left, low}, {right, low}, 34.0);
  s.between("adapter.box.height", {left - sheet, top}, {left - sheet, low}, 26.0);
  s.at("adapter.box.sheet", {right + 0.5 * sheet, top + 10.0}, {right + 40.0, top});
  s.at("adapter.bleed.holes", {right - 0.5 * pitch, middle}, {right + 40.0, middle});
  s.at("adapter.bleed.diameter", {left + 0.5 * pitch - 0.5 * size, middle}, {left + 34.0, top + 18.0});
}
}  // namespace

Drawing box() {
  return {.id = "box",
          .part = "adapter.box",
          .title = "The box",
          .shows = "The box between tube and fan, cut through, with the holes that let cool air into it.",
          .height = 192.0,
          .marks = {{"adapter.box.diameter", "inside across"},
                    {"adapter.box.height", "inside height"},
                    {"adapter.box.sheet", "sheet"},
                    {"adapter.bleed.holes", "holes for cool air"},
                    {"adapter.bleed.diameter", "size of each"}},
          .draw = draw_the_box};
}
}  // namespace lumwright::report::places
