// What a man with an inch rule is given holds no millimetres to work to, and the other way round.
#include "data/first_words.hpp"
#include "near.hpp"
#include "plan/moves.hpp"
#include "report/../plan/describe.hpp"
#include "report/build_sheet.hpp"
#include "report/detail/csv.hpp"
#include "report/drawings.hpp"
#include "report/explain.hpp"
#include "report/files.hpp"
#include "report/templates/templates.hpp"
#include "report/text.hpp"
#include <doctest/doctest.h>
#include <regex>
#include <sstream>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;
using namespace lumwright::report;

namespace {
// The first example by a man who writes inches; sizes are rounded, nothing else is meant by them.
Build by_the_inch() {
  Build build = example(
      "tarn-beck",
      {{"bore: 17.60 mm +- 0.02 mm, depth: 37 mm", "bore: 0.578 in +- 0.001 in, depth: 1 7/16 in"},
       {"outside: 17.24 mm +- 0.01 mm, wall: 0.45 mm, length: 44 mm, engaged: 33 mm",
        "outside: 9/16 in, wall: 0.014 in, length: 1 3/4 in, engaged: 1 1/4 in"},
       {"outside: 38 mm, thickness: 1.6 mm", "outside: 1 1/2 in, thickness: 1/16 in"},
       {"pitch_circle: 27.5 mm", "pitch_circle: 1 1/16 in"},
       {"diameter: 78 mm, height: 46 mm, sheet: 0.25 mm", "diameter: 3 1/8 in, height: 1 3/4 in, sheet: 10 thou"},
       {"length: 62 mm, width: 41 mm", "length: 2 7/16 in, width: 1 5/8 in"},
       {"bore: 7.8 mm, length: 138 mm", "bore: 5/16 in, length: 5 7/16 in"},
       {"holes: 8, diameter: 8 mm", "holes: 8, diameter: 5/16 in"}});
  return build;
}
const std::string tube_by_name = "9/16 in x 0.014 in (14.29 x 0.36 mm)";
std::string joined_lines(std::string text) { return std::regex_replace(text, std::regex("\\s+"), " "); }
std::vector<std::string> cells_of(const std::string& line) {
  std::vector<std::string> cells;
  std::istringstream in(line);
  for (std::string cell; std::getline(in, cell, ',');) cells.push_back(cell);
  return cells;
}
const NamedText& file_of(const std::vector<NamedText>& files, const std::string& name) {
  const auto found = std::find_if(files.begin(), files.end(), [&](const NamedText& f) { return f.name == name; });
  REQUIRE(found != files.end());
  return *found;
}
/// Of all views: the words of dimensions and captions.
std::string words_of(const std::vector<Template>& parts) {
  std::string words;
  for (const Template& part : parts) words += dxf(part.view, {});
  return words;
}
}  // namespace

