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
  letter(out, {cell.low.x + inset, below}, fitted(line, room / fitting / wider), {fitting}, block_layer);
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
  const double left = box.low.x, right = box.high.x, width = right - left;
  const double foot = box.low.y + 6.0, middle = foot + 12.0, top = box.high.y;
  const double a = left + 0.46 * width, b = left + 0.72 * width, c = left + 0.86 * width;
  stroke(out, {{left, top}, {right, top}}, block_layer);
  for (const double y : {foot, middle}) stroke(out, {{left, y}, {right, y}}, block_layer);
  for (const double x : {a, b, c}) stroke(out, {{x, foot}, {x, top}}, block_layer);

  const double note = height_of("note"), name = height_of("name");
  fill(out, {{left, middle}, {a, top}}, "title", t.draft ? "DRAFT " + t.name : t.name, height_of("title"));
  fill(out, {{left, foot}, {a, middle}}, "part", names(here), name);
  fill(out, {{a, middle}, {b, top}}, "material", shared(here, [](const View& v) { return v.material; }), name);
  fill(out, {{a, foot}, {b, middle}}, "thickness", shared(here, thickness), name);
  fill(out, {{b, middle}, {c, top}}, "scale", "1:1", height_of("title"));
  fill(out, {{b, foot}, {c, middle}}, "drawn by", t.drawn_by.empty() ? "-" : t.drawn_by, note);
  fill(out, {{c, middle}, {right, top}}, "sheet", fmt::format("{} of {}", sheet + 1, drawing.sheets.size()), name);
  fill(out, {{c, foot}, {right, middle}}, "date", t.date.empty() ? "-" : t.date, note);
  std::string rule(sizes_in(figures_of(here)));
  if (!t.tolerance.empty()) rule += "No limits written: " + t.tolerance + ".";
  const std::string number = clean(t.number, 40);
  const double space = width / (wider * note) - 2.0 * (1.0 + width_to_height(number) / 2.0);
  letter(out, {left + 1.5, box.low.y + 1.9}, fitted(clean(rule), space), {note * 0.9}, block_layer);
  letter(out, {right - 1.5, box.low.y + 1.9}, number, {note * 0.9, Across::right}, block_layer);
}
}  // namespace lumwright::drawing
