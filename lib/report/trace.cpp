#include "report/trace.hpp"
#include "quantity/format.hpp"
#include "report/detail/csv.hpp"
#include "report/detail/csv_unit.hpp"
#include "report/detail/json_parts.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
/// The check that knows why a series is not there.
std::string_view told_by(std::string_view series) { return series == "raise" ? "raise.time" : "power.stop"; }

[[noreturn]] void refuse(const plan::Assessment& assessment, std::string_view series) {
  const std::string_view what = series == "raise" ? "steam raising" : "the discharge of the pack";
  const plan::Finding* finding = plan::find_check(assessment, told_by(series));
  if (finding != nullptr && !finding->missing.empty())
    throw NoAnswer(
        fmt::format("{} cannot be worked out: the description lacks {}", what, fmt::join(finding->missing, ", ")));
  throw NoAnswer(finding != nullptr && !finding->why.empty()
                     ? fmt::format("{} cannot be worked out: {}", what, finding->why)
                     : fmt::format("{} cannot be worked out", what));
}

const plan::Series& find(const plan::Assessment& assessment, std::string_view name) {
  const auto found = std::find_if(assessment.series.begin(), assessment.series.end(),
                                  [name](const plan::Series& series) { return series.name == name; });
  if (found == assessment.series.end()) refuse(assessment, name);
  return *found;
}

/// What suits the largest number of a column.
CsvUnit unit_of(const plan::Series::Column& column, UnitSystem units) {
  double largest = 0.0;
  for (const double x : column.si) largest = std::max(largest, std::abs(x));
  return {AnyQuantity(largest, column.kind), units};
}
std::size_t lines(const plan::Series& series) {
  std::size_t most = 0;
  for (const plan::Series::Column& column : series.columns) most = std::max(most, column.si.size());
  for (const plan::Series::Column& column : series.columns)
    if (!column.si.empty() && column.si.size() != most)
      throw std::logic_error("columns of series " + series.name + " differ in length");
  return most;
}
}  // namespace

std::string trace_csv(const plan::Assessment& assessment, std::string_view name, UnitSystem units) {
  const plan::Series& series = find(assessment, name);
  const std::size_t count = lines(series);
  std::vector<CsvUnit> written_by;
  for (const plan::Series::Column& column : series.columns) written_by.push_back(unit_of(column, units));
  std::string out;
  const auto line = [&](const auto& text_of) {
    for (std::size_t i = 0; i < series.columns.size(); ++i) out += (i > 0 ? "," : "") + text_of(i);
    out += '\n';
  };
  line([&](std::size_t i) { return csv_cell(written_by[i].head(series.columns[i].name)); });
  for (std::size_t row = 0; row < count; ++row)
    line([&](std::size_t i) {
      const plan::Series::Column& column = series.columns[i];
      return column.si.empty() ? std::string() : written_by[i](AnyQuantity(column.si[row], column.kind));
    });
  return out;
}

std::string trace_json(const plan::Assessment& assessment, std::string_view name) {
  if (name.empty()) find(assessment, "raise");
  Json series = Json::object(), units = Json::object(), events = Json::array();
  for (const plan::Series& one : assessment.series) {
    if (!name.empty() && one.name != name) continue;
    Json& columns = series[one.name] = Json::object();
    for (const plan::Series::Column& column : one.columns) {
      Json& numbers = columns[column.name] = Json::array();
      for (const double x : column.si) numbers.push_back(finite(x));
      units[one.name][column.name] = si_symbol(column.kind);
    }
  }
  if (series.empty()) refuse(assessment, name);
  if (series.contains("raise"))
    for (const plan::Event& event : assessment.events)
      events.push_back({{"kind", boiler::key_of(event.kind)}, {"t", finite(in(event.time, s))}});
  const Json trace = {{"format", "lumwright-trace/1"},
                      {"build", assessment.build},
                      {"series", std::move(series)},
                      {"units", std::move(units)},
                      {"events", std::move(events)}};
  return text_of(trace);
}
}  // namespace lumwright::report
