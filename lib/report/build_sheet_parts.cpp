#include "report/build_sheet_parts.hpp"
#include "data/tools.hpp"
#include "description/written.hpp"
#include "quantity/format.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright {
namespace {
/// As its owner wrote it: a stockist's name stays one. No powers of ten.
template <class Q>
std::string as_written(const Given<Q>& given) {
  if (!given) return "";
  const std::string text = written(AnyQuantity(*given), given.unit);
  const bool short_enough =
      text.find("e-") == std::string::npos && text.find("e+") == std::string::npos && text.size() < 14;
  return short_enough ? text : format(AnyQuantity(*given), given.unit, 4);
}
void add(std::vector<Page::Row>& rows, std::string part, std::string number, std::vector<std::string> words) {
  std::erase_if(words, [](const std::string& word) { return word.empty(); });
  if (!words.empty())
    rows.push_back({{std::move(part), std::move(number), fmt::format("{}", fmt::join(words, ", "))}, ""});
}
std::string joined(const std::string& one, const std::string& between, const std::string& other) {
  return one.empty() || other.empty() ? one + other : one + between + other;
}
void add_metal(std::vector<Page::Row>& rows, const Build& build) {
  const part::Adapter& a = build.adapter;
  add(rows, "tube", "1",
      {joined(as_written(a.tube.outside), " x ", as_written(a.tube.wall)), a.tube.material ? *a.tube.material : "brass",
       a.tube.length ? as_written(a.tube.length) + " long" : ""});
  if (a.flange.outside || a.flange.thickness)
    add(rows, "flange", "1",
        {joined(as_written(a.flange.thickness), " ", a.flange.material ? *a.flange.material : "brass"),
         a.flange.outside ? as_written(a.flange.outside) + " across" : ""});
  if (a.box.sheet || a.box.diameter)
    add(rows, "box", "1", {joined(as_written(a.box.sheet), " ", a.box.material ? *a.box.material : "sheet")});
  if (a.joint) add(rows, "joint of tube and flange", "", {*a.joint});
}
void add_screws(std::vector<Page::Row>& rows, const FanUnit& unit) {
  if (unit.flange && unit.flange->screws) {
    const FlangeScrews& s = *unit.flange->screws;
    add(rows, "screws of the flange", std::to_string(s.count), {s.thread.name + (s.tapped ? "" : " with nuts")});
  }
  if (unit.fan && unit.fan->drawing.pattern) {
    const FanPattern& pattern = *unit.fan->drawing.pattern;
    add(rows, "screws of the fan", std::to_string(pattern.holes.size()),
        {pattern.screws.empty() ? "to suit its holes"
                                : fmt::format("{}", fmt::join(pattern.screws, " or ")) + " with washers"});
  }
}
void add_supply(std::vector<Page::Row>& rows, const Build& build) {
  const part::SupplyPart& s = build.supply;
  if (s.pack.cell) {
    const int series = s.pack.series ? *s.pack.series : 1, parallel = s.pack.parallel ? *s.pack.parallel : 1;
    add(rows, "cells", std::to_string(series * parallel),
        {*s.pack.cell,
         parallel > 1 ? fmt::format("{} in series, {} side by side", series, parallel)
         : series > 1 ? "in series"
                      : "",
         s.pack.capacity ? as_written(s.pack.capacity) : ""});
  }
  if (s.step_up.module || s.step_up.output)
    add(rows, "step-up", "1",
        {s.step_up.module ? *s.step_up.module : "", s.step_up.output ? "set to " + as_written(s.step_up.output) : ""});
  if (s.control.kind && *s.control.kind != "none") add(rows, "speed control", "1", {*s.control.kind});
  if (s.fuse) add(rows, "fuse with holder", "1", {as_written(s.fuse)});
  if (s.leads.section || s.leads.length)
    add(rows, "wires", "2", {as_written(s.leads.section), s.leads.length ? as_written(s.leads.length) + " each" : ""});
}
}  // namespace

std::vector<Page::Row> parts_list(const Solved& solved, const TextStyle&) {
  std::vector<Page::Row> rows{{{"part", "how many", "what"}, "", Ink::faint}};
  const Build& build = solved.build;
  if (build.fan.frame || build.fan.kind)
    add(rows, "fan", "1",
        {joined(as_written(build.fan.frame), " ", build.fan.kind ? *build.fan.kind : ""),
         as_written(build.fan.rated.voltage), as_written(build.fan.rated.current)});
  add_metal(rows, build);
  if (solved.unit) add_screws(rows, *solved.unit);
  add_supply(rows, build);
  return rows;
}
std::string tools_list(const std::vector<BenchStep>& steps) {
  std::vector<std::string> names;
  for (const data::ToolRow& row : data::tools()) {
    const bool done =
        std::any_of(steps.begin(), steps.end(), [&](const BenchStep& step) { return step.id == row.step; });
    if (!done) continue;
    for (const std::string& name : row.names)
      if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  }
  return fmt::format("{}", fmt::join(names, ", "));
}
}  // namespace lumwright
