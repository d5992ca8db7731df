#include "model/solved_raise.hpp"
#include "report/answers.hpp"
#include "report/chart/labels.hpp"
#include "report/picture/parts.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright::report {
namespace {
using namespace chart;
constexpr double lane_height = 17.0;

struct EventWords {
  boiler::RaiseEventKind kind;
  std::string_view words;
};
constexpr EventWords event_words[] = {{boiler::RaiseEventKind::fully_lit, "all the fuel alight"},
                                      {boiler::RaiseEventKind::boils, "boils"},
                                      {boiler::RaiseEventKind::purged, "air driven out"},
                                      {boiler::RaiseEventKind::own_blower, "own blower"},
                                      {boiler::RaiseEventKind::working, "working pressure"},
                                      {boiler::RaiseEventKind::fan_too_hot, "gas too hot for the fan"},
                                      {boiler::RaiseEventKind::pack_stops, "pack stops"},
                                      {boiler::RaiseEventKind::false_own_blower, "false reading, air left in"}};
std::string event_in_words(boiler::RaiseEventKind kind) {
  for (const EventWords& row : event_words)
    if (row.kind == kind) return std::string(row.words);
  throw std::logic_error("an event of the raise without words");
}

/// No finer than what is judged about the raise: two figures.
std::string clock(Duration time, const plan::ReportData& data, const TextStyle& style) {
  return in_page_figures(data.assessment, {time}, style, 2);
}

class Way {
 public:
  Way(const plan::ReportData& data, const TextStyle& style)
      : data_(data),
        style_(style),
        times_(column(data.assessment, "raise", "t")),
        time_(Duration(times_.back() * s), data, style) {
    Duration longest = times_.back() * s;
    if (data.raise->wish_written && data.raise->wanted < 2.0 * longest)
      longest = std::max(longest, 1.04 * data.raise->wanted);
    if (const model::Result* steam = plan::find_result(data.assessment, "raise.to_own_blower");
        steam != nullptr && steam->high)
      longest = std::max(longest, std::min(steam->high->quantity.si * s, 2.0 * longest));
    end_ = longest;
  }
  void draw(Tag parent, const About& about, double width);

 private:
  struct Panel {
    std::string title;
    std::vector<Point> points;
    std::string look;
    struct Level {
      double at;
      std::string words;
    };
    std::vector<Level> levels;
  };
  struct Moment {
    double at;
    std::string words, look;
  };
  std::vector<Point> points(std::string_view name, const AxisUnit& unit) const {
    const std::vector<double>& values = column(data_.assessment, "raise", name);
    std::vector<Point> out;
    for (std::size_t i = 0; i < values.size(); ++i) out.push_back({time_.of_si(times_[i]), unit.of_si(values[i])});
    return out;
  }
  Panel water() const;
  Panel gauge() const;
  std::optional<Panel> fan_gas() const;
  std::vector<Moment> moments() const;
  void draw_panel(Figure& figure, const Panel& panel, const Pane& room, bool last) const;
  void draw_moments(Figure& figure, const Pane& all) const;
  std::vector<Placed> lanes(const std::vector<Moment>& found, double width) const;
  Ruler scale(double width) const { return {{0.0, time_(end_)}, axis_margin, width - 10.0}; }