TEST_CASE("a tube of stock keeps its name on the sheet, the template, in its check and where it is explained") {
  const Build build = by_the_inch();
  const Solved solved = solve(build);
  const Assessment a = assess(build);
  CHECK(joined_lines(build_sheet(a, solved, {})).find(tube_by_name) != std::string::npos);
  CHECK(words_of(templates(*solved.unit, build)).find(tube_by_name) != std::string::npos);
  CHECK(find_check(a, "fit.stock")->why.find(tube_by_name) != std::string::npos);
  CHECK(joined_lines(explain_report(a, "fit.cold", {})).find("9/16 in (14.29 mm)") != std::string::npos);
}
TEST_CASE("a sheet in one system gives no size to work to in the other") {
  struct Row {
    UnitSystem units;
    const char* foreign;
  };
  const Row rows[] = {{UnitSystem::metric, "[0-9] (in|thou)\\b"}, {UnitSystem::imperial, "[0-9] mm\\b"}};
  for (const Row& row : rows)
    for (const Build& build : {by_the_inch(), example("tarn-beck")}) {
      Solved solved = solve(build);
      solved.units = row.units;
      std::string sheet = build_sheet(assess(build, row.units), solved, {.units = row.units});
      CAPTURE(sheet);
      sheet = sheet.substr(sheet.find("Cut list"), sheet.find("In this order") - sheet.find("Cut list"));
      // a name of stock has both, the second in brackets
      sheet = std::regex_replace(joined_lines(sheet),
                                 std::regex("[0-9/. ]+ (mm|in|thou)( x [0-9.]+ (mm|in|thou))? \\([^)]*\\)"), "stock");
      CHECK_FALSE(std::regex_search(sheet, std::regex(row.foreign)));
    }
}
TEST_CASE("the drill list of an inch shop names drills that it has, none further off than a drill cuts over") {
  const Build build = by_the_inch();
  const Solved solved = solve(build);
  for (const Drilling& d : drillings(*solved.unit, "inch")) {
    CAPTURE(d.how);
    CHECK(d.how.find("mm") == std::string::npos);
  }
  const auto all = drillings(*solved.unit, "inch");
  const auto bleed = std::find_if(all.begin(), all.end(), [](const Drilling& d) { return d.where == "side, bleed"; });
  REQUIRE(bleed != all.end());
  CHECK(bleed->how == "pilot 1/8 in, step drill up to 5/16 in");  // on size: nothing to file
}
TEST_CASE("templates in inches have no millimetres and those in millimetres no inches") {
  const Build build = by_the_inch();
  const Solved solved = solve(build);
  const auto sizes = [&](UnitSystem units) {
    std::string words = words_of(templates(*solved.unit, build, units));
    words.erase(0, words.find("ENTITIES"));
    words = std::regex_replace(words, std::regex("the line above is 100 mm long"), "");
    return std::regex_replace(words, std::regex("of 9/16 in x 0.014 in \\([^)]*\\)"), "");
  };
  CHECK(sizes(UnitSystem::metric).find("14.29") != std::string::npos);
  CHECK_FALSE(std::regex_search(sizes(UnitSystem::metric), std::regex("[0-9](\"| in\\b)")));
  CHECK(sizes(UnitSystem::imperial).find("9/16\"") != std::string::npos);
  CHECK_FALSE(std::regex_search(sizes(UnitSystem::imperial), std::regex("[0-9] mm\\b")));
  CHECK(sizes(UnitSystem::as_written).find("(14.29 mm)") != std::string::npos);
}
TEST_CASE("tables name the unit in their heads, hold six figures and say the same in either system") {
  const Build build = by_the_inch();
  const ReportData data = report_data(build, {});
  const auto metric = report_files(data, {.units = UnitSystem::metric}, {});
  const auto imperial = report_files(data, {.units = UnitSystem::imperial}, {});
  const auto plain = report_files(data, {}, {});
  CHECK(file_of(metric, "draught.csv").text.starts_with("curve,state,flow_l_per_min,pressure_Pa\n"));
  CHECK(file_of(imperial, "draught.csv").text.starts_with("curve,state,flow_CFM,pressure_inH2O\n"));
  CHECK(file_of(plain, "draught.csv").text.starts_with("curve,state,flow_m3_per_s,pressure_Pa\n"));
  CHECK(file_of(imperial, "raise.csv").text.find("water_temperature_degF") != std::string::npos);
  CHECK(file_of(imperial, "discharge.csv").text.find("pack_voltage_V") != std::string::npos);
  CHECK(file_of(imperial, "light-ups.csv").text.find("from_h,to_h") != std::string::npos);
  CHECK(file_of(imperial, "checks.csv").text.find(",thou,") != std::string::npos);
  std::istringstream a(file_of(metric, "draught.csv").text), b(file_of(imperial, "draught.csv").text);
  std::string in_metric, in_imperial;
  std::getline(a, in_metric), std::getline(b, in_imperial);
  std::size_t lines = 0;
  while (std::getline(a, in_metric) && std::getline(b, in_imperial)) {
    const auto x = cells_of(in_metric), y = cells_of(in_imperial);
    // NIST SP 811: one cubic foot is 28.3168 l, one inch of water 249.089 Pa
    CHECK(std::stod(x[2]) == doctest::Approx(28.316847 * std::stod(y[2])).epsilon(1e-5));
    CHECK(std::stod(x[3]) == doctest::Approx(249.08891 * std::stod(y[3])).epsilon(1e-5));
    for (const std::string& cell : {x[2], x[3], y[2], y[3]})
      CHECK(std::count_if(cell.begin(), cell.end(), [](char c) { return c >= '0' && c <= '9'; }) <= 10);  // 0.000123456
    ++lines;
  }
  CHECK(lines > 20);
}
TEST_CASE("advice is given in the unit of the page where its key is not written") {
  // no bleed holes are described: what is advised are holes of an inch drill for one who writes inches
  const auto advised = [](const Build& build) {
    Assessment a = assess(build);
    try_moves(a, build, UnitSystem::as_written, nullptr, {}, 40);
    std::string all;
    for (const Finding& f : a.checks)
      if (f.move) all += f.move->words + "\n";
    return all;
  };
  const std::string words = advised(example("high-tarn-32mm"));
  CHECK(words.find("bleed holes of 1/4 in") != std::string::npos);
}
