#include "model/fan_unit.hpp"
#include "model/solved_fan.hpp"
#include "report/build_sheet.hpp"
#include "description/stock_name.hpp"
#include "report/detail/build_sheet_parts.hpp"
#include "report/detail/build_sheet_steps.hpp"
#include "report/templates/templates.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace lumwright::report {
namespace {
std::string say(Length length, const TextStyle& style) { return bench_size({length, ""}, style); }
/// The drills that the shop has, as the sizes are told; empty: metric ones, and whichever is nearest.
std::string_view drill_set(const model::Solved& solved, const TextStyle& style) {
  if (marks_out_in_inches(solved, style.units)) return "inch";
  return style.units == UnitSystem::metric ? "metric" : "";
}

void write_measuring(Page& page, const description::Build& build, const model::FanUnit& unit) {
  std::vector<Page::Row> rows{{{"measure", "with", "you wrote"}, "", Ink::faint}};
  const auto row = [&](std::string what, std::string with, const description::Given<Length>& given, std::string remark,
                       bool stock = true) {
    std::string wrote = stock   ? description::stock_size(given, page.style().units)
                        : given ? bench_size({given.band->value, given.unit}, page.style())
                                : "";
    if (given.has_spread) wrote += ", with a spread";
    if (!given) wrote = "nothing yet";
    rows.push_back({{std::move(what), std::move(with), wrote}, std::move(remark)});
  };
  row("bore of the chimney", "telescopic gauge, micrometer", build.engine.chimney.bore,
      "three heights, across two directions: the least counts; feel for a seam", false);
  row("depth of the chimney", "depth gauge", build.engine.chimney.depth,
      "down to the blast pipe or whatever stands in it", false);
  row("outside of the tube", "micrometer", build.adapter.tube.outside,
      "the tube in hand, not its nominal size; the largest counts");
  row("wall of the tube", "micrometer", build.adapter.tube.wall, "");
  row("thickness of the sheet", "micrometer", build.adapter.box.sheet, "");
  row("frame of the fan", "calipers", build.fan.frame,
      unit.fan && !unit.fan->drawing.measure_first.empty() ? unit.fan->drawing.measure_first
                                                           : "and the pitch of its holes");
  page.heading("Measure before you cut");
  page.gap();
  page.table(rows);
}
std::vector<Page::Row> cut_rows(const model::Solved& solved, const TextStyle& style) {
  const model::FanUnit& unit = *solved.unit;
  const description::part::Adapter& adapter = solved.build.adapter;
  const auto stock = [&](const description::Given<Length>& given, Length made) {
    return given ? description::stock_size(given, style.units) : say(made, style);
  };
  std::vector<Page::Row> rows{{{"part", "of", "cut"}, "", Ink::faint}};
  if (unit.flange)
    rows.push_back(
        {{"flange",
          fmt::format("{} {}", stock(adapter.flange.thickness, unit.flange->thickness), unit.flange->metal.name),
          "disc " + say(unit.flange->outside, style)},
         ""});
  if (unit.tube)
    rows.push_back({{"tube",
                     fmt::format("{} {}", description::stock_tube(adapter.tube.outside, adapter.tube.wall, style.units),
                                 unit.tube->metal.name),
                     say(unit.tube->length, style) + " long"},
                    ""});
  if (!unit.box) return rows;
  const model::MadeBox& box = *unit.box;
  const std::string sheet = fmt::format("{} {}", stock(adapter.box.sheet, box.sheet), box.metal);
  if (box.round) {
    rows.push_back(
        {{"side", sheet,
          fmt::format("strip {} x {}", say(box.round->strip_length, style), say(box.round->strip_width, style))},
         fmt::format("{} of it is the lap", say(box.lap, style))});
    rows.push_back(
        {{"lid and bottom", sheet, "2 discs " + say(box.round->disc_blank, style)},
         fmt::format("with a rim of {}, which brings them to {}", say(box.skirt, style), say(box.round->disc, style))});
  } else if (box.net) {
    rows.push_back(
        {{"box", sheet, fmt::format("{} x {}", say(box.net->across.total, style), say(box.net->along.total, style))},
         "folds up"});
    rows.push_back({{"lid", sheet, fmt::format("square {}", say(box.plate, style))}, ""});
  }
  return rows;
}
void write_drilling(Page& page, const model::Solved& solved, const TextStyle& style) {
  std::vector<Page::Row> rows{{{"hole", "how many", "where", "how"}, "", Ink::faint}};
  for (const Drilling& d : drillings(*solved.unit, drill_set(solved, style)))
    rows.push_back({{say(d.diameter, style), std::to_string(d.count), d.where, d.how}, ""});
  if (rows.size() == 1) return;
  page.heading("Drill list, in order of size");
  page.gap();
  page.table(rows);
}
void write_screws(Page& page, const model::FanUnit& unit, const TextStyle& style) {
  if (!unit.flange || !unit.flange->screws) return;
  const model::FlangeScrews& s = *unit.flange->screws;
  page.heading("Taps and screws");
  page.gap();
  std::string text = fmt::format("flange: {} screws {}", s.count, s.thread.name);
  const workshop::ThreadShare share = workshop::thread_share(s.thread, s.thread.tap);
  text += s.tapped ? fmt::format(", tapping drill {} (leaves {} of the thread), clearance in the tin {}",
                                 say(s.thread.tap, style), percent(share.of_form, 2), say(s.clearance, style))
                   : fmt::format(" with nuts, clearance {} (a tap would want {})", say(s.clearance, style),
                                 say(s.thread.tap, style));
  page.paragraph(text, 2);
  if (unit.fan && unit.fan->drawing.pattern) {
    const workshop::FanPattern& pattern = *unit.fan->drawing.pattern;
    page.paragraph(
        fmt::format("fan: {} screws {} through holes of {}", pattern.holes.size(),
                    pattern.screws.empty() ? "to suit" : fmt::format("{}", fmt::join(pattern.screws, " or ")),
                    say(pattern.hole, style)),
        2);
  }
}
void write_places(Page& page, const model::Solved& solved) {
  const bool inches = marks_out_in_inches(solved, page.style().units);
  std::vector<Page::Row> rows{
      {{"part", "hole", "size", "x, y about the middle", "x, y from the edges"}, "", Ink::faint}};
  const auto one = [&](Length size) {
    return inches ? fixed_number(in(size, inch), 3) : fixed_number(in(size, mm), 2);
  };
  const auto pair = [&](workshop::PlanePoint p) { return one(p.x) + ", " + one(p.y); };
  const Length digit = inches ? 1.0 * thou : 0.01 * mm;
  for (const HolePlace& hole : hole_places(*solved.unit))
    rows.push_back({{hole.part, hole.what, one(hole.diameter), pair(hole.centre), pair(hole.from_edges(digit))}, ""});
  if (rows.size() == 1) return;
  page.heading(fmt::format("Where the holes lie, in {}: x to the right, y up", inches ? "inches" : "mm"));
  page.gap();
  page.table(rows);
}
void write_caution(Page& page, const plan::Caution& caution) {
  page.hung("mind", caution.title, Ink::care, Ink::strong);
  page.hung("", caution.text);
  if (!caution.authority.empty()) page.hung("", "Authority: " + caution.authority, Ink::faint);
}
bool bites_at(const plan::Caution& caution, const std::string& step) {
  return std::find(caution.steps.begin(), caution.steps.end(), step) != caution.steps.end();
}
// At each step where it bites, in full; what has no step in this build stands at the end.
void write_steps(Page& page, const plan::Assessment& assessment, const std::vector<BenchStep>& steps) {
  page.heading("In this order");
  std::set<std::string> shown;
  int number = 0;
  for (const BenchStep& step : steps) {
    page.gap();
    page.hung(std::to_string(++number), step.title, Ink::strong, Ink::strong);
    page.hung("", step.text);
    for (const plan::Caution& caution : assessment.cautions) {
      if (!bites_at(caution, step.id)) continue;
      // Told in full once, and once more where the fire is lit; in between its title reminds.
      if (shown.insert(caution.id).second || step.id == "light")
        write_caution(page, caution);
      else
        page.hung("mind", caution.title + ", as above", Ink::care);
    }
  }
  page.gap();
  for (const plan::Caution& caution : assessment.cautions)
    if (shown.insert(caution.id).second) write_caution(page, caution);
}
}  // namespace

