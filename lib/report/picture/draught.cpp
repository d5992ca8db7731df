#include "report/answers.hpp"
#include "report/picture/parts.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
using namespace chart;
struct Axes {
  AxisUnit flow, pressure;
  int hot_flow, hot_pressure, cold_flow, cold_pressure;  // figures of what is a result only where there is a fan
};
Axes axes_of(const plan::ReportData& data, const TextStyle& style) {
  const plan::DraughtCurves& curves = *data.draught;
  const auto figures = [&](std::string_view key) {
    const model::Result* result = plan::find_result(data.assessment, key);
    return result != nullptr ? plan::figures_of(*result, style.units) : 2;
  };
  return {AxisUnit(curves.widest, data, style), AxisUnit(curves.highest, data, style),
          figures("draught.air_flow"),          figures("draught.smokebox_depression"),
          figures("draught.cold_air_flow"),     figures("draught.cold_smokebox_depression")};
}
std::vector<Point> points(const std::vector<plan::FlowPoint>& curve, const Axes& axes) {
  std::vector<Point> out;
  out.reserve(curve.size());
  for (const plan::FlowPoint& p : curve) out.push_back({axes.flow(p.flow), axes.pressure(p.pressure)});
  return out;
}
std::vector<Slice> slices(const std::vector<plan::FlowBand>& band, const Axes& axes, Pressure ceiling) {
  std::vector<Slice> out;
  out.reserve(band.size());
  for (const plan::FlowBand& b : band)
    out.push_back({axes.flow(b.flow), axes.pressure(b.low), axes.pressure(b.high.value_or(ceiling))});
  return out;
}
std::string hot_at(const plan::DraughtCurves& c, const Axes& axes) {
  return axes.pressure.text(c.hot.at.pressure, axes.hot_pressure) + " at " +
         axes.flow.text(c.hot.at.flow, axes.hot_flow);
}
std::string cold_at(const plan::DraughtCurves& c, const Axes& axes) {
  return axes.pressure.text(c.cold.at.pressure, axes.cold_pressure) + " at " +
         axes.flow.text(c.cold.at.flow, axes.cold_flow);
}
void draw_state(Plot& plot, const plan::DraughtState& state, const Axes& axes, const std::string& look) {
  plot.curve(points(state.path, axes), look + " dashed");
  plot.curve(points(state.fan, axes), look);
}
void draw_stall(Plot& plot, const plan::StallFlows& stall, const Axes& axes) {
  plot.stripe({0.0, axes.flow(stall.to)}, "stripe");
  plot.stripe({axes.flow(stall.from), axes.flow(stall.to)}, Hatch::slant);
}
std::vector<Key> keys(const plan::DraughtCurves& c) {
  const bool fan = !c.hot.fan.empty();
  std::vector<Key> keys;
  if (fan) keys.push_back({"fan, fire alight", "line hot", c.fan_band.empty() ? "" : "band hot"});
  keys.push_back({"gas path, fire alight", "line hot dashed", c.path_band.empty() ? "" : "band hot"});
  if (fan) keys.push_back({"fan, cold", "line cold"});
  keys.push_back({"air path, cold", "line cold dashed"});
  if (!c.hot.others.empty()) keys.push_back({"may settle here too", "line hot", "", static_cast<int>(Marker::cross)});
  if (c.stall) {
    keys.push_back({"stalled", "", "stripe"});
    keys.push_back({"stalls and recovers", "", "stripe", -1, static_cast<int>(Hatch::slant)});
  }
  return keys;
}
void note_both(Plot& plot, const plan::DraughtCurves& c, const Axes& axes) {
  const auto point = [&](const plan::FlowPoint& p) { return Point{axes.flow(p.flow), axes.pressure(p.pressure)}; };
  plot.mark(point(c.cold.at), Marker::square, "line cold");
  plot.mark(point(c.hot.at), Marker::circle, "dot-hot");
  plot.note(point(c.hot.at), "alight: " + hot_at(c, axes), "label strong halo");
  plot.note(point(c.cold.at), "cold: " + cold_at(c, axes), "label strong halo");
}
void draw_draught(const plan::ReportData& data, const TextStyle& style, Tag parent, const About& about, double width) {
  const plan::DraughtCurves& c = *data.draught;
  const Axes axes = axes_of(data, style);
  const std::vector<Key> legend_keys = keys(c);
  const double height = width < 500.0 ? 250.0 : 330.0, legend_top = height + 24.0 + 46.0;
  Figure figure(parent, about, width, legend_top + legend_height(legend_keys, width));
  const Axis x{{0.0, axes.flow(c.widest)}, "flow at the fan, " + axes.flow.symbol(), figure.narrow() ? 4 : 7};
  const Axis y{{0.0, axes.pressure(c.highest)}, "suction, " + axes.pressure.symbol(), figure.narrow() ? 4 : 6};
  Plot plot(figure, {axis_margin, 24.0, width - 10.0, 24.0 + height}, x, y);
  if (c.stall) draw_stall(plot, *c.stall, axes);
  plot.band(slices(c.fan_band, axes, 2.0 * c.highest), "band hot");
  plot.band(slices(c.path_band, axes, 2.0 * c.highest), "band hot");
  draw_state(plot, c.cold, axes, "line cold");
  draw_state(plot, c.hot, axes, "line hot");
  for (const plan::FlowPoint& other : c.hot.others)
    plot.mark({axes.flow(other.flow), axes.pressure(other.pressure)}, Marker::cross, "line hot");
  note_both(plot, c, axes);
  legend(figure, legend_keys, 0.0, legend_top, width);
}
std::string draught_in_a_sentence(const plan::ReportData& data, const TextStyle& style) {
  const plan::DraughtCurves& c = *data.draught;
  const Axes axes = axes_of(data, style);
  if (c.hot.fan.empty())
    return fmt::format("The measured flow asks for {} with the fire alight. No fan is judged.", hot_at(c, axes));
  std::string text = fmt::format("With the fire alight the fan develops {}, {} of what it moves in free air",
                                 hot_at(c, axes), number_of(data.assessment, "draught.free_air_share", style));
  if (!c.stall) return text + "; a centrifugal fan does not stall there.";
  if (c.hot.at.flow > c.stall->to) return text + ", clear of the stretch where it stalls.";
  return text + (c.hot.at.flow < c.stall->from ? ", below the stretch where it stalls and recovers: noisy, and weaker "
                                                 "than its sheet says."
                                               : ", in the stretch where it stalls and recovers: expect it to hunt.");
}
std::string draught_described(const plan::ReportData& data, const TextStyle& style) {
  const plan::DraughtCurves& c = *data.draught;
  const Axes axes = axes_of(data, style);
  std::string text = "Suction against flow at the fan. ";
  if (!c.hot.fan.empty())
    text += fmt::format("The fan's curve falls from {} at no flow to nothing at {} when hot. ",
                        axes.pressure.text(c.hot.fan.front().pressure), axes.flow.text(c.widest));
  text += fmt::format("What the gas path asks for climbs with the flow; they meet at {} when hot and at {} when cold.",
                      hot_at(c, axes), cold_at(c, axes));
  if (!c.fan_band.empty()) text += " Shaded bands show where eight samples of ten lie.";
  return text;
}
}  // namespace

Picture picture_of_draught(const plan::ReportData& data, const TextStyle& style) {
  Picture picture{.id = "draught", .title = "The fan against the gas path", .says = "", .description = ""};
  if (!data.draught) {
    picture.not_drawn = why_missing(data.draught);
    return picture;
  }
  return drawn(std::move(picture), draught_in_a_sentence(data, style), draught_described(data, style),
               [&data, style](Tag parent, const About& about, double width) {
                 draw_draught(data, style, parent, about, width);
               });
}
}  // namespace lumwright::report
