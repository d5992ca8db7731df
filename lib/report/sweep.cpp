#include "report/answers.hpp"
#include "report/csv.hpp"
#include "report/side_by_side.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright {
namespace {
struct Column {
  std::string_view heading, result, csv;
};
constexpr Column columns_of_sweep[] = {{"steam", "raise.to_own_blower", "to_own_blower_s"},
                                       {"air", "draught.air_flow", "air_kg_per_s"},
                                       {"gas at fan", "heat.fan_gas", "fan_gas_K"},
                                       {"running", "power.runtime", "runtime_s"},
                                       {"light-ups", "power.light_ups_per_charge", "light_ups"},
                                       {"gap hot", "fit.clearance_hot", "clearance_hot_m"}};
std::optional<double> number(const SweepPoint& point, std::string_view result) {
  const Result* found = find_result(point.assessment, result);
  const Measure* measure = found == nullptr ? nullptr : std::get_if<Measure>(&found->value);
  return measure == nullptr ? std::nullopt : std::optional(measure->quantity.si);
}
/// It moves by more than a twentieth along the sweep, a temperature by more than two kelvin, or is not always there.
bool moves_along(const std::vector<SweepPoint>& points, std::string_view result) {
  constexpr double worth_a_column = 0.05, kelvins_worth_a_column = 2.0;
  double low = 0.0, high = 0.0;
  std::size_t there = 0;
  for (const SweepPoint& point : points)
    if (const auto found = number(point, result)) {
      low = there == 0 ? *found : std::min(low, *found);
      high = there == 0 ? *found : std::max(high, *found);
      ++there;
    }
  if (there == 0) return false;
  if (result == "heat.fan_gas") return there < points.size() || high - low > kelvins_worth_a_column;
  return there < points.size() || high - low > worth_a_column * std::max(std::abs(high), std::abs(low));
}
/// As long as the minutes, the longest of all the whole width.
std::string bar_of_minutes(const SweepPoint& point, double longest) {
  constexpr double width = 12.0;
  const auto time = number(point, "raise.to_own_blower");
  return time ? std::string(static_cast<std::size_t>(std::lround(width * *time / longest)), '=') : "never";
}
double longest_time(const std::vector<SweepPoint>& points) {
  double longest = 0.0;
  for (const SweepPoint& p : points) longest = std::max(longest, number(p, "raise.to_own_blower").value_or(0.0));
  return longest;
}
std::string name_of_key(const std::string& key) { return key.substr(key.rfind('.') + 1); }
}  // namespace

std::string sweep_report(const std::string& name, const std::vector<SweepAxis>& axes,
                         const std::vector<SweepPoint>& points, const TextStyle& style) {
  Page page(style);
  std::string along;
  for (const SweepAxis& axis : axes) along += (along.empty() ? "" : " and ") + axis.key;
  page.paragraph(fmt::format("{}: along {}", name, along), 0, Ink::strong);
  page.paragraph("Every value as written or usual; spreads are left out.", 0, Ink::faint);
  page.gap();
  std::vector<Column> shown;
  for (const Column& column : columns_of_sweep)
    if (moves_along(points, column.result)) shown.push_back(column);
  const double longest = longest_time(points);
  const bool bars = axes.size() == 1 && longest > 0.0;
  Page::Row head{{}, "", Ink::faint};
  for (const SweepAxis& axis : axes) head.cells.push_back(name_of_key(axis.key));
  for (const Column& column : shown) head.cells.emplace_back(column.heading);
  head.cells.emplace_back("fail/watch");
  if (bars) head.cells.emplace_back("steam");
  std::vector<Page::Row> rows{head};
  for (const SweepPoint& point : points) {
    Page::Row row{point.at, "", ink_of(point.assessment.verdict)};
    for (const Column& column : shown) {
      const std::string text = number_of(point.assessment, column.result, style);
      row.cells.push_back(text.empty() ? "-" : text);
    }
    const auto with = [&](Verdict v) {
      return std::count_if(point.assessment.checks.begin(), point.assessment.checks.end(),
                           [v](const Finding& f) { return f.verdict == v; });
    };
    row.cells.push_back(fmt::format("{}/{}", with(Verdict::fail), with(Verdict::watch)));
    if (bars) row.cells.push_back(bar_of_minutes(point, longest));
    rows.push_back(std::move(row));
  }
  page.table(rows);
  std::string still;
  for (const Column& column : columns_of_sweep)
    if (const std::string text = number_of(points.front().assessment, column.result, style);
        !text.empty() && !moves_along(points, column.result))
      still += fmt::format("{}{} {}", still.empty() ? "" : ", ", words_for(column.result), text);
  page.gap();
  if (!still.empty()) page.paragraph("Hardly moved by it: " + still + ".", 0, Ink::faint);
  return page.finish();
}
std::string sweep_csv(const std::vector<SweepAxis>& axes, const std::vector<SweepPoint>& points) {
  std::vector<std::string> head;
  for (const SweepAxis& axis : axes) head.push_back(axis.key);
  for (const Column& column : columns_of_sweep) head.emplace_back(column.csv);
  head.emplace_back("verdict");
  std::string out = csv_line(head);
  for (const SweepPoint& point : points) {
    std::vector<std::string> cells = point.at;
    for (const Column& column : columns_of_sweep) {
      const auto found = number(point, column.result);
      cells.push_back(found ? fmt::format("{:.6g}", *found) : "");
    }
    cells.emplace_back(verdict_word(point.assessment.verdict));
    out += csv_line(cells);
  }
  return out;
}
}  // namespace lumwright
