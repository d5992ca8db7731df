#include "model/fan_unit.hpp"
#include "model/solved_fan.hpp"
#include "report/detail/build_sheet_parts.hpp"
#include "data/tools.hpp"
#include "description/stock_name.hpp"
#include "quantity/format.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright::report {
namespace {
/// As its owner wrote it; lengths in the units that are asked for, where it does not come by its stockist's name.
template <class Q>
std::string told_part(const description::Given<Q>& given, const TextStyle& style) {
  if (!given) return "";
  if (kind_of<Q> == kind_of<Length> && style.units != UnitSystem::as_written)
    return bench_size({AnyQuantity(*given), given.unit}, style);
  return description::as_its_owner(AnyQuantity(*given), given.unit);
}
void add(std::vector<Page::Row>& rows, std::string part, std::string number, std::vector<std::string> words) {
  std::erase_if(words, [](const std::string& word) { return word.empty(); });
  if (!words.empty())
    rows.push_back({{std::move(part), std::move(number), fmt::format("{}", fmt::join(words, ", "))}, ""});
}
std::string joined(const std::string& one, const std::string& between, const std::string& other) {
  return one.empty() || other.empty() ? one + other : one + between + other;
}
void add_metal(std::vector<Page::Row>& rows, const description::Build& build, const TextStyle& style) {
  const description::part::Adapter& a = build.adapter;
  add(rows, "tube", "1",
      {description::stock_tube(a.tube.outside, a.tube.wall, style.units), a.tube.material ? *a.tube.material : "brass",
       a.tube.length ? told_part(a.tube.length, style) + " long" : ""});
  if (a.flange.outside || a.flange.thickness)
    add(rows, "flange", "1",
        {joined(description::stock_size(a.flange.thickness, style.units), " ",
                a.flange.material ? *a.flange.material : "brass"),
         a.flange.outside ? told_part(a.flange.outside, style) + " across" : ""});
  if (a.box.sheet || a.box.diameter)
    add(rows, "box", "1",
        {joined(description::stock_size(a.box.sheet, style.units), " ", a.box.material ? *a.box.material : "sheet")});
  if (a.joint) add(rows, "joint of tube and flange", "", {*a.joint});
}
void add_screws(std::vector<Page::Row>& rows, const model::FanUnit& unit) {
  if (unit.flange && unit.flange->screws) {
    const model::FlangeScrews& s = *unit.flange->screws;
    add(rows, "screws of the flange", std::to_string(s.count), {s.thread.name + (s.tapped ? "" : " with nuts")});
  }
  if (unit.fan && unit.fan->drawing.pattern) {
    const workshop::FanPattern& pattern = *unit.fan->drawing.pattern;
    add(rows, "screws of the fan", std::to_string(pattern.holes.size()),
        {pattern.screws.empty() ? "to suit its holes"
                                : fmt::format("{}", fmt::join(pattern.screws, " or ")) + " with nuts and washers"});
  }
}
void add_supply(std::vector<Page::Row>& rows, const description::Build& build, const TextStyle& style) {
  const description::part::SupplyPart& s = build.supply;
  if (s.pack.cell) {
    const int series = s.pack.series ? *s.pack.series : 1, parallel = s.pack.parallel ? *s.pack.parallel : 1;
    add(rows, "cells", std::to_string(series * parallel),
        {*s.pack.cell,
         parallel > 1 ? fmt::format("{} in series, {} side by side", series, parallel)
         : series > 1 ? "in series"
                      : "",
         s.pack.capacity ? told_part(s.pack.capacity, style) : ""});
  }
  if (s.step_up.module || s.step_up.output)
    add(rows, "step-up", "1",
        {s.step_up.module ? *s.step_up.module : "",
         s.step_up.output ? "set to " + told_part(s.step_up.output, style) : ""});
  if (s.control.kind && *s.control.kind != "none") add(rows, "speed control", "1", {*s.control.kind});
  if (s.switched && *s.switched != "none") add(rows, "switch", "1", {*s.switched});
  if (s.polarity && *s.polarity != "none" && *s.polarity != "plug that fits one way")
    add(rows, "guard against wrong polarity", "1", {*s.polarity});
  if (s.plugs && *s.plugs > 0)
    add(rows, s.polarity && *s.polarity == "plug that fits one way" ? "plugs that fit one way" : "plugs with sockets",
        std::to_string(*s.plugs), {"two poles"});
  if (s.fuse) add(rows, "fuse with holder", "1", {told_part(s.fuse, style)});
  if (s.leads.section || s.leads.length)
    add(rows, "wires", "2",
        {told_part(s.leads.section, style), s.leads.length ? told_part(s.leads.length, style) + " each" : ""});
}
}  // namespace

std::string bench_size(const model::Measure& size, const TextStyle& style) {
  const std::string unit = page_unit(size, style);
  std::string text = format(size.quantity, unit, unit == "thou" ? 3 : 4);  // no shop works to a hundredth of a thou
  const auto point = text.find('.'), blank = text.find(' ');
  if (point == std::string::npos || blank < point) return text;
  const auto last = text.find_last_not_of('0', blank - 1);
  return text.erase(last == point ? point : last + 1, blank - (last == point ? point : last + 1));
}
std::vector<Page::Row> parts_list(const model::Solved& solved, const TextStyle& style) {
  std::vector<Page::Row> rows{{{"part", "how many", "what"}, "", Ink::faint}};
  const description::Build& build = solved.build;
  if (build.fan.frame || build.fan.kind)
    add(rows, "fan", "1",
        {joined(description::stock_size(build.fan.frame, style.units), " ", build.fan.kind ? *build.fan.kind : ""),
         told_part(build.fan.rated.voltage, style), told_part(build.fan.rated.current, style)});
  add_metal(rows, build, style);
  if (build.fan.guard.kind && *build.fan.guard.kind != "none")
    add(rows, "finger guard over the fan", "1", {*build.fan.guard.kind});
  if (solved.unit) add_screws(rows, *solved.unit);
  add_supply(rows, build, style);
  return rows;
}
std::string tools_list(const std::vector<BenchStep>& steps) {
  std::vector<std::string> names;
  for (const data::ToolRow& row : data::tools()) {
    const bool done = std::any_of(steps.begin(), steps.end(), [&](const BenchStep& step) {
      return step.id == row.step || std::find(step.ways.begin(), step.ways.end(), row.step) != step.ways.end();
    });
    if (!done) continue;
    for (const std::string& name : row.names)
      if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  }
  return fmt::format("{}", fmt::join(names, ", "));
}
}  // namespace lumwright::report
