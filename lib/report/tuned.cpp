#include "report/tuned.hpp"
#include "data/tuning.hpp"
#include "input/utf8.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
/// "131 s +- 20 s": to the place of the spread's second digit.
std::string with_spread(double si, double spread, Kind kind, const std::string& unit) {
  const double value = number_in({si, kind}, unit), half = number_in({si + spread, kind}, unit) - value;
  const int places = std::max(0, 1 - static_cast<int>(std::floor(std::log10(half))));
  const std::string behind = unit.empty() ? "" : " " + unit;
  return fmt::format("{:.{}f} +- {:.{}f}{}", value, places, half, places, behind);
}
std::string unit_of(const tune::TunedFactor& f, const TextStyle& style) {
  return choose_unit({f.value, f.kind}, f.unit, f.unit == "s" ? UnitSystem::as_written : style.units);
}
std::string drift_words(const tune::Drift& drift) {
  static const double sure = data::season_constant("sure_at");
  if (drift.sure < sure) return "no drift to be seen";
  const bool less = drift.each.value < 0.0;
  const double near = std::abs(less ? drift.each.high : drift.each.low),
               far = std::abs(less ? drift.each.low : drift.each.high);
  return fmt::format("{} {} with each lighting-up ({} to {}), {} in 100 sure",
                     small_percent(std::abs(drift.each.value)), less ? "less" : "more", small_percent(near),
                     small_percent(far), std::min(99.0, std::floor(100.0 * drift.sure)));
}
void write_factors(Page& page, const tune::TuneFit& fit, bool several) {
  page.heading("Factors, with spreads that hold all of them together with 95 %");
  page.gap();
  std::vector<Page::Row> rows{{{"factor", "before", "next time"}, "", Ink::faint}};
  for (const tune::TunedFactor& f : fit.factors) {
    const std::string unit = unit_of(f, page.style());
    const bool odd = f.determined && std::abs(f.value - f.prior) > 4.0 * f.prior_sigma;
    std::string remark = several && !f.determined ? "" : f.name;
    if (several && f.determined && f.scatter)
      remark += "; from day to day it moves by " + small_percent(f.scatter->value);
    if (several && f.determined && f.drift) remark += "; " + drift_words(*f.drift);
    if (!f.determined && !f.settled_by.empty()) remark = f.name + "; " + f.settled_by + " would settle it";
    if (odd) remark += "; twice as far off as is usual: look for another cause";
    rows.push_back({{f.key, with_spread(f.prior, 2.0 * f.prior_sigma, f.kind, unit),
                     f.determined ? with_spread(f.value, fit.cover * f.sigma, f.kind, unit) : "left as it was"},
                    remark,
                    odd ? Ink::care : Ink::plain});
  }
  page.table(rows);
}
std::string shown(const tune::TunedReading& r, std::optional<double> si, const TextStyle& style) {
  if (!si) return "-";
  return format({*si, r.measured.kind}, choose_unit(r.measured, r.unit, style.units));
}
void write_readings(Page& page, const std::vector<tune::TunedReading>& readings) {
  page.heading("Readings against the model");
  page.gap();
  std::vector<Page::Row> rows{{{"time", "reading", "read", "untuned", "tuned", "off by"}, "", Ink::faint}};
  for (const tune::TunedReading& r : readings) {
    const std::string why =
        !r.believed() && r.left_out.empty() ? "not believed: the other readings speak against it" : r.left_out;
    rows.push_back(
        {{format(r.time, "min"), std::string(tune::name(r.observable)), shown(r, r.measured.si, page.style()),
          shown(r, r.before, page.style()), shown(r, r.after, page.style()),
          r.left_out.empty() ? fmt::format("{:+.1f} times its error", r.misfit()) : "not used"},
         why,
         r.believed() ? Ink::plain : Ink::care});
  }
  page.table(rows);
}
void write_list(Page& page, const char* heading, const std::vector<std::string>& items) {
  if (items.empty()) return;
  page.heading(heading);
  page.gap();
  constexpr std::size_t most = 4;  // the page is to stay on one screen
  for (std::size_t i = 0; i < std::min(items.size(), most); ++i) page.paragraph(items[i], 2, Ink::care);
  if (items.size() > most)
    page.paragraph(fmt::format("and {} more; `lumwright season FILE -o DIR` lists all", items.size() - most), 2,
                   Ink::faint);
}
using Ends = std::optional<std::pair<Duration, Duration>>;
std::string time_text(const std::optional<Duration>& t, const Ends& band) {
  if (!t) return "not reached";
  const std::string middle = format(*t, "min", 2);
  return band ? fmt::format("{} ({} to {})", middle, format_number(in(band->first, minute), 2),
                            format_number(in(band->second, minute), 2))
              : middle;
}
void write_times(Page& page, const tune::TuneResult& result) {
  if (!result.own_blower && !result.working) return;
  page.heading("Time to steam, as described, next time");
  page.gap();
  std::vector<Page::Row> rows{{{"to", "before", "tuned"}, "", Ink::faint}};
  const auto add = [&](const char* to, const std::optional<tune::SteamTime>& t) {
    if (t) rows.push_back({{to, time_text(t->before, t->band_before), time_text(t->after, t->band_after)}, ""});
  };
  add("own-blower pressure", result.own_blower);
  add("working pressure", result.working);
  page.table(rows);
  page.gap();
  page.paragraph("Eight of ten lighting-ups lie in the brackets, with this fuel and no wind.", 2, Ink::faint);
}
std::size_t used_readings(const tune::TuneFit& fit) {
  std::size_t count = 0;
  for (const tune::LitDay& day : fit.days)
    for (const tune::TunedReading& r : day.readings) count += r.left_out.empty();
  return count;
}
std::string headline(const tune::TuneResult& result, const description::Season& season, const std::string& kept_in) {
  const std::size_t count = used_readings(result.fit), determined = result.tuning.values.size();
  const std::size_t days = season.lighting_ups.size();
  const std::string what = season.name ? *season.name : input::printable(season.file);
  return fmt::format("{}: {} reading{}{} determine{} {} of {} factors. Kept in {}.", what, count, count == 1 ? "" : "s",
                     days > 1 ? fmt::format(" of {} lighting-ups", days) : "", count == 1 ? "s" : "", determined,
                     result.fit.factors.size(), kept_in);
}
}  // namespace

