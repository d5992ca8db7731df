#include "report/chart/labels.hpp"
#include "report/picture/parts.hpp"
#include "report/templates/templates.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
using namespace chart;
using Mm = std::pair<double, double>;
Mm in_mm(const drawing::Point& p) { return {in(p.x, mm), in(p.y, mm)}; }

/// What of the template of the section is shown here: its metal, the way of the gas, and what the parts are called.
struct UnitShown {
  std::vector<std::vector<Mm>> metal, others, ways;
  std::vector<std::pair<Mm, std::string>> names;
  Mm low{1e9, 1e9}, high{-1e9, -1e9};

  void reach(const std::vector<Mm>& points) {
    for (const auto& [x, y] : points) {
      low = {std::min(low.first, x), std::min(low.second, y)};
      high = {std::max(high.first, x), std::max(high.second, y)};
    }
  }
};
UnitShown unit_shown(const drawing::View& view) {
  UnitShown out;
  for (const drawing::Entity& entity : view.entities) {
    std::vector<Mm> points;
    if (const auto* outline = std::get_if<drawing::Polyline>(&entity)) {
      for (const drawing::Point& p : outline->points) points.push_back(in_mm(p));
      // what is cut through comes as outlines of four corners that lie off the axis; the fan lies across it
      const bool across = std::any_of(points.begin(), points.end(), [](const Mm& p) { return p.first < 0.0; }) &&
                          std::any_of(points.begin(), points.end(), [](const Mm& p) { return p.first > 0.0; });
      (across ? out.others : out.metal).push_back(points);
    } else if (const auto* way = std::get_if<drawing::Arrow>(&entity)) {
      for (const drawing::Point& p : way->points) points.push_back(in_mm(p));
      out.ways.push_back(points);
    } else if (const auto* leader = std::get_if<drawing::Leader>(&entity)) {
      out.names.emplace_back(in_mm(leader->tip), leader->note);
      continue;
    } else if (const auto* words = std::get_if<drawing::Text>(&entity)) {
      out.names.emplace_back(in_mm(words->at), words->words);
      continue;
    }
    out.reach(points);
  }
  std::stable_sort(out.names.begin(), out.names.end(),
                   [](const auto& a, const auto& b) { return a.first.second > b.first.second; });
  return out;
}
void draw_way(Figure& figure, const std::vector<Spot>& spots) {
  figure.trace(spots, "line hot");
  figure.arrow_head(spots.back(), spots[spots.size() - 2], 9.0, 3.5, "bar hot");
}
void draw_unit(const UnitShown& shown, Tag parent, const About& about, double width) {
  constexpr double edge = 8.0, tallest = 300.0;
  double words = 0.0;
  for (const auto& [at, name] : shown.names) words = std::max(words, text_width(name, letter));
  const double across = shown.high.first - shown.low.first, up = shown.high.second - shown.low.second;
  const double room = width - 2.0 * edge - words - 24.0;
  const double scale = std::min(std::min(room, 420.0) / across, tallest / up);
  const double height = std::max(scale * up, 18.0 * static_cast<double>(shown.names.size())) + 2.0 * edge;
  Figure figure(parent, about, width, height);
  const auto spot = [&](const Mm& p) {
    return Spot{edge + scale * (p.first - shown.low.first), edge + scale * (shown.high.second - p.second)};
  };
  const auto spots = [&](const std::vector<Mm>& points) {
    std::vector<Spot> out;
    for (const Mm& p : points) out.push_back(spot(p));
    return out;
  };
  for (const auto& points : shown.metal) figure.shape(spots(points), "cut-metal");
  for (const auto& points : shown.others) figure.shape(spots(points), "seen");
  figure.line(spot({0.0, shown.low.second}), spot({0.0, shown.high.second}), "centre");
  for (const auto& points : shown.ways) draw_way(figure, spots(points));
  std::vector<double> wanted;
  for (const auto& [at, name] : shown.names) wanted.push_back(spot(at).y);
  const std::vector<double> rows = nudged(wanted, 18.0, {edge + 4.0, height - edge});
  const double column = edge + scale * across + 20.0;
  for (std::size_t i = 0; i < shown.names.size(); ++i) {
    figure.line(spot(shown.names[i].first), {column - 4.0, rows[i]}, "carry");
    figure.mark(spot(shown.names[i].first), Marker::circle, "soot");
    figure.words({column, rows[i] + 4.0}, shown.names[i].second, "halo");
  }
}
std::string unit_in_a_sentence(const plan::ReportData& data, const TextStyle& style) {
  const model::FanUnit& unit = *data.unit;
  const auto on_page = [&](Length length) { return show({AnyQuantity(length), data.units.of(length)}, style); };
  std::string text = fmt::format("The box is {} {} and {} high inside", on_page(unit.box->across),
                                 unit.box->square ? "square" : "across", on_page(unit.box->height));
  if (unit.tube->engaged) text += fmt::format("; the tube goes {} into the chimney", on_page(*unit.tube->engaged));
  return text + ". The arrows are the way of the gas.";
}
}  // namespace

Picture picture_of_unit(const plan::ReportData& data, const TextStyle& style) {
  Picture picture{.id = "unit", .title = "The unit on the chimney, cut through", .says = "", .description = ""};
  if (!data.unit || !data.build) {
    picture.not_drawn = why_missing(data.unit);
    return picture;
  }
  if (const auto failed = failed_geometry(data.assessment); !failed.empty()) {
    picture.not_drawn = fmt::format("it is not to be made like this: {}", fmt::join(failed, ", "));
    return picture;
  }
  const auto section = section_of(*data.unit, *data.build);
  if (!section) {
    picture.not_drawn = "the description does not give tube and box";
    return picture;
  }
  return drawn(std::move(picture), unit_in_a_sentence(data, style),
               "Chimney, tube, flange, box and fan cut through the middle, to one scale.",
               [shown = unit_shown(*section)](Tag parent, const About& about, double width) {
                 draw_unit(shown, parent, about, width);
               });
}
}  // namespace lumwright::report
