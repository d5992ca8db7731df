#include "model/solved_supply.hpp"
#include "report/answers.hpp"
#include "report/chart/labels.hpp"
#include "report/picture/parts.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
using namespace chart;
constexpr double headroom = 26.0;

AxisUnit time_unit(const plan::ReportData& data, const TextStyle& style) {
  return {data.supply->series.back().time, data, style};
}
template <class Of>
std::vector<Point> supply_points(const plan::RepeatedLightUps& all, const AxisUnit& time, const AxisUnit& unit, Of of) {
  std::vector<Point> out;
  for (const power::Sample& sample : all.series) out.push_back({time(sample.time), unit(of(sample))});
  return out;
}
Range range_of(const std::vector<Point>& points, const std::vector<Level>& more) {
  Range range{points.front().y, points.front().y};
  for (const Point& p : points) range = {std::min(range.low, p.y), std::max(range.high, p.y)};
  for (const Level& level : more) range = {std::min(range.low, level.y), std::max(range.high, level.y)};
  return rounded_out(range, 4);
}
/// Every second light-up on a grey ground, with numbers where there is room for them.
void draw_light_ups(Plot& plot, Figure& figure, const plan::RepeatedLightUps& all, const AxisUnit& time,
                    bool numbered) {
  const double width = plot.x().at(time(all.each)) - plot.x().at(0.0);
  if (width < 4.0) return;
  const int every = static_cast<int>(std::ceil(22.0 / width)), drawn = static_cast<int>(all.ends.size());
  const auto from = [&](int i) { return i == 0 ? 0.0 : time(all.ends[static_cast<std::size_t>(i) - 1]); };
  for (int i = 0; i < drawn; i += 2) plot.stripe({from(i), from(i + 1)}, "stripe");
  if (!numbered) return;
  for (int i = every - 1; i < drawn; i += every) {
    const double middle = 0.5 * (plot.x().at(from(i)) + plot.x().at(from(i + 1)));
    figure.words({middle, plot.area().bottom - 6.0}, std::to_string(i + 1), "small", Anchor::middle);
  }
}
void draw_supply(const plan::ReportData& data, const TextStyle& style, Tag parent, const About& about, double width) {
  const plan::RepeatedLightUps& all = *data.supply;
  const AxisUnit time = time_unit(data, style), volts(all.series.front().voltage, data, style);
  const auto by_current = [](const power::Sample& a, const power::Sample& b) { return a.current < b.current; };
  const AxisUnit amps(std::max_element(all.series.begin(), all.series.end(), by_current)->current, data, style);
  const double each = width < 500.0 ? 120.0 : 140.0, bottom = headroom + 2.0 * each + plot_gap;
  Figure figure(parent, about, width, bottom + 42.0);
  const Axis x{
      {0.0, time(all.series.back().time)}, "running time of the fan, " + time.symbol(), figure.narrow() ? 5 : 9, false};
  const auto voltage = supply_points(all, time, volts, [](const power::Sample& s) { return s.voltage; });
  const auto current = supply_points(all, time, amps, [](const power::Sample& s) { return s.current; });
  std::vector<Level> levels;
  if (all.stop_at) levels.push_back({volts(*all.stop_at), "stop, " + volts.text(*all.stop_at), "level bad"});
  if (all.least_input)
    levels.push_back({volts(*all.least_input), "least input of the step-up, " + volts.text(*all.least_input), "level"});
  Plot upper(figure, {axis_margin, headroom, width - 10.0, headroom + each}, x,
             {range_of(voltage, levels), "pack voltage, " + volts.symbol(), 4});
  draw_light_ups(upper, figure, all, time, false);
  upper.curve(voltage, "line cold");
  upper.levels(levels);
  upper.mark(voltage.back(), Marker::diamond, "dot-cold");
  Axis numbered = x;
  numbered.numbered = true;
  Range span = range_of(current, {});
  span.low = std::min(span.low, 0.0);
  Plot lower(figure, {axis_margin, bottom - each, width - 10.0, bottom}, numbered,
             {span, "pack current, " + amps.symbol(), 4});
  draw_light_ups(lower, figure, all, time, true);
  lower.curve(current, "line hot dashed");
  lower.mark(current.back(), Marker::diamond, "dot-hot");
}
std::string supply_in_a_sentence(const plan::ReportData& data, const TextStyle& style) {
  const plan::RepeatedLightUps& all = *data.supply;
  const std::string each = in_page_figures(data.assessment, {all.each}, style);
  const std::string why = told(data.assessment, "power.stop_reason", style);
  const std::string last = in_page_figures(data.assessment, {all.last}, style);
  const std::string lengths = each == last     ? each + (all.whole == 1 ? "" : " each")
                              : all.whole == 2 ? fmt::format("{} and {}", each, last)
                                               : fmt::format("{} at first and {} at last", each, last);
  if (all.whole == 0)
    return fmt::format("One charge does not last for one light-up of {}: after {}, {}.", each,
                       in_page_figures(data.assessment, {all.series.back().time}, style), why);
  return fmt::format(
      "One charge gives {} of {}; after {} of running, {}. Grey and white stretches are the "
      "light-ups, each begun where the last one ended: rest between them is not counted in your favour.",
      all.whole == 1 ? "one whole light-up" : fmt::format("{} whole light-ups", all.whole), lengths,
      in_page_figures(data.assessment, {all.series.back().time}, style), why);
}
std::string supply_described(const plan::ReportData& data, const TextStyle& style) {
  const plan::RepeatedLightUps& all = *data.supply;
  const auto say = [&](AnyQuantity q) { return in_page_figures(data.assessment, {q}, style); };
  return fmt::format("Pack voltage falls from {} to {} while the current goes from {} to {}, over {} of running.",
                     say(all.series.front().voltage), say(all.series.back().voltage), say(all.series.front().current),
                     say(all.series.back().current), say(all.series.back().time));
}
}  // namespace

Picture picture_of_supply(const plan::ReportData& data, const TextStyle& style) {
  Picture picture{.id = "supply", .title = "The pack, light-up after light-up", .says = "", .description = ""};
  if (!data.supply || data.supply->series.size() < 2) {
    picture.not_drawn = data.supply ? "the pack does not carry the load for any time" : why_missing(data.supply);
    return picture;
  }
  return drawn(
      std::move(picture), supply_in_a_sentence(data, style), supply_described(data, style),
      [&data, style](Tag parent, const About& about, double width) { draw_supply(data, style, parent, about, width); });
}
}  // namespace lumwright::report