std::string day_name(const description::Log& log) {
  if (const auto date = log.date())
    return description::day_text(*date) + (log.which() > 1 ? fmt::format(" ({})", log.which()) : "");
  return log.day ? *log.day : "the log";
}
std::string on_a_clock(Duration time) {
  const int seconds = static_cast<int>(std::lround(in(time, unit::s)));
  return fmt::format("{}:{:02}", seconds / 60, seconds % 60);
}
std::string small_percent(double share) { return fmt::format("{} %", format_number(100.0 * share, 2)); }
std::vector<std::string> unbelieved(const tune::TuneFit& fit, const description::Season& season, UnitSystem units) {
  std::vector<std::string> out;
  for (const tune::LitDay& day : fit.days) {
    const std::string name = day_name(season.lighting_ups[day.log]);
    if (!day.left_out.empty()) out.push_back(fmt::format("{}: left out: {}", name, day.left_out));
    for (const tune::TunedReading& r : day.readings) {
      if (r.believed() || !r.left_out.empty()) continue;
      const std::string unit = choose_unit(r.measured, r.unit, units);
      out.push_back(
          fmt::format("{}, {}: {} {}{}", name, on_a_clock(r.time), tune::name(r.observable), format(r.measured, unit),
                      r.after ? fmt::format("; {} would fit", format({*r.after, r.measured.kind}, unit)) : ""));
    }
  }
  return out;
}
std::string pack_words(const tune::PackState& pack) {
  static const double sure = data::season_constant("sure_at");
  const auto mAh = [](double si) {  // three figures
    const double number = si / 3.6, step = std::pow(10.0, std::floor(std::log10(number)) - 2.0);
    return fmt::format("{:.0f}", std::round(number / step) * step);
  };
  std::string text =
      fmt::format("The pack holds {} mAh ({} to {}), by {} full charge{}", mAh(pack.capacity.value),
                  mAh(pack.capacity.low), mAh(pack.capacity.high), pack.charges, pack.charges == 1 ? "" : "s");
  if (pack.sure < sure) return text + "; whether it fades cannot be told yet.";
  return text + fmt::format("; {} {} each month.", small_percent(std::abs(pack.each_month.value)),
                            pack.each_month.value < 0.0 ? "less" : "more");
}

std::string tuned_report(const tune::TuneResult& result, const description::Season& season, const std::string& kept_in,
                         const TextStyle& style) {
  Page page(style);
  const bool several = season.lighting_ups.size() > 1;
  page.paragraph(headline(result, season, kept_in), 0, Ink::strong);
  write_factors(page, result.fit, several);
  write_times(page, result);
  if (several)
    write_list(page, "Not believed: the other readings speak against it", unbelieved(result.fit, season, style.units));
  else
    write_readings(page, result.fit.days.front().readings);
  if (result.pack) {
    page.gap();
    page.paragraph(pack_words(*result.pack));
  }
  if (result.fit.widened > 1.0) {
    page.gap();
    page.paragraph(
        fmt::format("The readings scatter {:.1f} times as much as their uncertainties allow; all spreads are "
                    "wider for it.",
                    result.fit.widened),
        0, Ink::care);
  }
  return page.finish();
}
}  // namespace lumwright::report