  const plan::ReportData& data_;
  const TextStyle& style_;
  const std::vector<double>& times_;
  AxisUnit time_;
  Duration end_;
};

Way::Panel Way::water() const {
  const AxisUnit unit(degC(100), data_, style_);
  return {"water, " + unit.symbol(), points("water_temperature", unit), "line cold", {}};
}
Way::Panel Way::gauge() const {
  const plan::RaiseMarks& marks = *data_.raise;
  const GaugePressure top = marks.working ? *marks.working : *marks.own_blower;
  const AxisUnit unit(top, data_, style_);
  Panel panel{"gauge pressure, " + unit.symbol(), {}, "line ink", {}};
  const std::vector<double>& gauge = column(data_.assessment, "raise", "gauge_pressure");
  for (std::size_t i = 0; i < gauge.size(); ++i) panel.points.push_back({time_.of_si(times_[i]), unit.of_si(gauge[i])});
  if (marks.own_blower)
    panel.levels.push_back({unit(*marks.own_blower), "own blower, " + unit.text(*marks.own_blower)});
  if (marks.working) panel.levels.push_back({unit(*marks.working), "working, " + unit.text(*marks.working)});
  return panel;
}
std::optional<Way::Panel> Way::fan_gas() const {
  if (column(data_.assessment, "raise", "fan_gas_temperature").empty()) return std::nullopt;
  const AxisUnit unit(degC(100), data_, style_);
  Panel panel{"gas at the fan, " + unit.symbol(), points("fan_gas_temperature", unit), "line hot", {}};
  if (data_.raise->fan_gas_limit)
    panel.levels.push_back({unit(*data_.raise->fan_gas_limit), "limit, " + unit.text(*data_.raise->fan_gas_limit)});
  return panel;
}
std::vector<Way::Moment> Way::moments() const {
  std::vector<Moment> found;
  for (const plan::Event& event : data_.assessment.events) {
    if (event.kind == boiler::RaiseEventKind::false_own_blower)
      continue;  // its check tells; here it would pass for the true one
    const bool bad =
        event.kind == boiler::RaiseEventKind::pack_stops || event.kind == boiler::RaiseEventKind::fan_too_hot;
    found.push_back({time_(event.time), event_in_words(event.kind) + " " + clock(event.time, data_, style_),
                     bad ? "moment bad" : "moment"});
  }
  if (data_.raise->wish_written && data_.raise->wanted <= end_)
    found.push_back({time_(data_.raise->wanted), "you asked: " + show({data_.raise->wanted}, style_), "moment wish"});
  std::stable_sort(found.begin(), found.end(), [](const Moment& a, const Moment& b) { return a.at < b.at; });
  return found;
}
std::vector<Placed> Way::lanes(const std::vector<Moment>& found, double width) const {
  std::vector<Wanted> wanted;
  wanted.reserve(found.size());
  for (const Moment& m : found) wanted.push_back({scale(width).at(m.at), text_width(m.words, letter)});
  return in_lanes(wanted, {0.0, width}, 4.0);
}
void Way::draw_panel(Figure& figure, const Panel& panel, const Pane& room, bool last) const {
  Range range{panel.points.front().y, panel.points.front().y};
  for (const Point& p : panel.points) range = {std::min(range.low, p.y), std::max(range.high, p.y)};
  for (const Panel::Level& level : panel.levels)
    range = {std::min(range.low, level.at), std::max(range.high, level.at)};
  range = rounded_out(range, 3);
  Plot plot(figure, room, {{0.0, time_(end_)}, "time, " + time_.symbol(), figure.narrow() ? 5 : 10, last},
            {range, panel.title, 3});
  if (const model::Result* steam = plan::find_result(data_.assessment, "raise.to_own_blower");
      steam != nullptr && steam->low)
    plot.stripe(
        {time_.of_si(steam->low->quantity.si), steam->high ? time_.of_si(steam->high->quantity.si) : time_(end_)},
        "band cold");
  std::vector<Level> levels;
  for (const Panel::Level& level : panel.levels) {
    const bool clear_at_start =
        std::abs(panel.points.front().y - level.at) >= std::abs(panel.points.back().y - level.at);
    levels.push_back({level.at, level.words, "level", clear_at_start ? Anchor::start : Anchor::end});
  }
  plot.curve(panel.points, panel.look);
  plot.levels(levels);
}
void Way::draw_moments(Figure& figure, const Pane& all) const {
  const std::vector<Moment> found = moments();
  const std::vector<Placed> placed = lanes(found, figure.width());
  const auto top = [&](std::size_t i) { return all.top - lane_height * (placed[i].lane + 1.0); };
  for (std::size_t i = 0; i < found.size(); ++i) {
    const double at = scale(figure.width()).at(found[i].at);
    figure.line({at, top(i)}, {at, all.bottom}, found[i].look);
  }
  for (std::size_t i = 0; i < found.size(); ++i)
    figure.words({placed[i].x, top(i) + letter - 2.0}, found[i].words, "label halo");
}
void Way::draw(Tag parent, const About& about, double width) {
  std::vector<Panel> panels{water(), gauge()};
  if (auto gas = fan_gas()) panels.push_back(std::move(*gas));
  int deepest = 0;
  for (const Placed& p : lanes(moments(), width)) deepest = std::max(deepest, p.lane + 1);
  const double each = width < 500.0 ? 96.0 : 116.0, top = lane_height * deepest + 26.0;
  const double bottom = top + (each + plot_gap) * static_cast<double>(panels.size()) - plot_gap;
  Figure figure(parent, about, width, bottom + 42.0);
  for (std::size_t i = 0; i < panels.size(); ++i) {
    const double from = top + (each + plot_gap) * static_cast<double>(i);
    draw_panel(figure, panels[i], {axis_margin, from, width - 10.0, from + each}, i + 1 == panels.size());
  }
  draw_moments(figure, {axis_margin, top - 22.0, width - 10.0, bottom});
}

std::string raise_in_a_sentence(const plan::ReportData& data, const TextStyle& style) {
  const plan::Assessment& a = data.assessment;
  std::string text;
  const auto when = [&](boiler::RaiseEventKind kind) -> std::string {
    for (const plan::Event& event : a.events)
      if (event.kind == kind) return clock(event.time, data, style);
    return "";
  };
  const std::string boils = when(boiler::RaiseEventKind::boils), blower = when(boiler::RaiseEventKind::own_blower),
                    working = when(boiler::RaiseEventKind::working), stops = when(boiler::RaiseEventKind::pack_stops),
                    hot = when(boiler::RaiseEventKind::fan_too_hot);
  text = boils.empty() ? "The water does not boil" : "The water boils after " + boils;
  if (!blower.empty()) text += ", the engine's own blower takes over after " + blower;
  if (!working.empty()) text += ", working pressure is there after " + working;
  text += ".";
  if (!stops.empty()) text += " The pack stops after " + stops + ".";
  if (!hot.empty()) text += " From " + hot + " on the gas is hotter than the fan may have it.";
  return text;
}
std::string raise_described(const plan::ReportData& data, const TextStyle& style) {
  std::string text = "Water temperature, gauge pressure and gas at the fan over one time axis.";
  for (const plan::Event& event : data.assessment.events)
    text += " " + event_in_words(event.kind) + ": " + clock(event.time, data, style) + ".";
  return text;
}
}  // namespace

Picture picture_of_raise(const plan::ReportData& data, const TextStyle& style) {
  Picture picture{.id = "raise", .title = "From cold to steam", .says = "", .description = ""};
  if (!data.raise || column(data.assessment, "raise", "t").size() < 2) {
    picture.not_drawn = why_missing(data.raise);
    return picture;
  }
  std::string says = raise_in_a_sentence(data, style);
  if (const model::Result* steam = plan::find_result(data.assessment, "raise.to_own_blower");
      steam != nullptr && steam->low)
    says += " The shaded stretch is where the own blower takes over in eight samples of ten.";
  return drawn(
      std::move(picture), std::move(says), raise_described(data, style),
      [&data, style](Tag parent, const About& about, double width) { Way(data, style).draw(parent, about, width); });
}
}  // namespace lumwright::report
