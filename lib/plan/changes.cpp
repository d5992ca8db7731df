#include "data/tubes.hpp"
#include "description/key_value.hpp"
#include "plan/moves.hpp"
#include "quantity/format.hpp"
#include "quantity/text.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright {
namespace {
constexpr int most_tubes = 6;

bool imperial(std::string_view unit) { return unit == "in" || unit == "thou" || unit == "ft"; }
/// The unit in which a new value is told: the owner's, but for lengths one that his tools show.
std::string told_in(const KeyValue& now, const std::string& step_unit) {
  if (now.kind != kind_of<Length>) return now.unit.empty() ? step_unit : now.unit;
  return imperial(now.unit) ? "in" : "mm";
}
std::string number_text(double number) { return fmt::format("{:.7g}", number); }
std::string value_text(double si, Kind kind, const std::string& unit) {
  const std::string number = number_text(number_in(AnyQuantity(si, kind), unit));
  return unit.empty() ? number : number + " " + unit;
}
std::string said(const data::MoveRow& row, const std::string& value) {
  std::string text = row.says;
  const auto gap = text.find("{}");
  return gap == std::string::npos ? text : text.replace(gap, 2, value);
}
void add_fixed(const data::MoveRow& row, Change& change) {
  for (const auto& [key, value] : row.with) change.settings.push_back({key, value});
}
/// Where a key stands: as written, else as the solve took it, else where the row begins.
std::optional<KeyValue> standing_at(const data::MoveRow& row, const Build& build, const Solved& central) {
  KeyValue now = value_at(build, row.key);
  if (now.written) return row.with.empty() ? std::optional(now) : std::nullopt;  // a row for what is not there yet
  if (!row.at.empty()) {
    now.si = parse_band(row.at, now.kind).value;
    return now;
  }
  const Input* used = central.inputs.find(row.key);
  if (used == nullptr || now.form != KeyValue::Form::quantity) return std::nullopt;
  now.si = used->value.si;
  now.unit = used->unit;
  return now;
}
std::vector<Change> steps_of(const data::MoveRow& row, const Build& build, const KeyValue& now) {
  const bool inches = imperial(now.unit) && !row.inch.empty();
  const WrittenBand step = parse_band(inches ? row.inch : row.step, now.kind);
  const std::string unit = now.form == KeyValue::Form::count ? "" : told_in(now, step.unit);
  const double whole = now.si / step.value;
  const double first = row.toward > 0 ? std::floor(whole + 1e-6) : std::ceil(whole - 1e-6);
  std::vector<Change> all;
  for (int k = 1; k <= row.most; ++k) {
    const double si = (first + row.toward * k) * step.value;
    if (si < -1e-12 || (si < 1e-12 && now.form == KeyValue::Form::count)) break;
    const std::string value = value_text(std::max(si, 0.0), now.kind, unit);
    Change change{said(row, value), {{row.key, value}}};
    if (now.half > 0.0) change.settings.back().value += " +- " + value_text(now.half, now.kind, unit);
    for (const auto& [key, times] : row.along) {
      const KeyValue other = value_at(build, key);
      if (!other.written) continue;
      const double with = other.si + times * (si - now.si);
      if (with <= 0.0) return all;
      change.settings.push_back({key, value_text(with, other.kind, told_in(other, unit))});
    }
    add_fixed(row, change);
    all.push_back(std::move(change));
  }
  return all;
}
std::vector<Change> listed_values(const data::MoveRow& row, const KeyValue& now) {
  std::vector<Change> all;
  for (const std::string& value : row.to) {
    if (now.form == KeyValue::Form::words && now.words == value) continue;
    if (now.form == KeyValue::Form::quantity && now.written &&
        row.toward * (parse_band(value, now.kind).value - now.si) <= 1e-9 * now.si)
      continue;
    Change change{said(row, value), {{row.key, value}}};
    add_fixed(row, change);
    all.push_back(std::move(change));
  }
  return all;
}
/// Stock tubes that could enter the bore, the widest first: those of a written list before those that continue one.
std::vector<Change> stock_tubes(const data::MoveRow& row, const Build& build) {
  if (!build.engine.chimney.bore || !build.adapter.tube.outside) return {};
  const Length bore = *build.engine.chimney.bore;
  std::vector<const data::TubeRow*> enter;
  for (const data::TubeRow& tube : data::tubes())
    if (tube.outside < bore) enter.push_back(&tube);
  std::stable_sort(enter.begin(), enter.end(), [](const auto* a, const auto* b) {
    return a->outside > b->outside || (a->outside == b->outside && a->documented && !b->documented);
  });
  if (enter.size() > most_tubes) enter.resize(most_tubes);
  std::vector<Change> all;
  for (const data::TubeRow* tube : enter) {
    const auto by = tube->name.find(" x ");
    all.push_back(
        {said(row, tube->name) + (tube->documented ? "" : " (ask the stockist)"),
         {{"adapter.tube.outside", tube->name.substr(0, by)}, {"adapter.tube.wall", tube->name.substr(by + 3)}}});
  }
  return all;
}
}  // namespace

std::vector<Change> changes_of(const data::MoveRow& row, const Build& build, const Solved& central) {
  if (!row.table.empty()) return stock_tubes(row, build);
  if (!row.to.empty()) {
    const KeyValue now = value_at(build, row.key);
    return listed_values(row, now);
  }
  const auto now = standing_at(row, build, central);
  return now ? steps_of(row, build, *now) : std::vector<Change>();
}
}  // namespace lumwright
