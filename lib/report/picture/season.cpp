#include "report/picture/season.hpp"
#include "data/tuning.hpp"
#include "report/chart/plot.hpp"
#include "report/picture/own.hpp"
#include "report/season.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
constexpr double season_width = 700.0, season_left = 56.0, season_plot = 170.0, season_gap = 44.0, season_head = 86.0,
                 season_foot = 34.0, bar_half = 0.28;

/// What stands over one lighting-up.
struct Mark {
  double x, y;
  bool wrong;
};
struct SeasonCourse {
  std::string title;
  std::vector<chart::Slice> bars;    // one for each lighting-up
  std::vector<chart::Slice> band{};  // along all of them
  std::vector<chart::Point> line{};
  std::vector<Mark> marks;
  bool hot;
};
double number_of_log(std::size_t log) { return static_cast<double>(log + 1); }

SeasonCourse minutes_course(const tune::SeasonStory& story, UnitSystem units) {
  SeasonCourse course{
      fmt::format("minutes to {}: bars expected, dots as they were", told_to(story, units)), {}, {}, {}, {}, true};
  for (const tune::DayStory& day : story.days) {
    const double x = number_of_log(day.log);
    if (day.expected) course.bars.push_back({x, day.expected->low / 60.0, day.expected->high / 60.0});
    if (day.was) course.marks.push_back({x, day.was->value / 60.0, day.outside()});
  }
  if (story.next)
    course.bars.push_back({number_of_log(story.days.size()), story.next->low / 60.0, story.next->high / 60.0});
  return course;
}
SeasonCourse heat_course(const tune::SeasonStory& story) {
  SeasonCourse course{
      "heat that reaches the water, of what the model says, %: dots by day, line the engine", {}, {}, {}, {}, false};
  for (const tune::DayStory& day : story.days) {
    if (day.heat <= 0.0) continue;
    const double x = number_of_log(day.log);
    course.marks.push_back({x, 100.0 * day.heat, false});
    course.line.push_back({x, 100.0 * day.heat_of_engine.value});
    course.band.push_back({x, 100.0 * day.heat_of_engine.low, 100.0 * day.heat_of_engine.high});
  }
  return course;
}
SeasonCourse pack_course(const tune::SeasonStory& story, const description::Season& season) {
  SeasonCourse course{"what the pack held when it had run flat, mAh", {}, {}, {}, {}, false};
  if (!story.result.pack) return course;
  const auto& wrong = story.result.pack->wrong;
  for (std::size_t i = 0; i < season.lighting_ups.size(); ++i) {
    const description::part::LogPack& pack = season.lighting_ups[i].pack;
    if (!description::part::says_yes(pack.ran_flat) || !pack.put_back) continue;
    course.marks.push_back({number_of_log(i), in(*pack.put_back, mAh) / data::season_constant("taken_by_charging"),
                            std::find(wrong.begin(), wrong.end(), i) != wrong.end()});
  }
  return course;
}
chart::Range range_of(const SeasonCourse& course) {
  double low = HUGE_VAL, high = -HUGE_VAL;
  const auto reach = [&](double y) { low = std::min(low, y), high = std::max(high, y); };
  for (const chart::Slice& bar : course.bars) reach(bar.low), reach(bar.high);
  for (const chart::Slice& slice : course.band) reach(slice.low), reach(slice.high);
  for (const Mark& mark : course.marks) reach(mark.y);
  return chart::rounded_out({low, high}, 5);
}
void draw_season_course(chart::Figure& figure, const SeasonCourse& course, const description::Season& season,
                        double top, bool last) {
  const double count = static_cast<double>(season.lighting_ups.size());
  const chart::Axis x{{0.4, count + 1.6}, "lighting-up", static_cast<int>(std::clamp(count, 2.0, 20.0)), last};
  chart::Plot plot(figure, {season_left, top, season_width - 14.0, top + season_plot}, x,
                   {range_of(course), course.title, 5});
  const char* colour = course.hot ? "band hot" : "band cold";
  for (std::size_t i = 0; i < season.lighting_ups.size(); ++i) {
    const description::part::LogDone& done = season.lighting_ups[i].done;
    if (description::part::says_yes(done.swept) || description::part::says_yes(done.reseated) ||
        description::part::says_yes(done.new_cells))
      plot.moment(number_of_log(i) - 0.5, "carry");
  }
  plot.band(course.band, colour);
  for (const chart::Slice& bar : course.bars)
    plot.band({{bar.x - bar_half, bar.low, bar.high}, {bar.x + bar_half, bar.low, bar.high}}, colour);
  if (course.line.size() > 1) plot.curve(course.line, "line cold");
  for (const Mark& mark : course.marks)
    plot.mark({mark.x, mark.y}, mark.wrong ? chart::Marker::cross : chart::Marker::circle,
              mark.wrong   ? "dot-bad"
              : course.hot ? "dot-hot"
                           : "dot-cold");
}
}  // namespace

std::string season_picture(const tune::SeasonStory& story, const description::Season& season, const TextStyle& style) {
  std::vector<SeasonCourse> courses{minutes_course(story, style.units), heat_course(story), pack_course(story, season)};
  std::erase_if(courses, [](const SeasonCourse& course) { return course.marks.empty() && course.bars.empty(); });
  const chart::About about{"season", season_title(season),
                           "Eight of ten dots should lie in their bars. A cross: outside, or not believed. An upright "
                           "line: swept, reseated or new cells."};
  return own_picture([&](Tag root) {
    const double height = season_head + static_cast<double>(courses.size()) * (season_plot + season_gap) + season_foot;
    chart::Figure figure(root, about, season_width, height);
    figure.box({0.0, 0.0, season_width, height}, "paper");
    write_own_head(figure, about);
    double top = season_head;
    for (const SeasonCourse& course : courses) {
      draw_season_course(figure, course, season, top, &course == &courses.back());
      top += season_plot + season_gap;
    }
    return height;
  });
}
}  // namespace lumwright::report
