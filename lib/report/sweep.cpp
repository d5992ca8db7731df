#include "quantity/decimal.hpp"
#include "report/answers.hpp"
#include "report/detail/csv.hpp"
#include "report/detail/csv_unit.hpp"
#include "report/side_by_side.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
struct Column {
  std::string_view heading, result, csv;
  Kind kind;
};
const Column columns_of_sweep[] = {{"steam", "raise.to_own_blower", "to_own_blower", kind_of<Duration>},
                                   {"air", "draught.air_flow", "air", kind_of<MassFlow>},
                                   {"gas at fan", "heat.fan_gas", "fan_gas", kind_of<Temperature>},
                                   {"running", "power.runtime", "runtime", kind_of<Duration>},
                                   {"light-ups", "power.light_ups_per_charge", "light_ups", kind_of<double>},
                                   {"gap hot", "fit.clearance_hot", "clearance_hot", kind_of<Length>}};
std::optional<double> number(const plan::SweepPoint& point, std::string_view result) {
  const model::Result* found = plan::find_result(point.assessment, result);
  const model::Measure* measure = found == nullptr ? nullptr : std::get_if<model::Measure>(&found->value);
  return measure == nullptr ? std::nullopt : std::optional(measure->quantity.si);
}
/// It moves by more than a twentieth along the sweep, a temperature by more than two kelvin, or is not always there.
bool moves_along(const std::vector<plan::SweepPoint>& points, std::string_view result) {
  constexpr double worth_a_column = 0.05, kelvins_worth_a_column = 2.0;
  double low = 0.0, high = 0.0;
  std::size_t there = 0;
  for (const plan::SweepPoint& point : points)
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
std::string bar_of_minutes(const plan::SweepPoint& point, double longest, std::size_t width) {
  const auto time = number(point, "raise.to_own_blower");
  const double share = time ? *time / longest : 0.0;
  return time ? std::string(static_cast<std::size_t>(std::lround(static_cast<double>(width) * share)), '=') : "never";
}
double longest_time(const std::vector<plan::SweepPoint>& points) {
  double longest = 0.0;
  for (const plan::SweepPoint& p : points) longest = std::max(longest, number(p, "raise.to_own_blower").value_or(0.0));
  return longest;
}
/// "mm" of "20 mm", "22 mm" and so on: it then stands in the head; empty for counts and words.
std::string unit_behind(const plan::SweepAxis& axis) {
  std::string unit;
  for (const std::string& value : axis.values) {
    const auto blank = value.find(' ');
    const std::string behind = blank == std::string::npos ? "" : value.substr(blank + 1);
    const Decimal read = read_decimal(std::string_view(value).substr(0, blank));
    const bool is_number = read && read.rest.empty();
    if (!is_number || (!unit.empty() && unit != behind)) return "";
    unit = behind;
  }
  return unit;
}
std::string name_of_key(const std::string& key) { return key.substr(key.rfind('.') + 1); }
std::string hardly_moved(const std::vector<plan::SweepPoint>& points, const TextStyle& style) {
  std::string still;
  for (const Column& column : columns_of_sweep)
    if (const std::string text = number_of(points.front().assessment, column.result, style);
        !text.empty() && !moves_along(points, column.result))
      still += fmt::format("{}{} {}", still.empty() ? "" : ", ", words_for(column.result), text);
  return still;
}
}  // namespace

std::string sweep_report(const std::string& name, const std::vector<plan::SweepAxis>& axes,
                         const std::vector<plan::SweepPoint>& points, const TextStyle& style) {
  Page page(style);
  std::string along;
  for (const plan::SweepAxis& axis : axes) along += (along.empty() ? "" : " and ") + axis.key;
  page.paragraph(fmt::format("{}: along {}", name, along), 0, Ink::strong);
  page.paragraph("Every value as written or usual; spreads are left out.", 0, Ink::faint);
  page.gap();
  std::vector<Column> shown;
  for (const Column& column : columns_of_sweep)
    if (moves_along(points, column.result)) shown.push_back(column);
  const double longest = longest_time(points);
  Page::Row head{{}, "", Ink::faint};
  for (const plan::SweepAxis& axis : axes) head.cells.push_back(name_of_key(axis.key));
  for (const Column& column : shown) head.cells.emplace_back(column.heading);
  head.cells.emplace_back("fail/watch");
  std::vector<Page::Row> rows{head};
  for (const plan::SweepPoint& point : points) {
    Page::Row row{point.at, "", ink_of(point.assessment.verdict)};
    for (const Column& column : shown) {
      const std::string text = number_of(point.assessment, column.result, style);
      row.cells.push_back(text.empty() ? "-" : text);
    }
    const auto with = [&](plan::Verdict v) {
      return std::count_if(point.assessment.checks.begin(), point.assessment.checks.end(),
                           [v](const plan::Finding& f) { return f.verdict == v; });
    };
    row.cells.push_back(fmt::format("{}/{}", with(plan::Verdict::fail), with(plan::Verdict::watch)));
    rows.push_back(std::move(row));
  }
  const std::size_t room = std::min<std::size_t>(page.free_width(rows), 12);
  if (axes.size() == 1 && longest > 0.0 && room >= 5) {
    rows.front().cells.emplace_back("steam");
    for (std::size_t i = 0; i < points.size(); ++i)
      rows[i + 1].cells.push_back(bar_of_minutes(points[i], longest, room));
  }
  page.table(rows);
  page.gap();
  if (const std::string still = hardly_moved(points, style); !still.empty())
    page.paragraph("Hardly moved by it: " + still + ".", 0, Ink::faint);
  return page.finish();
}
std::string sweep_csv(const std::vector<plan::SweepAxis>& axes, const std::vector<plan::SweepPoint>& points,
                      UnitSystem units) {
  std::vector<std::string> head, behind;
  for (const plan::SweepAxis& axis : axes) {
    behind.push_back(unit_behind(axis));
    head.push_back(axis.key + (behind.back().empty() ? "" : "_" + name_of_unit(behind.back())));
  }
  std::vector<CsvUnit> written_by;
  for (const Column& column : columns_of_sweep) {
    double largest = 0.0;
    for (const plan::SweepPoint& point : points)
      largest = std::max(largest, std::abs(number(point, column.result).value_or(0.0)));
    written_by.emplace_back(AnyQuantity(largest, column.kind), units);
    head.push_back(written_by.back().head(column.csv));
  }
  head.emplace_back("verdict");
  std::string out = csv_line(head);
  for (const plan::SweepPoint& point : points) {
    std::vector<std::string> cells;
    for (std::size_t k = 0; k < axes.size(); ++k)
      cells.push_back(behind[k].empty() ? point.at[k]
                                        : point.at[k].substr(0, point.at[k].size() - behind[k].size() - 1));
    std::size_t column = 0;
    for (const CsvUnit& written : written_by) {
      const Column& of = columns_of_sweep[column++];
      const auto found = number(point, of.result);
      cells.push_back(found ? written(AnyQuantity(*found, of.kind)) : "");
    }
    cells.emplace_back(plan::verdict_word(point.assessment.verdict));
    out += csv_line(cells);
  }
  return out;
}
}  // namespace lumwright::report
