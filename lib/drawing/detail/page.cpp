#include "drawing/detail/page.hpp"
#include "data/first_words.hpp"
#include "drawing/detail/lettering.hpp"
#include "quantity/errors.hpp"
#include <fmt/format.h>

namespace lumwright::drawing {
namespace {
constexpr double title_height = 30.0, strip_height = 17.0, bar_column = 15.0;
constexpr double clearance = 5.0;  // what 3 % of stretch may move a view towards the frame

Patch patch(const Placed& placed) {
  Inks all = placed.captioned ? captioned_ink(placed.view) : ink(placed.view);
  if (placed.turned) all = turned(std::move(all));
  Patch out{std::nullopt, shifted(std::move(all), spot(placed.at))};
  if (placed.window) out.window = Extent{spot(placed.window->low), spot(placed.window->high)};
  return out;
}
void draw_stamp(Inks& out, const Extent& area) {
  const double slant = std::atan2(area.high.y - area.low.y, area.high.x - area.low.x);
  const Spot middle = 0.5 * (area.low + area.high);
  letter(out, middle, "DRAFT", {36.0, Across::centre, Up::middle, slant}, Layer::stamp);
}
// Over the frame, where no view comes: one at the left, the other at the right.
void draw_first_words(Inks& out, const Extent& frame) {
  bool left = true;
  for (const std::string& words : data::first_words()) {
    const double x = left ? frame.low.x : frame.high.x;
    letter(out, {x, frame.high.y + 1.0}, words, {2.5, left ? Across::left : Across::right}, Layer::frame);
    left = false;
  }
}
}  // namespace

Regions regions(const Paper& paper, bool to_cut) {
  const double margin = in(data::frame_margin(), mm);
  const Extent frame{{margin, margin}, {in(paper.width, mm) - margin, in(paper.height, mm) - margin}};
  const double title_top = frame.low.y + title_height;
  if (!(frame.high.x - frame.low.x >= 185.0 && frame.high.y - title_top >= 200.0 && in(paper.height, mm) < 2000.0))
    throw ModelError(fmt::format("paper of {:g} x {:g} mm has no room for the bars and a title block",
                                 in(paper.width, mm), in(paper.height, mm)));
  return {.frame = frame,
          .title = {frame.low, {frame.high.x, title_top}},
          .strip = {{frame.low.x, title_top}, {frame.high.x, title_top + strip_height}},
          .area = {{frame.low.x + (to_cut ? bar_column : clearance), title_top + (to_cut ? strip_height : clearance)},
                   {frame.high.x - clearance, frame.high.y - clearance}}};
}
Figures figures_of(const Sheet& sheet) {
  for (const Placed& placed : sheet.views)
    if (!placed.view.name.empty()) return placed.view.figures;  // crosses of a split view have no name
  return Figures::mm;
}

Page compose(const Drawing& drawing, std::size_t sheet) {
  const bool to_cut = drawing.sheets.at(sheet).to_cut;
  const Regions where = regions(drawing.paper, to_cut);
  Page page{
      in(drawing.paper.width, mm), in(drawing.paper.height, mm), {}, {}, 0.5 * (where.frame.low + where.frame.high)};
  if (drawing.title.draft) draw_stamp(page.fixed, where.area);
  const Extent& f = where.frame;
  stroke(page.fixed, {f.low, {f.high.x, f.low.y}, f.high, {f.low.x, f.high.y}}, Layer::frame, true);
  draw_title_block(page.fixed, where.title, drawing, sheet);
  draw_first_words(page.fixed, f);
  for (const Placed& placed : drawing.sheets.at(sheet).views) page.to_scale.push_back(patch(placed));
  if (!to_cut) return page;
  draw_legend(page.fixed, where, page.to_scale);
  Patch bars;
  draw_bars(bars.inks, where, figures_of(drawing.sheets.at(sheet)) != Figures::mm);
  page.to_scale.push_back(std::move(bars));
  return page;
}

void require_stretch(const PrintOptions& options) {
  for (const double factor : {options.stretch_x, options.stretch_y})
    if (!(factor >= 0.97 && factor <= 1.03))
      throw ModelError(fmt::format("stretch {:g} is not within 3 % of 1", factor));
}
Spot stretched(Spot p, Spot pivot, const PrintOptions& options) {
  return {pivot.x + options.stretch_x * (p.x - pivot.x), pivot.y + options.stretch_y * (p.y - pivot.y)};
}
}  // namespace lumwright::drawing
