#include "report/season.hpp"
#include "data/tuning.hpp"
#include "input/utf8.hpp"
#include "report/tuned.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
constexpr std::size_t most_days = 18, bar_width = 27;  // what leaves the page on one screen
constexpr double far_away = 200.0;                     // lighting-ups or months: nobody plans for that

/// A row of characters from the least to the most minutes of the page: the band as `-`, what it was as `o`, outside as
/// `X`.
class Bars {
 public:
  explicit Bars(const std::vector<tune::DayStory>& days) {
    for (const tune::DayStory& day : days)
      for (const auto& span : {day.expected, day.was})
        if (span) low_ = std::min(low_, span->low), high_ = std::max(high_, span->high);
  }
  std::string of(const tune::DayStory& day) const {
    std::string bar(bar_width, ' ');
    if (day.expected)
      for (std::size_t i = place(day.expected->low); i <= place(day.expected->high); ++i) bar[i] = '-';
    if (day.was) bar[place(day.was->value)] = day.outside() ? 'X' : 'o';
    return bar.substr(0, bar.find_last_not_of(' ') + 1);
  }

 private:
  std::size_t place(double seconds) const {
    const double share = high_ > low_ ? (seconds - low_) / (high_ - low_) : 0.5;
    return static_cast<std::size_t>(std::lround(share * static_cast<double>(bar_width - 1)));
  }
  double low_ = HUGE_VAL, high_ = -HUGE_VAL;
};
std::string done_on(const description::Log& log) {
  std::string text;
  const auto add = [&](const description::Text& said, const char* words) {
    if (description::part::says_yes(said)) text += (text.empty() ? "" : ", ") + std::string(words);
  };
  add(log.done.swept, "tubes swept before it");
  add(log.done.reseated, "door and lid reseated before it");
  add(log.done.new_cells, "new cells before it");
  return text;
}
void write_days(Page& page, const tune::SeasonStory& story, const description::Season& season) {
  std::vector<tune::DayStory> shown = story.days;
  const std::size_t left = shown.size() > most_days ? shown.size() - most_days : 0;
  shown.erase(shown.begin(), shown.begin() + static_cast<std::ptrdiff_t>(left));
  const Bars bars(shown);
  std::vector<Page::Row> rows{{{"lit on", "expected", "it was", "- expected, o was, X outside"}, "", Ink::faint}};
  std::size_t remarks = 0;
  for (const tune::DayStory& day : shown) {
    const description::Log& log = season.lighting_ups[day.log];
    std::string remark = done_on(log);
    if (remarks > 4) remark.clear();
    remarks += !remark.empty();
    rows.push_back({{day_name(log), day.expected ? minutes_between(*day.expected) : "-",
                     day.was ? on_a_clock(day.was->value * unit::s) : "-", bars.of(day)},
                    remark,
                    day.outside() ? Ink::care : Ink::plain});
  }
  page.table(rows);
  if (left > 0) page.paragraph(fmt::format("and {} before them", left), 2, Ink::faint);
}
std::string wear_words(const tune::TunedFactor& f) {
  static const double sure = data::season_constant("sure_at");
  const bool heat = f.key == "tuned.heat";
  const char* what = heat ? "Heat that reaches the water" : "Air that leaks into the smokebox";
  if (f.drift->sure < sure) return fmt::format("{}: no drift to be seen.", what);
  const bool less = f.drift->each.value < 0.0;
  const double near = std::abs(less ? f.drift->each.high : f.drift->each.low),
               far = std::abs(less ? f.drift->each.low : f.drift->each.high);
  return fmt::format("{}: {} {} with each lighting-up ({} to {}), {:.0f} in 100 sure{}.", what,
                     small_percent(std::abs(f.drift->each.value)), less ? "less" : "more", small_percent(near),
                     small_percent(far), std::min(99.0, std::floor(100.0 * f.drift->sure)),
                     heat && less ? ": soot in the tubes" : "");
}
std::string headline(const tune::SeasonStory& story, const description::Season& season) {
  std::size_t told = 0, inside = 0;
  for (const tune::DayStory& day : story.days)
    if (day.expected && day.was) ++told, inside += !day.outside();
  return season_title(season) +
         (told == 0 ? "." : fmt::format(". {} of {} came out as expected; eight of ten should.", inside, told));
}
std::string when(const tune::Due& due) {
  if (due.now) return "due now";
  const auto number = [](double x) { return fmt::format("{:.0f}", std::max(1.0, std::round(x))); };
  const char* unit = due.what == tune::Due::What::cells ? "months" : "lighting-ups";
  if (!(due.later->value < far_away)) return "not for long";
  const std::string far = due.later->high < far_away ? number(due.later->high) : "many more";
  return fmt::format("due in about {} {} ({} to {})", number(due.later->value), unit, number(due.later->low), far);
}
}  // namespace

