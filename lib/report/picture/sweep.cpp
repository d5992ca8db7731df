#include "report/picture/sweep.hpp"
#include "quantity/decimal.hpp"
#include "report/answers.hpp"
#include "report/chart/plot.hpp"
#include "report/picture/own.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <optional>

namespace lumwright::report {
namespace {
using namespace chart;
constexpr double picture_width = own_width, left_of_axis = 56.0, each_plot = 130.0, between_plots = 40.0,
                 head = own_head, foot = 52.0;

struct Shown {
  std::string_view result;
  bool hot;  // which of the two colours
};
constexpr Shown answers_shown[] = {{"raise.to_own_blower", true},
                                   {"draught.air_flow", false},
                                   {"heat.fan_gas", true},
                                   {"power.light_ups_per_charge", false},
                                   {"fit.clearance_hot", true}};

const model::Measure* measure_at(const plan::SweepPoint& point, std::string_view result) {
  const model::Result* found = plan::find_result(point.assessment, result);
  return found == nullptr ? nullptr : std::get_if<model::Measure>(&found->value);
}
/// Where the values stand along the axis: by their numbers, or one after another where they are words.
struct Along {
  std::vector<double> places;
  bool by_words;
};
Along along_axis(const plan::SweepAxis& axis) {
  Along numbers{{}, false}, words{{}, true};
  for (const std::string& value : axis.values) {
    const Decimal read = read_decimal(value);
    numbers.by_words = numbers.by_words || !read || !(read.rest.empty() || read.rest.starts_with(' '));
    numbers.places.push_back(read.value);
    words.places.push_back(static_cast<double>(words.places.size() + 1));
  }
  return numbers.by_words ? words : numbers;
}
std::string title_of(const plan::SweepAxis& axis, bool by_words) {
  if (by_words) return axis.key;
  const std::string& value = axis.values.front();
  const auto blank = value.find(' ');
  return axis.key + (blank == std::string::npos ? "" : ", " + value.substr(blank + 1));
}

/// One answer along the key.
struct Course {
  std::string title;
  std::vector<Point> line;
  std::vector<Slice> band;
  Range range;
  bool hot;
};
std::optional<Course> course_of(const Shown& shown, const std::vector<double>& places,
                                const std::vector<plan::SweepPoint>& points, const TextStyle& style) {
  const model::Measure* largest = nullptr;
  for (const plan::SweepPoint& point : points)
    if (const model::Measure* m = measure_at(point, shown.result);
        m != nullptr && (largest == nullptr || m->quantity.si > largest->quantity.si))
      largest = m;
  if (largest == nullptr) return std::nullopt;
  const std::string unit = page_unit(*largest, style);
  const auto number = [&](const model::Measure& m) { return number_in(m.quantity, unit); };
  Course course{words_for(shown.result) + (unit.empty() ? "" : ", " + unit), {}, {}, {}, shown.hot};
  double low = 1e300, high = -1e300;
  const auto reach = [&](double y) { low = std::min(low, y), high = std::max(high, y); };
  for (std::size_t i = 0; i < points.size(); ++i) {
    const model::Measure* m = measure_at(points[i], shown.result);
    if (m == nullptr) continue;
    course.line.push_back({places[i], number(*m)});
    reach(course.line.back().y);
    const model::Result* result = plan::find_result(points[i].assessment, shown.result);
    if (!result->low || !result->high) continue;
    course.band.push_back({places[i], number(*result->low), number(*result->high)});
    reach(course.band.back().low), reach(course.band.back().high);
  }
  course.range = rounded_out({low, high}, 4);
  return course;
}
void draw_course(Figure& figure, const Course& course, const Axis& x, double top) {
  Plot plot(figure, {left_of_axis, top, picture_width - 14.0, top + each_plot}, x, {course.range, course.title, 4});
  plot.band(course.band, course.hot ? "band hot" : "band cold");
  plot.curve(course.line, course.hot ? "line hot" : "line cold");
  for (const Point& p : course.line)
    plot.mark(p, course.hot ? Marker::circle : Marker::diamond, course.hot ? "dot-hot" : "dot-cold");
}
/// Beneath the lowest plot: where the build fails; and the words of the values, where they are words.
void draw_verdicts(Figure& figure, const plan::SweepAxis& axis, const Along& along,
                   const std::vector<plan::SweepPoint>& points, const Ruler& ruler, double y) {
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double x = ruler.at(along.places[i]);
    if (points[i].assessment.verdict == plan::Verdict::fail) figure.mark({x, y}, Marker::cross, "dot-bad");
    if (along.by_words) figure.words({x, y + 24.0}, axis.values[i], "tick", Anchor::middle);
  }
}
/// Draws, and says how tall it came out.
double draw_along(Tag parent, const About& about, const plan::SweepAxis& axis,
                  const std::vector<plan::SweepPoint>& points, const TextStyle& style) {
  const Along along = along_axis(axis);
  const std::vector<double>& places = along.places;
  const auto [least, most] = std::minmax_element(places.begin(), places.end());
  const double room = 0.03 * (*most - *least);
  std::vector<Course> courses;
  for (const Shown& shown : answers_shown)
    if (auto course = course_of(shown, places, points, style)) courses.push_back(std::move(*course));
  const auto count = static_cast<double>(courses.size());
  const double height = head + 14.0 + count * (each_plot + between_plots) + foot;
  Figure figure(parent, about, picture_width, height);
  figure.box({0.0, 0.0, picture_width, height}, "paper");
  write_own_head(figure, about);
  double top = head + 24.0;
  for (std::size_t i = 0; i < courses.size(); ++i) {
    const bool last = i + 1 == courses.size();
    const Axis x{{*least - room, *most + room}, title_of(axis, along.by_words), 8, last && !along.by_words};
    draw_course(figure, courses[i], x, top);
    top += each_plot + between_plots;
  }
  const Ruler ruler{{*least - room, *most + room}, left_of_axis, picture_width - 14.0};
  draw_verdicts(figure, axis, along, points, ruler, top - between_plots - 9.0);
  return height;
}
/// Of five, by the minutes between the shortest and the longest.
std::string shade_of(const plan::SweepPoint& point, const std::vector<plan::SweepPoint>& points) {
  const model::Measure* here = measure_at(point, "raise.to_own_blower");
  if (here == nullptr) return "never";
  double low = here->quantity.si, high = low;
  for (const plan::SweepPoint& other : points)
    if (const model::Measure* m = measure_at(other, "raise.to_own_blower")) {
      low = std::min(low, m->quantity.si);
      high = std::max(high, m->quantity.si);
    }
  return fmt::format("shade{}",
                     high > low ? static_cast<int>(std::min(4.99 * (here->quantity.si - low) / (high - low), 4.0)) : 0);
}
/// Over two keys: a cell for each pair, darker where it takes longer, with the minutes in it.
double draw_field(Tag parent, const About& about, const std::vector<plan::SweepAxis>& axes,
                  const std::vector<plan::SweepPoint>& points, const TextStyle& style) {
  const std::size_t rows = axes[0].values.size(), columns = axes[1].values.size();
  const double side = 130.0, cell = (picture_width - side - 14.0) / static_cast<double>(columns), tall = 56.0;
  const double height = head + 44.0 + tall * static_cast<double>(rows) + 20.0;
  Figure figure(parent, about, picture_width, height);
  figure.box({0.0, 0.0, picture_width, height}, "paper");
  write_own_head(figure, about);
  figure.words({14.0, head + 14.0}, axes[0].key + ", down", "axis-title");
  figure.words({picture_width - 14.0, head + 14.0}, axes[1].key + ", across", "axis-title", Anchor::end);
  for (std::size_t c = 0; c < columns; ++c)
    figure.words({side + (static_cast<double>(c) + 0.5) * cell, head + 36.0}, axes[1].values[c], "tick",
                 Anchor::middle);
  for (std::size_t r = 0; r < rows; ++r) {
    const double top = head + 44.0 + tall * static_cast<double>(r);
    figure.words({side - 10.0, top + 0.5 * tall + 4.0}, axes[0].values[r], "tick", Anchor::end);
    for (std::size_t c = 0; c < columns; ++c) {
      const plan::SweepPoint& point = points[r * columns + c];
      const double left = side + static_cast<double>(c) * cell;
      const std::string time = number_of(point.assessment, "raise.to_own_blower", style);
      figure.box({left, top, left + cell, top + tall}, "cell " + shade_of(point, points));
      figure.words({left + 0.5 * cell, top + 0.5 * tall + 4.0}, time.empty() ? "never" : time, "strong",
                   Anchor::middle);
      if (point.assessment.verdict == plan::Verdict::fail)
        figure.mark({left + cell - 14.0, top + 14.0}, Marker::cross, "dot-bad");
    }
  }
  return height;
}
}  // namespace

std::string sweep_picture(const std::string& name, const std::vector<plan::SweepAxis>& axes,
                          const std::vector<plan::SweepPoint>& points, const TextStyle& style) {
  if (points.empty()) throw std::logic_error("a sweep without points has no picture");
  const bool field = axes.size() > 1;
  const bool bands = points.front().assessment.bands.has_value();
  std::string words = field ? "Minutes to steam; darker takes longer. " : "";
  if (!field && bands) words = "Light: where eight of ten lie. ";
  words += "A cross: a check fails there. ";
  const About about{"sweep", fmt::format("{}: along {}{}", name, axes[0].key, field ? " and " + axes[1].key : ""),
                    words};
  return own_picture([&](Tag root) {
    return field ? draw_field(root, about, axes, points, style) : draw_along(root, about, axes[0], points, style);
  });
}
}  // namespace lumwright::report
