#include "data/tubes.hpp"
#include "description/key_value.hpp"
#include "description/stock_name.hpp"
#include "model/fan_unit.hpp"
#include "model/solved_fan.hpp"
#include "plan/moves.hpp"
#include "quantity/format.hpp"
#include "quantity/inches.hpp"
#include "quantity/text.hpp"
#include "quantity/units.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
constexpr int most_tubes = 6;

/// The owner writes this kind in inches: as this key stands, or, where it is not written, as the page has its kind.
bool in_inches(const description::KeyValue& now, const model::Solved& central) {
  if (now.kind != kind_of<Length>) return false;
  return is_imperial(now.written ? now.unit : central.page.of(AnyQuantity(now.si, now.kind)));
}
/// The unit in which a new value is written: the owner's, but for lengths one that his tools show.
std::string written_in(const description::KeyValue& now, const std::string& step_unit, const model::Solved& central) {
  if (now.kind != kind_of<Length>) return now.unit.empty() ? step_unit : now.unit;
  return in_inches(now, central) ? "in" : "mm";
}
std::string value_text(double si, Kind kind, const std::string& unit) {
  const double number = number_in(AnyQuantity(si, kind), unit);
  const std::string fraction = unit == "in" ? inch_fraction(number) : "";
  const std::string text = fraction.empty() ? fmt::format("{:.7g}", number) : fraction;
  return unit.empty() ? text : text + " " + unit;
}
/// A value of a key as the page tells it: in other units than it is written in where those are asked for.
std::string told(const description::KeyValue& key, const std::string& value, const model::Solved& central) {
  if (key.form != description::KeyValue::Form::quantity || key.kind != kind_of<Length>) return value;
  const WrittenBand band = parse_band(value, key.kind);
  const AnyQuantity q(band.value, key.kind);
  const bool inches =
      central.units == UnitSystem::as_written ? in_inches(key, central) : central.units == UnitSystem::imperial;
  return inches == is_imperial(band.unit) ? value : format(q, inches ? "in" : "mm", 4);
}
std::string said(const data::MoveRow& row, const std::string& value, const std::string& with = "") {
  std::string text = row.says;
  for (const auto& [gap, words] : {std::pair{"{}", &value}, std::pair{"[]", &with}})
    if (const auto at = text.find(gap); at != std::string::npos) text.replace(at, 2, *words);
  return text;
}
/// What is written besides, in the units of the owner; the first of it in words.
std::string add_fixed(const data::MoveRow& row, const description::Build& build, const model::Solved& central,
                      Change& change) {
  std::string first;
  for (const auto& [key, value, inch] : row.with) {
    const description::KeyValue there = description::value_at(build, key);
    change.settings.push_back({key, !inch.empty() && in_inches(there, central) ? inch : value});
    if (first.empty()) first = told(there, change.settings.back().value, central);
  }
  return first;
}
/// The cut-out of the lid where only the table of frames tells it.
std::optional<double> opening_of_the_frame(std::string_view key, const model::Solved& central) {
  if (key != "fan.holes.opening" || !central.unit || !central.unit->fan) return std::nullopt;
  const auto& pattern = central.unit->fan->drawing.pattern;
  if (!pattern || !pattern->opening) return std::nullopt;
  return AnyQuantity(*pattern->opening).si;
}
/// Where a key stands: as written, else as the solve took it, else where the row begins.
std::optional<description::KeyValue> standing_at(const data::MoveRow& row, const description::Build& build,
                                                 const model::Solved& central) {
  description::KeyValue now = description::value_at(build, row.key);
  if (now.written) return row.with.empty() ? std::optional(now) : std::nullopt;  // a row for what is not there yet
  if (!row.at.empty()) {
    now.si = parse_band(row.at, now.kind).value;
    return now;
  }
  if (const auto opening = opening_of_the_frame(row.key, central)) {
    now.si = *opening;
    return now;
  }
  const model::Input* used = central.inputs.find(row.key);
  if (used == nullptr || now.form != description::KeyValue::Form::quantity) return std::nullopt;
  now.si = used->value.si;
  now.unit = used->unit;
  return now;
}
std::vector<Change> steps_of(const data::MoveRow& row, const description::Build& build,
                             const description::KeyValue& now, const model::Solved& central) {
  const bool inches = !row.inch.empty() && in_inches(now, central);
  const WrittenBand step = parse_band(inches ? row.inch : row.step, now.kind);
  const std::string unit = now.form == description::KeyValue::Form::count ? "" : written_in(now, step.unit, central);
  const double whole = now.si / step.value;
  const double first = row.toward > 0 ? std::floor(whole + 1e-6) : std::ceil(whole - 1e-6);
  std::vector<Change> all;
  for (int k = 1; k <= row.most; ++k) {
    const double si = (first + row.toward * k) * step.value;
    if (si < -1e-12 || (si < 1e-12 && now.form == description::KeyValue::Form::count)) break;
    const std::string value = value_text(std::max(si, 0.0), now.kind, unit);
    Change change{"", {{row.key, value}}};
    if (now.half > 0.0) change.settings.back().value += " +- " + value_text(now.half, now.kind, unit);
    for (const auto& [key, times] : row.along) {
      const description::KeyValue other = description::value_at(build, key);
      if (!other.written) continue;
      const double with = other.si + times * (si - now.si);
      if (with <= 0.0) return all;
      change.settings.push_back({key, value_text(with, other.kind, written_in(other, unit, central))});
    }
    const std::string with = add_fixed(row, build, central, change);
    change.words = said(row, told(now, value, central), with);
    all.push_back(std::move(change));
  }
  return all;
}
std::vector<Change> listed_values(const data::MoveRow& row, const description::Build& build,
                                  const model::Solved& central) {
  const description::KeyValue now = description::value_at(build, row.key);
  std::vector<Change> all;
  for (const std::string& value : row.to) {
    if (now.form == description::KeyValue::Form::words && now.words == value) continue;
    if (now.form == description::KeyValue::Form::quantity && now.written &&
        row.toward * (parse_band(value, now.kind).value - now.si) <= 1e-9 * now.si)
      continue;
    Change change{said(row, told(now, value, central)), {{row.key, value}}};
    add_fixed(row, build, central, change);
    all.push_back(std::move(change));
  }
  return all;
}
/// Stock tubes that could enter the bore, the widest first: those of a written list before those that continue one.
std::vector<Change> stock_tubes(const data::MoveRow& row, const description::Build& build,
                                const model::Solved& central) {
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
        {said(row, description::stock_tube(*tube, central.units)) + (tube->documented ? "" : " (ask the stockist)"),
         {{"adapter.tube.outside", tube->name.substr(0, by)}, {"adapter.tube.wall", tube->name.substr(by + 3)}}});
  }
  return all;
}
}  // namespace

std::vector<Change> changes_of(const data::MoveRow& row, const description::Build& build,
                               const model::Solved& central) {
  if (!row.table.empty()) return stock_tubes(row, build, central);
  if (!row.to.empty()) return listed_values(row, build, central);
  const auto now = standing_at(row, build, central);
  return now ? steps_of(row, build, *now, central) : std::vector<Change>();
}
}  // namespace lumwright::plan