std::string minutes_between(const tune::Span& span) {
  return fmt::format("{} to {}", on_a_clock(span.low * unit::s), on_a_clock(span.high * unit::s));
}
std::string season_title(const description::Season& season) {
  const std::string name = season.name ? *season.name : input::printable(season.file);
  const auto& all = season.lighting_ups;
  const std::string span =
      all.size() > 1 ? fmt::format("{} to {}", day_name(all.front()), day_name(all.back())) : day_name(all.front());
  return fmt::format("{}: {} lighting-up{}, {}", name, all.size(), all.size() == 1 ? "" : "s", span);
}
std::string told_to(const tune::SeasonStory& story, UnitSystem units) {
  return format(story.gauge, choose_unit(AnyQuantity(story.gauge), "bar", units));
}
std::vector<std::string> due_words(const tune::SeasonStory& story) {
  std::vector<std::string> out;
  for (const tune::Due& due : story.due) {
    const char* what = due.what == tune::Due::What::sweep    ? "Sweep the tubes"
                       : due.what == tune::Due::What::reseat ? "Reseat smokebox door and lid"
                                                             : "Renew the cells";
    std::string text = fmt::format("{}: {}", what, when(due));
    if (due.brings && story.next && due.brings->value < 0.98 * story.next->value)
      text += fmt::format("; it brings {} back to about {}", on_a_clock(story.next->value * unit::s),
                          on_a_clock(due.brings->value * unit::s));
    out.push_back(text + ".");
  }
  if (out.empty()) out.emplace_back("Nothing is due, as far as these lighting-ups tell.");
  return out;
}

std::string doubted_readings(const tune::SeasonStory& story, const description::Season& season,
                             const TextStyle& style) {
  Page page(style);
  page.heading("Not believed: the other readings speak against it");
  page.gap();
  const std::vector<std::string> doubted = unbelieved(story.result.fit, season, style.units);
  for (const std::string& one : doubted) page.paragraph(one, 2);
  if (doubted.empty()) page.paragraph("none", 2);
  return page.finish();
}
std::string season_report(const tune::SeasonStory& story, const description::Season& season, const TextStyle& style) {
  Page page(style);
  page.paragraph(headline(story, season), 0, Ink::strong);
  page.heading(fmt::format("Minutes to {}", told_to(story, style.units)));
  page.gap();
  write_days(page, story, season);
  if (story.next)
    page.paragraph(fmt::format("Next time, as described: {}, eight times out of ten.", minutes_between(*story.next)), 2,
                   Ink::strong);
  page.gap();
  for (const tune::TunedFactor& f : story.result.fit.factors)
    if (f.drift) page.paragraph(wear_words(f));
  if (story.result.pack) page.paragraph(pack_words(*story.result.pack));
  const std::size_t doubted = unbelieved(story.result.fit, season, style.units).size();
  if (doubted > 0)
    page.paragraph(fmt::format("{} reading{} not believed; `lumwright tune` names {}.", doubted,
                               doubted == 1 ? " is" : "s are", doubted == 1 ? "it" : "them"));
  page.heading("What to do");
  page.gap();
  for (const std::string& line : due_words(story)) page.paragraph(line, 2);
  return page.finish();
}
}  // namespace lumwright::report
