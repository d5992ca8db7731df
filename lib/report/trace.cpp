#include "report/trace.hpp"
#include "quantity/format.hpp"
#include "report/csv.hpp"
#include "report/json_parts.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright {
namespace {
/// The check that knows why a series is not there.
std::string_view told_by(std::string_view series) { return series == "raise" ? "raise.time" : "power.stop"; }

[[noreturn]] void refuse(const Assessment& assessment, std::string_view series) {
  const std::string_view what = series == "raise" ? "steam raising" : "the discharge of the pack";
  const Finding* finding = find_check(assessment, told_by(series));
  if (finding != nullptr && !finding->missing.empty())
    throw NoAnswer(
        fmt::format("{} cannot be worked out: the description lacks {}", what, fmt::join(finding->missing, ", ")));
  throw NoAnswer(finding != nullptr && !finding->why.empty()
                     ? fmt::format("{} cannot be worked out: {}", what, finding->why)
                     : fmt::format("{} cannot be worked out", what));
}

const Series& find(const Assessment& assessment, std::string_view name) {
  const auto found = std::find_if(assessment.series.begin(), assessment.series.end(),
                                  [name](const Series& series) { return series.name == name; });
  if (found == assessment.series.end()) refuse(assessment, name);
  return *found;
}

/// "kg/s" becomes "kg_per_s": fit for a column's name. Nothing for a pure number.
std::string unit_name(std::string_view symbol) {
  std::string out;
  for (const char c : symbol) {
    if (c == '/')
      out += "_per_";
    else
      out += c;
  }
  return out;
}

/// Of a column: SI, or what suits its largest number in the system that is asked for.
std::string unit_of(const Series::Column& column, UnitSystem units) {
  if (column.kind == kind_of<double>) return "";
  if (units == UnitSystem::as_written) return si_symbol(column.kind);
  double largest = 0.0;
  for (const double x : column.si) largest = std::max(largest, std::abs(x));
  return choose_unit(AnyQuantity(largest, column.kind), "", units);
}
std::size_t lines(const Series& series) {
  std::size_t most = 0;
  for (const Series::Column& column : series.columns) most = std::max(most, column.si.size());
  for (const Series::Column& column : series.columns)
    if (!column.si.empty() && column.si.size() != most)
      throw std::logic_error("columns of series " + series.name + " differ in length");
  return most;
}
}  // namespace

std::string trace_csv(const Assessment& assessment, std::string_view name, UnitSystem units) {
  const Series& series = find(assessment, name);
  const std::size_t count = lines(series);
  std::string out;
  const auto line = [&](const auto& text_of) {
    for (std::size_t i = 0; i < series.columns.size(); ++i) {
      if (i > 0) out += ',';
      out += text_of(series.columns[i]);
    }
    out += '\n';
  };
  line([&](const Series::Column& column) {
    const std::string unit = unit_name(unit_of(column, units));
    return csv_cell(unit.empty() ? column.name : column.name + "_" + unit);
  });
  for (std::size_t row = 0; row < count; ++row)
    line([&](const Series::Column& column) {
      if (column.si.empty()) return std::string();
      const double si = finite(column.si[row]);
      const bool plain = units == UnitSystem::as_written || column.kind == kind_of<double>;
      return fmt::format("{:.6g}", plain ? si : number_in(AnyQuantity(si, column.kind), unit_of(column, units)));
    });
  return out;
}

std::string trace_json(const Assessment& assessment, std::string_view name) {
  if (name.empty()) find(assessment, "raise");
  Json series = Json::object(), units = Json::object(), events = Json::array();
  for (const Series& one : assessment.series) {
    if (!name.empty() && one.name != name) continue;
    Json& columns = series[one.name] = Json::object();
    for (const Series::Column& column : one.columns) {
      Json& numbers = columns[column.name] = Json::array();
      for (const double x : column.si) numbers.push_back(finite(x));
      units[one.name][column.name] = si_symbol(column.kind);
    }
  }
  if (series.empty()) refuse(assessment, name);
  if (series.contains("raise"))
    for (const Event& event : assessment.events)
      events.push_back({{"kind", event.kind}, {"t", finite(in(event.time, s))}});
  const Json trace = {{"format", "lumwright-trace/1"},
                      {"build", assessment.build},
                      {"series", std::move(series)},
                      {"units", std::move(units)},
                      {"events", std::move(events)}};
  return text_of(trace);
}
}  // namespace lumwright