std::string build_sheet(const plan::Assessment& assessment, const model::Solved& solved, const TextStyle& wanted) {
  if (!solved.unit.impossible.empty()) throw NothingToMake(solved.unit.impossible);
  if (!solved.unit)
    throw NothingToMake(fmt::format("the description says nothing of the unit to make; it needs {}",
                                    fmt::join(solved.unit.missing, ", ")));
  const model::FanUnit& unit = *solved.unit;
  TextStyle style = wanted;
  style.page = solved.page;
  Page page(style);
  page.paragraph("Build sheet: " + (assessment.build.empty() ? assessment.file : assessment.build), 0, Ink::strong);
  if (const auto failed = failed_geometry(assessment); !failed.empty()) {
    page.gap();
    page.paragraph(
        fmt::format("DRAFT. Do not cut to it: {} {}.", fmt::join(failed, ", "), failed.size() == 1 ? "fails" : "fail"),
        0, Ink::bad);
  }
  if (!unit.missing.empty()) {
    page.gap();
    page.paragraph(fmt::format("Not described, and so not here: {}", fmt::join(unit.missing, ", ")), 0, Ink::care);
  }
  const std::vector<BenchStep> steps = steps_of(assessment, solved, style);
  page.heading("Parts");
  page.gap();
  page.table(parts_list(solved, style));
  page.heading("Tools");
  page.gap();
  page.paragraph(tools_list(steps) + ", and the drills of the list below", 2);
  write_measuring(page, solved.build, unit);
  if (const auto rows = cut_rows(solved, style); rows.size() > 1) {
    page.heading("Cut list");
    page.gap();
    page.table(rows);
  }
  write_drilling(page, solved, style);
  write_screws(page, unit, style);
  write_places(page, solved);
  write_steps(page, assessment, steps);
  return page.finish();
}
}  // namespace lumwright::report
