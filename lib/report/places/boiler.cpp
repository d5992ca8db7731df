#include "report/places/sketch.hpp"

namespace lumwright::report::places {
namespace {
constexpr Pane barrel{92.0, 62.0, 228.0, 138.0}, firebox{26.0, 50.0, 92.0, 172.0}, smokebox{228.0, 62.0, 276.0, 138.0};
constexpr double water = 84.0;  // level

void draw_shell(chart::Figure& figure) {
  figure.box({barrel.left, barrel.top - 7.0, barrel.right, barrel.top}, "felt");
  figure.box({barrel.left, barrel.bottom, barrel.right, barrel.bottom + 7.0}, "felt");
  figure.shape({{firebox.left, water},
                {barrel.right, water},
                {barrel.right, barrel.bottom},
                {firebox.right, barrel.bottom},
                {firebox.right, firebox.bottom},
                {firebox.left, firebox.bottom}},
               "water");
  figure.trace({{firebox.left, firebox.bottom},
                {firebox.left, firebox.top},
                {firebox.right, firebox.top},
                {barrel.left, barrel.top},
                {barrel.right, barrel.top},
                {barrel.right, barrel.bottom},
                {firebox.right, barrel.bottom},
                {firebox.right, firebox.bottom}},
               "seen");
  figure.trace({{smokebox.left, smokebox.top},
                {smokebox.right, smokebox.top},
                {smokebox.right, smokebox.bottom},
                {smokebox.left, smokebox.bottom}},
               "seen");
  figure.box({244.0, 30.0, 262.0, smokebox.top}, "seen");  // the chimney
  figure.line({firebox.left, water}, {barrel.right, water}, "water-line");
}
/// The inner firebox with its grate, and tubes from it to the smokebox.
void draw_fire_side(chart::Figure& figure, int rows) {
  constexpr Pane inner{34.0, 92.0, 82.0, 168.0};
  figure.shape(
      {{inner.left, inner.bottom}, {inner.left, inner.top}, {inner.right, inner.top}, {inner.right, inner.bottom}},
      "void");
  figure.trace(
      {{inner.left, inner.bottom}, {inner.left, inner.top}, {inner.right, inner.top}, {inner.right, inner.bottom}},
      "seen");
  figure.line({inner.left, inner.bottom - 4.0}, {inner.right, inner.bottom - 4.0}, "ghost");
  for (int i = 0; i < rows; ++i) {
    const double y = 100.0 + 32.0 * (i + 0.5) / rows;
    figure.box({inner.right, y - 2.5, barrel.right, y + 2.5}, "void-seen");
  }
}
/// The barrel seen from the smokebox: as many tubes as there are, in rows.
Spot draw_end(chart::Figure& figure, int tubes) {
  constexpr Spot middle{306.0, 102.0};
  figure.circle(middle, 31.0, "seen");
  const int across = tubes <= 4 ? 2 : tubes <= 9 ? 3 : tubes <= 16 ? 4 : 6;
  const double pitch = 40.0 / across;
  Spot last = middle;
  for (int i = 0; i < tubes; ++i) {
    last = {middle.x + pitch * (i % across - 0.5 * (across - 1)), middle.y - 10.0 + pitch * (i / across)};
    figure.circle(last, 0.36 * pitch, "seen");
  }
  return last;
}
void draw_the_boiler(Sketch& s) {
  const int tubes = s.sizes().count("engine.tubes.count", 36);
  chart::Figure& figure = s.figure();
  draw_shell(figure);
  draw_fire_side(figure, std::clamp(tubes / 3, 1, 4));
  const Spot last = draw_end(figure, tubes);
  figure.line({150.0, 62.0}, {150.0, 40.0}, "seen");
  figure.circle({150.0, 30.0}, 11.0, "seen");  // the gauge
  s.at("engine.boiler.water", {112.0, 90.0}, {112.0, 152.0});
  s.at("engine.boiler.volume", {206.0, 72.0}, {206.0, 30.0});
  s.at("engine.boiler.own_blower_from", {145.0, 27.0}, {112.0, 18.0});
  s.at("engine.boiler.working", {156.0, 33.0}, {178.0, 18.0});
  s.at("engine.boiler.lagging", {214.0, 141.0}, {214.0, 158.0});
  s.at("engine.firebox.heating_surface", {50.0, 92.0}, {50.0, 30.0});
  s.at("engine.tubes.count", {306.0, 74.0}, {306.0, 46.0});
  s.at("engine.tubes.bore", last, {306.0, 152.0});
  s.between("engine.tubes.length", {82.0, 138.0}, {228.0, 138.0}, 44.0);
}
}  // namespace

Drawing boiler() {
  return {.id = "boiler",
          .part = "engine",
          .title = "The boiler",
          .shows =
              "The boiler cut lengthwise: firebox at the left, tubes through the water, smokebox at the right; "
              "beside it the tubes seen from the end.",
          .height = 192.0,
          .marks = {{"engine.boiler.water", "water"},
                    {"engine.boiler.volume", "full to the brim"},
                    {"engine.boiler.own_blower_from", "own blower from"},
                    {"engine.boiler.working", "working pressure"},
                    {"engine.boiler.lagging", "felt"},
                    {"engine.firebox.heating_surface", "plates above the fire"},
                    {"engine.tubes.count", "tubes"},
                    {"engine.tubes.bore", "bore of a tube"},
                    {"engine.tubes.length", "length of a tube"}},
          .draw = draw_the_boiler};
}

namespace {
void draw_the_cylinders(Sketch& s) {
  chart::Figure& figure = s.figure();
  s.wall({50.0, 24.0, 150.0, 32.0});
  s.wall({50.0, 88.0, 150.0, 96.0});
  figure.box({112.0, 32.0, 126.0, 88.0}, "seen");
  figure.line({126.0, 60.0}, {186.0, 60.0}, "seen");
  s.wall({228.0, 52.0, 240.0, 108.0});
  s.wall({252.0, 52.0, 264.0, 108.0});
  for (const double x : {226.0, 266.0}) figure.line({x, 4.0}, {x, 30.0}, "ghost");
  figure.words({276.0, 20.0}, "chimney", "small");
  s.at("engine.cylinders.count", {58.0, 28.0}, {24.0, 28.0});
  s.between("engine.cylinders.bore", {84.0, 32.0}, {84.0, 88.0});
  s.between("engine.cylinders.blast_nozzle", {240.0, 52.0}, {252.0, 52.0}, -10.0);
}
}  // namespace

Drawing cylinders() {
  return {.id = "cylinders",
          .part = "engine.cylinders",
          .title = "Cylinders and blast nozzle",
          .shows = "A cylinder cut lengthwise with its piston, and the blast nozzle under the chimney.",
          .height = 116.0,
          .marks = {{"engine.cylinders.count", "cylinders"},
                    {"engine.cylinders.bore", "bore"},
                    {"engine.cylinders.blast_nozzle", "bore of the nozzle"}},
          .draw = draw_the_cylinders};
}
}  // namespace lumwright::report::places
