// Sheet 1: the whole unit with its parts list.
#include "data/metals.hpp"
#include "drawing/crowding.hpp"
#include "model/fan_unit.hpp"
#include "model/solved.hpp"
#include "near.hpp"
#include "report/../plan/describe.hpp"
#include "report/answers.hpp"
#include "report/templates/templates.hpp"
#include "report/templates/wiring.hpp"
#include "report/unit_items.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <map>
#include <numbers>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::report;

namespace {
/// Boxes from small to large, round and square, with the fan in and out.
std::vector<Build> builds() {
  std::vector<Build> all;
  for (const std::string& name : example_names()) all.push_back(example(name));
  for (const char* shape : {"round", "square"})
    for (const double across : {62.0, 84.0, 130.0, 190.0})
      for (const char* mount : {"inside", "outside"})
        all.push_back(
            described(fmt::format("engine: {{ chimney: {{ bore: 14.8 mm, depth: 36 mm, wall: 1.6 mm }} }}\nadapter:\n"
                                  "  tube: {{ outside: 14.4 mm, wall: 0.36 mm, length: 38 mm, engaged: 30 mm }}\n"
                                  "  flange: {{ outside: 42 mm, thickness: 1.2 mm, holes: {{ count: 4, pitch_circle: "
                                  "30 mm, thread: 8BA }} }}\n"
                                  "  box: {{ shape: {}, diameter: {:.0f} mm, height: {:.0f} mm, sheet: 0.25 mm }}\n"
                                  "  bleed: {{ holes: 6, diameter: 6 mm }}\n"
                                  "fan: {{ kind: axial, frame: 60 mm, thickness: 15 mm, mount: {}, mass: 40 g }}\n"
                                  "supply: {{ leads: {{ outside: 3 mm }} }}\n",
                                  shape, across, 0.6 * across, mount)));
  return all;
}
std::vector<std::string> words_of(const drawing::View& view) {
  std::vector<std::string> out;
  for (const drawing::Ink& ink : drawing::ink(view))
    if (const auto* words = std::get_if<drawing::Words>(&ink.shape)) out.push_back(words->text);
  return out;
}
}  // namespace

