#include "report/places/sketch.hpp"

namespace lumwright::report::places {
namespace {
/// Broken pieces of a size, packed from the grate up to a height; the first of them.
Spot draw_bed(chart::Figure& figure, const Pane& area, double size) {
  Spot first{0.0, 0.0};
  const int rows = std::max(1, static_cast<int>(area.height() / size + 0.3)),
            across = std::max(1, static_cast<int>(area.width() / size));
  const double high = area.height() / rows, wide = area.width() / (across + 0.5);
  const double r = 0.47 * wide, h = 0.48 * high, c = 0.5 * r;
  for (int row = 0; row < rows; ++row)
    for (int i = 0; i < across; ++i) {
      const double x = area.left + (i + (row % 2 == 0 ? 0.5 : 1.0)) * wide, y = area.bottom - (row + 0.5) * high;
      figure.shape(
          {{x - r, y + 0.4 * h}, {x - c, y - h}, {x + c, y - h}, {x + r, y - 0.4 * h}, {x + c, y + h}, {x - c, y + h}},
          "lump");
      if (row == rows - 1 && i == across / 2) first = {x, y};
    }
  return first;
}
void draw_the_grate(Sketch& s) {
  chart::Figure& figure = s.figure();
  const Length length = s.sizes().length("engine.grate.length"), width = s.sizes().length("engine.grate.width");
  const double across = scaled(width, length, 130.0, 40.0, 104.0);
  const Pane plan{44.0, 24.0, 174.0, 24.0 + across};
  figure.box(plan, "seen");
  for (double y = plan.top + 6.0; y < plan.bottom - 4.0; y += 9.0)
    s.wall({plan.left, y, plan.right, std::min(y + 4.0, plan.bottom)});
  const double high =
      scaled(s.sizes().length("engine.air_entry.height"), s.sizes().length("engine.air_entry.width"), 84.0, 16.0, 70.0);
  const Pane entry{232.0, 54.0, 316.0, 54.0 + high};
  figure.box({220.0, 36.0, 328.0, entry.bottom + 8.0}, "seen");
  figure.box(entry, "void-seen");
  for (double x = 222.0; x < 326.0; x += 9.0) s.wall({x, 28.0, x + 4.0, 36.0});
  s.between("engine.grate.length", {plan.left, plan.bottom}, {plan.right, plan.bottom}, 14.0);
  s.between("engine.grate.width", {plan.left, plan.top}, {plan.left, plan.bottom}, 18.0);
  s.at("engine.grate.open_share", {plan.right - 30.0, plan.top + 12.5}, {plan.right + 20.0, plan.top + 4.0});
  s.between("engine.air_entry.width", {entry.left, entry.bottom}, {entry.right, entry.bottom}, 42.0);
  s.between("engine.air_entry.height", {entry.left + 18.0, entry.top}, {entry.left + 18.0, entry.bottom});
}
}  // namespace

Drawing grate() {
  return {.id = "grate",
          .part = "engine.grate",
          .title = "The grate, and the air under it",
          .shows = "The grate from above with its bars, and the opening in front of it that lets air in from below.",
          .height = 172.0,
          .marks = {{"engine.grate.length", "length"},
                    {"engine.grate.width", "width"},
                    {"engine.grate.open_share", "open part"},
                    {"engine.air_entry.width", "width of the air's opening"},
                    {"engine.air_entry.height", "its height"}},
          .draw = draw_the_grate};
}

namespace {
void draw_the_fire(Sketch& s) {
  chart::Figure& figure = s.figure();
  const Length bed = s.sizes().length("fuel.bed");
  constexpr Pane room{90.0, 16.0, 250.0, 136.0};
  const double deep = 84.0, top = room.bottom - deep;
  const double size = scaled(s.sizes().length("fuel.lump"), bed, deep, 10.0, 60.0);
  const double burns = scaled(s.sizes().length("fuel.burn_depth"), bed, deep, 8.0, deep);
  figure.box({room.left, room.bottom - burns, room.right, room.bottom}, "glow");
  const Spot lump = draw_bed(figure, {room.left, top, room.right, room.bottom}, size);
  figure.line({room.left, top}, {room.right, top}, "ghost");
  s.wall({room.left - 6.0, room.top, room.left, room.bottom + 16.0});
  s.wall({room.right, room.top, room.right + 6.0, room.bottom + 16.0});
  for (double x = room.left + 2.0; x < room.right - 4.0; x += 11.0)
    s.wall({x, room.bottom, x + 5.0, room.bottom + 8.0});
  s.between("fuel.bed", {room.left - 6.0, top}, {room.left - 6.0, room.bottom}, 26.0);
  s.at("fuel.lump", lump, {lump.x, top - 22.0});
  s.between("fuel.burn_depth", {room.right + 6.0, room.bottom}, {room.right + 6.0, room.bottom - burns}, 26.0);
}
}  // namespace

Drawing fire() {
  return {.id = "fire",
          .part = "fuel",
          .title = "The fire",
          .shows = "The fire on its grate, cut through: pieces of fuel, as deep as the bed.",
          .height = 168.0,
          .marks = {{"fuel.bed", "depth of the fire"},
                    {"fuel.lump", "size of the pieces"},
                    {"fuel.burn_depth", "depth that uses up the oxygen"}},
          .draw = draw_the_fire};
}
}  // namespace lumwright::report::places
