#include "report/picture/choice.hpp"
#include "report/chart/labels.hpp"
#include "report/choice.hpp"
#include "report/detail/choice_words.hpp"
#include "report/picture/parts.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <set>

namespace lumwright::report {
namespace {
using namespace chart;

constexpr const char *front_look = "dot-hot", *placed_look = "dot-cold", *wish_look = "moment wish";

/// What is drawn, in the units of the axes.
struct Field {
  std::vector<ChoiceDot> dots;
  std::vector<Point> others;  // raise steam, and are neither in the ranking nor on the front
  AxisUnit time;
  Range minutes, light_ups;
  double within, wanted;
  Point at(const ChoiceDot& dot) const { return {time(dot.to_steam), static_cast<double>(dot.light_ups)}; }
  bool wished(Point p) const { return p.x <= within && p.y >= wanted; }
  bool shows(Point p) const { return p.x >= minutes.low && p.x <= minutes.high && p.y <= light_ups.high; }
};
/// Room for the marks and both wishes, and a little beside them.
Range widened(Range range, double share) {
  const double room = std::max(share * (range.high - range.low), 0.02 * std::max(range.high, 1.0));
  return {std::max(range.low - room, 0.0), range.high + room};
}
Field field_of(const choose::EngineChoice& engine, const TextStyle& style) {
  Field f{.dots = choice_dots(engine),
          .others = {},
          .time = AxisUnit(AnyQuantity(engine.within), "min", style),
          .minutes = {},
          .light_ups = {},
          .within = 0.0,
          .wanted = engine.wanted};
  f.within = f.time(engine.within);
  f.minutes = {f.within, f.within};
  f.light_ups = {0.0, f.wanted};
  for (const ChoiceDot& dot : f.dots) {
    const Point p = f.at(dot);
    f.minutes = {std::min(f.minutes.low, p.x), std::max(f.minutes.high, p.x)};
    f.light_ups.high = std::max(f.light_ups.high, p.y);
  }
  f.minutes = widened(f.minutes, 0.08);
  f.light_ups = {0.0, 1.08 * std::max(f.light_ups.high, 1.0)};
  for (const choose::Judged& j : engine.judged)
    if (j.loss != choose::Loss::none && j.to_steam > 0.0 * unit::s)
      f.others.push_back({f.time(j.to_steam), static_cast<double>(j.light_ups)});
  return f;
}
/// The others that lie on the picture; one for all that share a spot of some pixels.
std::vector<Point> specks_of(const Field& f) {
  constexpr double columns = 220.0, rows = 110.0;
  std::vector<Point> kept;
  std::set<std::pair<int, int>> seen;
  for (const Point& p : f.others) {
    if (!f.shows(p)) continue;
    const auto spot = [](double x, Range r, double steps) {
      return static_cast<int>(std::lround(steps * (x - r.low) / (r.high - r.low)));
    };
    if (seen.emplace(spot(p.x, f.minutes, columns), spot(p.y, f.light_ups, rows)).second) kept.push_back(p);
  }
  return kept;
}
std::vector<Key> choice_keys(const Field& f) {
  std::vector<Key> keys;
  const auto any = [&](auto&& which) { return std::any_of(f.dots.begin(), f.dots.end(), which); };
  if (any([](const ChoiceDot& d) { return d.on_front; }))
    keys.push_back({"unbeaten", "", "", static_cast<int>(Marker::diamond), -1, front_look});
  if (any([](const ChoiceDot& d) { return !d.on_front; }))
    keys.push_back({"ranked, beaten by others", "", "", static_cast<int>(Marker::circle), -1, placed_look});
  if (any([](const ChoiceDot& d) { return d.place.has_value(); })) keys.push_back({"1, 2, ...: its place", ""});
  if (std::any_of(f.others.begin(), f.others.end(), [&](Point p) { return f.shows(p); }))
    keys.push_back({"others", "", "", static_cast<int>(Marker::speck), -1, "speck"});
  keys.push_back({"wanted", wish_look});
  keys.push_back({"all that you want", "", "stripe"});
  return keys;
}
void draw_dots(Plot& plot, const Field& f) {
  for (const bool front : {false, true})  // those on the front over the others
    for (const ChoiceDot& dot : f.dots)
      if (dot.on_front == front)
        plot.mark(f.at(dot), front ? Marker::diamond : Marker::circle, front ? front_look : placed_look);
}
void number_dots(Plot& plot, const Field& f) {
  std::vector<Point> points;
  std::vector<std::string> numbers;
  for (const ChoiceDot& dot : f.dots) {
    if (!dot.place) continue;
    points.push_back(f.at(dot));
    numbers.push_back(fmt::format("{}", *dot.place));
  }
  plot.call_out(points, numbers, "label strong halo");
}
void draw_choice(const choose::EngineChoice& engine, const TextStyle& style, Tag parent, const About& about,
                 double width) {
  const Field f = field_of(engine, style);
  const std::vector<Key> keys = choice_keys(f);
  constexpr double headroom = 40.0;  // the title of the axis and, beneath it, the wanted time
  const double height = width < 500.0 ? 320.0 : 360.0, legend_top = headroom + height + 46.0;
  Figure figure(parent, about, width, legend_top + legend_height(keys, width));
  const Pane area{axis_margin, headroom, width - 10.0, headroom + height};
  const Axis x{f.minutes, fmt::format("from cold to steam, {}", f.time.symbol()), figure.narrow() ? 4 : 8};
  const Ruler along{f.minutes, area.left, area.right}, up{f.light_ups, area.bottom, area.top};
  figure.box({area.left, area.top, along.at(f.within), up.at(f.wanted)}, "stripe");  // beneath the grid
  Plot plot(figure, area, x, {f.light_ups, "", figure.narrow() ? 5 : 6});
  figure.words({0.0, 0.9 * letter}, "whole light-ups on one charge", "axis-title");
  plot.specks(specks_of(f), "speck");
  plot.moment(f.within, wish_look);
  draw_dots(plot, f);
  const std::string words = fmt::format("wanted within {}", minutes_text(engine.within, style));
  const double half = 0.5 * text_width(words, letter), here = plot.at({f.within, 0.0}).x;
  figure.words({std::clamp(here, half, width - half), area.top - 6.0}, words, "label", Anchor::middle);
  plot.levels({{f.wanted, fmt::format("wanted: {:g} or more", engine.wanted), wish_look, Anchor::start, true}});
  number_dots(plot, f);
  legend(figure, keys, 0.0, legend_top, width);
}
std::string choice_in_a_sentence(const choose::EngineChoice& engine, const TextStyle& style) {
  const Field f = field_of(engine, style);
  const auto wished =
      std::count_if(f.dots.begin(), f.dots.end(), [&](const ChoiceDot& dot) { return f.wished(f.at(dot)); });
  std::string text = fmt::format(
      "The further up and to the left, the better. {} of the {} marked combinations {} in the shaded corner: steam in "
      "time, and light-ups enough. None is better in minutes, light-ups and mass at once than one that is on the "
      "front; one that looks beaten there is lighter.",
      wished == 0 ? "None" : std::to_string(wished), f.dots.size(), wished == 1 ? "lies" : "lie");
  const auto beyond = std::count_if(f.others.begin(), f.others.end(), [&](Point p) { return !f.shows(p); });
  if (beyond > 0) text += fmt::format(" {} more {} beyond the picture.", beyond, beyond == 1 ? "lies" : "lie");
  return text;
}
std::string choice_described(const choose::EngineChoice& engine, const TextStyle& style) {
  const Field f = field_of(engine, style);
  std::string text =
      fmt::format("Whole light-ups on one charge against the time to steam, a mark for each of {} combinations. {}",
                  f.dots.size(), wanted_sentence(engine, style));
  for (const ChoiceDot& dot : f.dots) {
    text += fmt::format(" {}{}: {}, {}.", dot.place ? fmt::format("Place {}", *dot.place) : std::string("No place"),
                        dot.on_front ? ", unbeaten" : "", minutes_text(dot.to_steam, style), dot.light_ups);
  }
  return text;
}
}  // namespace

Picture picture_of_choice(const choose::EngineChoice& engine, const std::string& id, const TextStyle& style) {
  Picture picture{.id = id, .title = "Minutes to steam against light-ups on a charge", .says = "", .description = ""};
  if (engine.places.empty() && engine.front.empty()) {
    picture.not_drawn = engine.lacking.empty() ? "nothing here raises steam on this engine"
                                               : fmt::format("the bin lacks {}", fmt::join(engine.lacking, ", "));
    return picture;
  }
  return drawn(std::move(picture), choice_in_a_sentence(engine, style), choice_described(engine, style),
               [&engine, style](Tag parent, const About& about, double width) {
                 draw_choice(engine, style, parent, about, width);
               });
}
}  // namespace lumwright::report