TEST_CASE("the whole unit is on one sheet, on every paper, and nothing on it runs into anything else") {
  for (const Build& build : builds())
    for (const char* name : {"A4", "Letter", "A3"})
      for (const UnitSystem units : {UnitSystem::as_written, UnitSystem::metric, UnitSystem::imperial}) {
        CAPTURE(build.file);
        CAPTURE(name);
        const Solved solved = solve_cold(build);
        REQUIRE(solved.unit);
        const drawing::Paper paper = drawing::paper(name);
        const auto sheet = general_arrangement(*solved.unit, build, units, paper);
        REQUIRE(sheet);
        CHECK_FALSE(sheet->to_cut);
        const drawing::Box room = drawing::room_on(paper, false);
        double scale = 1.0;
        for (const drawing::Placed& placed : sheet->views) {
          for (const std::string& complaint : drawing::crowding(placed.view)) FAIL_CHECK(complaint);
          const drawing::Extent reach =
              drawing::extent(drawing::shifted(drawing::ink(placed.view), drawing::spot(placed.at)));
          CHECK(reach.low.x >= in(room.low.x, mm) - 1e-6);
          CHECK(reach.low.y >= in(room.low.y, mm) - 1e-6);
          CHECK(reach.high.x <= in(room.high.x, mm) + 1e-6);
          CHECK(reach.high.y <= in(room.high.y, mm) + 1e-6);
          for (const drawing::Placed& other : sheet->views) {
            if (&other == &placed) continue;
            const drawing::Extent taken =
                drawing::extent(drawing::shifted(drawing::ink(other.view), drawing::spot(other.at)));
            CHECK((taken.low.x > reach.high.x || taken.high.x < reach.low.x || taken.low.y > reach.high.y ||
                   taken.high.y < reach.low.y));
          }
          scale = std::min(scale, placed.view.scale);
        }
        // ISO 5455: 2:1, 1:1, 1:2, 1:5, 1:10 (from memory)
        for (const drawing::Placed& placed : sheet->views) {
          const double s = placed.view.scale;
          CHECK((s == 2.0 || s == 1.0 || s == 0.5 || s == 0.2 || s == 0.1));
        }
      }
}
TEST_CASE("every item of the parts list has one balloon, and every balloon an item") {
  for (const Build& build : builds()) {
    const Solved solved = solve_cold(build);
    const auto items = unit_items(*solved.unit, build, UnitSystem::as_written);
    const auto sheet = general_arrangement(*solved.unit, build, UnitSystem::as_written, drawing::paper("A4"));
    REQUIRE(sheet);
    const drawing::View &list = sheet->views.at(0).view, &section = sheet->views.at(1).view;
    std::map<std::string, int> rings;
    for (const drawing::Entity& entity : section.entities)
      if (const auto* words = std::get_if<drawing::Text>(&entity))
        if (words->words.find_first_not_of("0123456789") == std::string::npos) ++rings[words->words];
    CHECK(rings.size() == items.size());
    const std::vector<std::string> table = words_of(list);
    for (std::size_t i = 0; i < items.size(); ++i) {
      CAPTURE(items[i].part);
      CHECK(rings[fmt::format("{}", i + 1)] == 1);
      CHECK(std::find(table.begin(), table.end(), items[i].part) != table.end());
    }
  }
}
TEST_CASE("the sizes of a sheet that is not at true size are true all the same") {
  // hand: Tarn Beck on its chimney: 33 mm of tube within, 1.6 mm of flange, 46 mm of box, two sheets of 0.25 mm, 15 mm
  // of fan are 96.1 mm; at 1:2 the line beside it is 48.05 mm long
  const Build build = example("tarn-beck");
  const Solved solved = solve_cold(build);
  const auto sheet = general_arrangement(*solved.unit, build, UnitSystem::metric, drawing::paper("A4"));
  REQUIRE(sheet);
  const drawing::View& section = sheet->views.at(1).view;
  CHECK(section.scale == 0.5);
  bool said = false, drawn = false;
  for (const std::string& words : words_of(section)) said = said || words == "in all 96.1";
  for (const drawing::Ink& ink : drawing::ink(section))
    if (const auto* stroke = std::get_if<drawing::Stroke>(&ink.shape))
      if (ink.layer == drawing::Layer::dimension && stroke->points.size() == 2)
        drawn = drawn || std::abs(std::abs(stroke->points[0].y - stroke->points[1].y) - 48.05) < 1e-6;
  CHECK(said);
  CHECK(drawn);
}
TEST_CASE("masses of the parts list are those of the metal in it") {
  // hand: brass of 8.4 to 8.5 g/cm3. Tube: pi (17.24 - 0.45) 0.45 x 44 mm = 1044 mm3, 8.9 g. Side: 251 x 46 x 0.25 mm
  // of steel of 7.85 g/cm3 (EN 1993-1-1) = 22.7 g; two discs of 86.5 mm: 2 x 5877 mm2 x 0.25 mm = 23.1 g
  const Build build = example("tarn-beck");
  const Solved solved = solve_cold(build);
  std::map<std::string, double> grams;
  for (const UnitItem& item : unit_items(*solved.unit, build, UnitSystem::metric))
    if (item.mass) grams[item.part] = number_in(AnyQuantity(*item.mass), "g");
  CHECK(std::abs(grams["tube"] - 8.85) < 0.1);
  CHECK(std::abs(grams["side of the box"] - 22.7) < 0.5);
  CHECK(std::abs(grams["bottom and lid"] - 23.1) < 0.5);
  CHECK(grams["fan"] == doctest::Approx(38.0));
}
TEST_CASE("the wiring diagram shows what is described, and says what the checks say") {
  for (const std::string& name : example_names()) {
    CAPTURE(name);
    const Build build = example(name);
    const Solved solved = solve(build);
    const plan::Assessment a = plan::assess(build);
    const auto sheet = wiring_diagram(a, solved, TextStyle{}, drawing::paper("A4"));
    REQUIRE(sheet);
    const drawing::View& view = sheet->views.at(0).view;
    for (const std::string& complaint : drawing::crowding(drawing::ink(view))) FAIL_CHECK(complaint);
    std::string all;
    for (const std::string& words : words_of(view)) all += words + "|";
    CHECK((all.find("fuse") != std::string::npos) == bool(build.supply.fuse));
    CHECK((all.find("step-up") != std::string::npos) == bool(build.supply.step_up.output));
    const bool controlled = build.supply.control.kind && *build.supply.control.kind != "none";
    CHECK((all.find("control") != std::string::npos) == controlled);
    for (const char* key : {"power.pack_voltage_start", "power.pack_current_end"})
      CHECK(all.find(number_of(a, key, TextStyle{})) != std::string::npos);
    const drawing::Box room = drawing::room_on(drawing::paper("A4"), false), reach = drawing::bounds(view);
    CHECK(reach.width() <= room.width());
  }
}
