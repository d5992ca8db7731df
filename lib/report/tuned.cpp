#include "report/tuned.hpp"
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
void write_factors(Page& page, const tune::TuneFit& fit) {
  page.heading("Factors, with spreads that hold all of them together with 95 %");
  page.gap();
  std::vector<Page::Row> rows{{{"factor", "before", "after"}, "", Ink::faint}};
  for (const tune::TunedFactor& f : fit.factors) {
    const std::string unit = unit_of(f, page.style());
    const bool odd = f.determined && std::abs(f.value - f.prior) > 4.0 * f.prior_sigma;
    std::string remark = f.name;
    if (!f.determined && !f.settled_by.empty()) remark += "; " + f.settled_by + " would settle it";
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
void write_readings(Page& page, const tune::TuneFit& fit) {
  page.heading("Readings against the model");
  page.gap();
  std::vector<Page::Row> rows{{{"time", "reading", "read", "untuned", "tuned", "off by"}, "", Ink::faint}};
  for (const tune::TunedReading& r : fit.readings) {
    const bool far = r.left_out.empty() && std::abs(r.misfit()) > 3.0;
    rows.push_back(
        {{format(r.time, "min"), std::string(tune::name(r.observable)), shown(r, r.measured.si, page.style()),
          shown(r, r.before, page.style()), shown(r, r.after, page.style()),
          r.left_out.empty() ? fmt::format("{:+.1f} times its error", r.misfit()) : "not used"},
         r.left_out,
         far ? Ink::care : Ink::plain});
  }
  page.table(rows);
}
std::string time_text(const std::optional<Duration>& t, const std::optional<Duration>& sigma) {
  if (!t) return "not reached";
  return sigma ? with_spread(in(*t, unit::s), 2.0 * in(*sigma, unit::s), kind_of<Duration>, "min") : format(*t, "min");
}
void write_times(Page& page, const tune::TuneResult& result) {
  if (!result.own_blower && !result.working) return;
  page.heading("Time to steam, as described");
  page.gap();
  std::vector<Page::Row> rows{{{"to", "before", "after"}, "", Ink::faint}};
  const auto add = [&](const char* to, const std::optional<tune::SteamTime>& t) {
    if (t) rows.push_back({{to, time_text(t->before, t->sigma_before), time_text(t->after, t->sigma_after)}, ""});
  };
  add("own-blower pressure", result.own_blower);
  add("working pressure", result.working);
  page.table(rows);
  page.gap();
  page.paragraph(
      "These spreads hold what is not known of the factors above, and nothing else: on another day, with another fire, "
      "a tuned model is good for 10 % or so (judgement).",
      2, Ink::faint);
}
void write_remarks(Page& page, const tune::TuneFit& fit) {
  if (fit.widened > 1.0) {
    page.gap();
    page.paragraph(
        fmt::format("The readings lie further from the model than their uncertainties allow (sum of squares {:.3g}, "
                    "{:.3g} would do). The spreads of the factors are {:.2g} times wider for it. Look at the readings "
                    "that are off by most.",
                    fit.misfit, fit.freedom, fit.widened),
        0, Ink::care);
  }
}
}  // namespace

std::string tuned_report(const tune::TuneResult& result, const description::Log& log, const std::string& kept_in,
                         const TextStyle& style) {
  Page page(style);
  const auto count = std::count_if(result.fit.readings.begin(), result.fit.readings.end(),
                                   [](const tune::TunedReading& r) { return r.left_out.empty(); });
  const auto determined = static_cast<long>(result.tuning.values.size());
  page.paragraph(
      fmt::format("{}: {} reading{} determine{} {} of {} factors. Kept in {}.", log.name ? *log.name : log.file, count,
                  count == 1 ? "" : "s", count == 1 ? "s" : "", determined, result.fit.factors.size(), kept_in),
      0, Ink::strong);
  write_factors(page, result.fit);
  write_times(page, result);
  write_readings(page, result.fit);
  write_remarks(page, result.fit);
  return page.finish();
}
}  // namespace lumwright::report
