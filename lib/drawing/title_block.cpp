// The strip at the foot of every sheet: what it is, of what, how large, which sheet.
#include "drawing/detail/lettering.hpp"
#include "drawing/detail/page.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::drawing {
namespace {
constexpr Layer block_layer = Layer::frame;
double height_of(std::string_view use) { return in(data::letter_height(use), mm); }

// The words of a cell never leave it: smaller down to the smallest letters, then cut short.
void fill(Inks& out, const Extent& cell, const std::string& label, const std::string& words, double height) {
  const double small = height_of("small"), inset = 1.5, room = cell.high.x - cell.low.x - 2.0 * inset;
  letter(out, {cell.low.x + inset, cell.high.y - inset - small}, label, {small}, block_layer);
  const std::string line = clean(words);
  const double natural = std::max(wider * width_to_height(line), 1e-9);
  const double fitting = std::clamp(room / natural, small, height);
  const double below = cell.high.y - inset - small - (cell.high.y - cell.low.y - inset - small + fitting) / 2.0;
  if (!line.empty())
    letter(out, {cell.low.x + inset, below}, fitted(line, room / fitting / wider * (1.0 + 1e-9)), {fitting},
           block_layer);
}
// What all parts of a sheet agree on, or where to read on.
template <class Of>
std::string shared(const Sheet& sheet, Of of) {
  std::string found;
  bool first = true;
  for (const Placed& placed : sheet.views) {
    if (placed.view.name.empty()) continue;  // crosses of a split view
    const std::string here = of(placed.view);
    if (!first && here != found) return "see each part";
    found = here;
    first = false;
  }
  return found.empty() ? "-" : found;
}
std::string names(const Sheet& sheet) {
  std::vector<std::string> all;
  for (const Placed& placed : sheet.views)
    if (!placed.view.name.empty()) all.push_back(placed.view.name);
  return all.empty() ? "-" : fmt::format("{}", fmt::join(all, "; "));
}
std::string thickness(const View& view) { return view.thickness ? size_text(*view.thickness, view.figures) : ""; }
std::string scale_of(const Sheet& sheet) {
  if (!sheet.to_scale) return "-";
  double scale = 1.0;  // of the first that is not at true size: the others are tables
  for (const Placed& placed : sheet.views)
    if (scale == 1.0) scale = placed.view.scale;
  return scale >= 1.0 ? dimension_number(scale) + ":1" : "1:" + dimension_number(1.0 / scale);
}
struct BlockCell {
  double until;  // share of the block's width
  std::string label;
  std::string words;
  double height;
};
// First angle, ISO 5456-2, from memory: the cone lies with its small end to the left, and what is seen from there
// stands to the right of it.
void projection_sign(Inks& out, Spot middle) {
  constexpr double small = 1.3, large = 2.6, half_length = 2.6, apart = 4.6;
  const Spot cone = middle - Spot{apart, 0.0}, rings = middle + Spot{apart, 0.0};
  stroke(out,
         {cone + Spot{-half_length, -small}, cone + Spot{half_length, -large}, cone + Spot{half_length, large},
          cone + Spot{-half_length, small}},
         block_layer, true);
  for (const double radius : {small, large})
    out.push_back({Bow{rings, radius, 0.0, 2.0 * pi}, block_layer, Layer::dimension});
  for (const Spot& at : {cone, rings}) stroke(out, {at - Spot{3.6, 0.0}, at + Spot{3.6, 0.0}}, block_layer);
  stroke(out, {rings - Spot{0.0, 3.4}, rings + Spot{0.0, 3.4}}, block_layer);
}
std::string_view sizes_in(Figures figures) {
  switch (figures) {
    case Figures::mm:
      return "Sizes in mm. ";
    case Figures::mm_inches:
      return "Sizes in mm (inches). ";
    case Figures::inches_mm:
      return "Sizes in inches (mm). ";
    case Figures::inches:
      return "Sizes in inches. ";
  }
  return "";
}
}  // namespace

void draw_title_block(Inks& out, const Extent& box, const Drawing& drawing, std::size_t sheet) {
  const TitleBlock& t = drawing.title;
  const Sheet& here = drawing.sheets.at(sheet);
  const double left = box.low.x, width = box.high.x - left, right = box.high.x;
  const double foot = box.low.y + 6.0, middle = foot + 12.0, top = box.high.y;
  const double note = height_of("note"), name = height_of("name");
  const auto row = [&](double low, double high, const std::vector<BlockCell>& cells) {
    double from = left;
    stroke(out, {{left, high}, {right, high}}, block_layer);
    for (const BlockCell& cell : cells) {
      const double to = left + cell.until * width;
      fill(out, {{from, low}, {to, high}}, cell.label, cell.words, cell.height);
      if (cell.until < 1.0) stroke(out, {{to, low}, {to, high}}, block_layer);
      from = to;
    }
  };
  row(middle, top,
      {{0.42, "title", t.draft ? "DRAFT " + t.name : t.name, height_of("title")},
       {0.62, "material", shared(here, [](const View& v) { return v.material; }), name},
       {0.76, "thickness", shared(here, thickness), name},
       {0.87, "scale", scale_of(here), height_of("title")},
       {1.0, "sheet", fmt::format("{} of {}", sheet + 1, drawing.sheets.size()), name}});
  row(foot, middle,
      {{0.42, here.to_cut ? "part" : "drawing", names(here), name},
       {0.55, "owner", "", note},
       {0.66, "drawn by", t.drawn_by, note},
       {0.77, "approved by", "", note},
       {0.87, "date of issue", t.date, note},
       {1.0, "views", "", note}});
  stroke(out, {{left, foot}, {right, foot}}, block_layer);
  projection_sign(out, {left + 0.935 * width, foot + 4.6});
  std::string rule(sizes_in(figures_of(here)));
  if (here.to_cut && !t.tolerance.empty()) rule += "General: " + t.tolerance + ".";
  const std::string number = clean(t.number, 40);
  const double space = width / (wider * note) - 2.0 * (1.0 + width_to_height(number) / 2.0);
  letter(out, {left + 1.5, box.low.y + 1.9}, fitted(clean(rule), space), {note * 0.9}, block_layer);
  letter(out, {right - 1.5, box.low.y + 1.9}, number, {note * 0.9, Across::right}, block_layer);
}
}  // namespace lumwright::drawing
