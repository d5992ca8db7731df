// What is measured before anything is cut: a level bar of 100 mm and an upright one of 150 mm, and what the lines mean.
#include "drawing/detail/lettering.hpp"
#include "drawing/detail/page.hpp"
#include <array>

namespace lumwright::drawing {
namespace {
constexpr Layer bar_layer = Layer::calibration;
constexpr double level_length = 100.0, upright_length = 150.0;

void ticks(Inks& out, Spot origin, Spot way, double length) {
  const Spot side = left_of(way);
  stroke(out, {origin, origin + length * way}, bar_layer);
  for (int i = 0; 10.0 * i <= length; ++i) {
    const Spot at = origin + 10.0 * i * way;
    const bool end = i == 0 || 10.0 * i == length;
    const double half = end ? 2.5 : i % 5 == 0 ? 1.8 : 1.0;
    stroke(out, {at - half * side, at + half * side}, bar_layer);
  }
}
}  // namespace

void draw_bars(Inks& out, const Regions& where, bool inches) {
  const Spot origin{where.frame.low.x + 9.0, where.strip.low.y + 9.0};
  const Spot right{1.0, 0.0}, up{0.0, 1.0};
  ticks(out, origin, right, level_length);
  ticks(out, origin, up, upright_length);
  const double small = in(data::letter_height("small"), mm), note = in(data::letter_height("note"), mm);
  letter(out, origin + Spot{50.0, -7.5}, "Measure both bars first: print at 100 %, no fit to page.",
         {note, Across::centre}, bar_layer);
  letter(out, origin + Spot{52.0, 3.2}, inches ? "must be 100.0 mm, 3.937 in" : "must measure 100.0 mm",
         {small, Across::left}, bar_layer);
  letter(out, origin + Spot{100.0, 3.2}, "100", {small, Across::centre}, bar_layer);
  const Lettering upward{small, Across::left, Up::base, pi / 2.0};
  letter(out, origin + Spot{-3.2, 3.0}, "square if 141.4 mm between the two 100 ticks", upward, bar_layer);
  letter(out, origin + Spot{-3.2, 98.0}, "100", upward, bar_layer);
  letter(out, origin + Spot{-3.2, 108.0}, inches ? "must be 150.0 mm, 5.906 in" : "must measure 150.0 mm", upward,
         bar_layer);
  letter(out, origin + Spot{-3.2, 148.0}, "150", upward, bar_layer);
}

void draw_legend(Inks& out, const Regions& where, const std::vector<Patch>& patches) {
  std::array<bool, all_layers.size()> used{};
  for (const Patch& patch : patches)
    for (const Ink& ink : patch.inks) used.at(static_cast<std::size_t>(ink.layer)) = true;
  const double note = in(data::letter_height("note"), mm);
  const double left = where.frame.low.x + 118.0;
  int count = 0;
  for (const Layer kind : all_layers) {
    if (!used.at(static_cast<std::size_t>(kind)) || pen(kind).legend.empty()) continue;
    const int column = count / 4, row = count % 4;
    const Spot at{left + 37.0 * column, where.strip.high.y - 2.8 - 3.8 * row};
    out.push_back({Stroke{{at, at + Spot{12.0, 0.0}}, false, false}, Layer::frame, kind});
    letter(out, at + Spot{14.0, -note * 0.45}, pen(kind).legend, {note * 0.9}, Layer::frame);
    ++count;
  }
}
}  // namespace lumwright::drawing
