#include "report/chart/cascade.hpp"
#include "report/chart/labels.hpp"
#include <algorithm>
#include <stdexcept>

namespace lumwright::report::chart {
namespace {
constexpr double thick = 14.0, thin = 8.0, row_gap = 9.0, total_gap = 7.0, beneath = 42.0, above = 4.0;

double name_room(double width) { return width < 500.0 ? 112.0 : 176.0; }
double row_height(const CascadeRow& step, double width) {
  const double bars = step.bars.size() > 1 ? thick + thin + 2.0 : thick;
  const double lines = static_cast<double>(lines_of(step.name, name_room(width) - 8.0, letter).size());
  return std::max(bars, 1.15 * letter * lines) + row_gap + (step.total ? total_gap : 0.0);
}
Range span(const std::vector<CascadeRow>& steps) {
  Range range{0.0, 0.0};
  for (const CascadeRow& step : steps)
    for (const Bar& bar : step.bars) {
      range.low = std::min({range.low, bar.from, bar.to});
      range.high = std::max({range.high, bar.from, bar.to});
    }
  if (!(range.low < range.high)) throw std::logic_error("a cascade of nothing");
  return range;
}
/// The stretch of paper for the bars: words beside the longest of them must still stand on it.
Ruler scale_for(const std::vector<CascadeRow>& steps, double left, double right) {
  Ruler scale{span(steps), left, right};
  for (int i = 0; i < 20; ++i) {
    double over = 0.0;
    for (const CascadeRow& step : steps)
      for (const Bar& bar : step.bars)
        over = std::max(over, scale.at(std::max(bar.from, bar.to)) + 6.0 + text_width(bar.words, letter) - right);
    if (over <= 0.0) break;
    scale.to -= over;
    if (scale.to < left + 40.0) {
      scale.to = left + 40.0;
      break;
    }
  }
  return scale;
}
void draw_axis(Figure& figure, const Ruler& scale, double bottom, const std::string& title) {
  const Ticks ticks = nice_ticks(scale.numbers, figure.narrow() ? 3 : 6);
  for (const double at : ticks.at) {
    const double x = scale.at(at);
    figure.line({x, above}, {x, bottom}, at == 0.0 ? "axis" : "grid");
    figure.words({x, bottom + letter + 3.0}, tick_text(at, ticks.decimals), "tick", Anchor::middle);
  }
  figure.words({figure.width() - 2.0, bottom + 2.4 * letter + 3.0}, title, "axis-title", Anchor::end);
}
struct Written {
  Spot at;
  std::string words;
  const char* look;
};
/// Words are for later: no line may run over them. Gives where the next bar may begin.
double draw_bar(Figure& figure, const Ruler& scale, const Bar& bar, double top, double height,
                std::vector<Written>& written) {
  const double a = scale.at(std::min(bar.from, bar.to)), b = std::max(scale.at(std::max(bar.from, bar.to)), a + 1.0);
  figure.box({a, top, b, top + height}, bar.look);
  if (bar.hatch) figure.hatched({a, top, b, top + height}, *bar.hatch);
  written.push_back(
      {{b + 6.0, top + 0.5 * height + 0.36 * letter}, bar.words, height < thick ? "small halo" : "label halo"});
  return top + height + 2.0;
}
}  // namespace

double cascade_height(const std::vector<CascadeRow>& steps, const CascadeLook& look, double width) {
  double height = above + beneath + legend_height(look.keys, width);
  for (const CascadeRow& step : steps) height += row_height(step, width);
  return height;
}

void draw_cascade(Figure& figure, const std::vector<CascadeRow>& steps, const CascadeLook& look) {
  const double width = figure.width(), left = name_room(width);
  const Ruler scale = scale_for(steps, left, width - 4.0);
  double bottom = above;
  for (const CascadeRow& step : steps) bottom += row_height(step, width);
  draw_axis(figure, scale, bottom, look.axis_title);
  double y = above;
  std::vector<double> ended;  // of the row before
  std::vector<Written> written;
  for (const CascadeRow& step : steps) {
    const double height = row_height(step, width);
    double top = y + 0.5 * row_gap;
    if (step.total) {
      figure.line({0.0, y + 0.5 * total_gap}, {width, y + 0.5 * total_gap}, "rule");
      top += total_gap;
    }
    double base = top + letter - 1.0;
    for (const std::string& words : lines_of(step.name, left - 8.0, letter)) {
      figure.words({left - 8.0, base}, words, step.total ? "label strong" : "label", Anchor::end);
      base += 1.15 * letter;
    }
    for (std::size_t i = 0; i < step.bars.size(); ++i) {
      if (i == 0 && !ended.empty() && !step.total)
        figure.line({scale.at(step.bars[i].from), ended[0]}, {scale.at(step.bars[i].from), top}, "carry");
      const double next = draw_bar(figure, scale, step.bars[i], top, i == 0 ? thick : thin, written);
      if (i == 0) ended = {top + thick};
      top = next;
    }
    y += height;
  }
  for (const Written& w : written) figure.words(w.at, w.words, w.look);
  legend(figure, look.keys, 0.0, bottom + beneath - 2.0, width);
}
}  // namespace lumwright::report::chart
