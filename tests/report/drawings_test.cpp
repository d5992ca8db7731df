#include "report/drawings.hpp"
#include "../plan/describe.hpp"
#include "near.hpp"
#include "report/build_sheet.hpp"
#include "report/templates/orifice_plates.hpp"
#include "report/templates/templates.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <set>
using namespace lumwright;

namespace {
// 60 mm frame: cut-out 57 mm and M3; 9/16 in tube, 1 1/2 in long; three 8BA on 30 mm; 1.2 mm brass; 10 thou tin; 6 mm
// grommet hole: common practice, no source
std::string practice(const std::string& shape) {
  return "engine: { chimney: { bore: 0.585 in, depth: 36 mm, wall: 1.6 mm } }\n"
         "adapter:\n"
         "  tube: { outside: 9/16 in, wall: 0.014 in, length: 1 1/2 in, engaged: 30 mm }\n"
         "  flange: { outside: 42 mm, thickness: 1.2 mm, holes: { count: 3, pitch_circle: 30 mm, thread: 8BA } }\n"
         "  box: { shape: " +
         shape +
         ", diameter: 84 mm, height: 40 mm, sheet: 10 thou }\n"
         "fan: { kind: axial, frame: 60 mm, thickness: 15 mm, mount: inside, mass: 40 g }\n"
         "supply: { leads: { outside: 3 mm } }\n";
}
const Drilling* drilling(const std::vector<Drilling>& all, const std::string& where) {
  for (const Drilling& d : all)
    if (d.where == where) return &d;
  return nullptr;
}
}  // namespace

TEST_CASE("common practice comes out of the tables") {
  const Build build = described(practice("round"));
  const Solved solved = solve(build);
  REQUIRE(solved.unit);
  const auto all = drillings(*solved.unit);
  REQUIRE(drilling(all, "lid, cut-out") != nullptr);
  CHECK(drilling(all, "lid, cut-out")->diameter == near(57.0 * mm, 1e-9));
  CHECK(drilling(all, "lid, fan screws")->count == 4);
  CHECK(drilling(all, "side, grommet")->diameter == near(6.0 * mm, 1e-9));
  CHECK(drilling(all, "flange, screws")->count == 3);
  const auto& screws = solved.unit->fan->drawing.pattern->screws;
  CHECK(std::find(screws.begin(), screws.end(), "M3") != screws.end());
  CHECK_FALSE(solved.unit->flange->screws->tapped);  // 1.2 mm of brass: nuts
  for (std::size_t i = 1; i < all.size(); ++i) CHECK(all[i - 1].diameter <= all[i].diameter);
}
TEST_CASE("holes of the flange lie on their circle, those of the bottom over them") {
  // circle of 30 mm, first hole at the top: (0, 15), (-12.990381, -7.5), (12.990381, -7.5): handbook factors for three
  // holes, 0.866025 and 0.5 of the pitch circle over 2
  const Solved solved = solve(described(practice("round")));
  std::vector<HolePlace> flange, bottom;
  for (const HolePlace& hole : hole_places(*solved.unit)) {
    if (hole.part == "flange" && hole.what.starts_with("screw")) flange.push_back(hole);
    if (hole.part == "bottom" && hole.what.starts_with("flange screw")) bottom.push_back(hole);
  }
  REQUIRE(flange.size() == 3);
  REQUIRE(bottom.size() == 3);
  const double x[] = {0.0, -12.990381, 12.990381}, y[] = {15.0, -7.5, -7.5};
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(std::abs(in(flange[i].centre.x, mm) - x[i]) < 1e-6);
    CHECK(std::abs(in(flange[i].centre.y, mm) - y[i]) < 1e-6);
    CHECK(std::abs(in(flange[i].corner.x, mm) - x[i] - 21.0) < 1e-6);
    CHECK(distance(flange[i].centre, bottom[i].centre) < 1e-9 * mm);
  }
}
TEST_CASE("no word on a template lies over another or over a line") {
  std::vector<Build> builds = {described(practice("round")), described(practice("square"))};
  for (const std::string& name : example_names()) builds.push_back(example(name));
  for (const Build& build : builds) {
    const Solved solved = solve(build);
    if (!solved.unit) continue;
    for (const Template& part : templates(*solved.unit, build)) {
      CAPTURE(build.file);
      CAPTURE(part.id);
      for (const std::string& complaint : drawing::crowding(part.view)) FAIL_CHECK(complaint);
    }
  }
}
TEST_CASE("orifice plates: holes three diameters apart, words beside them") {
  const TestBox box = test_box_for({FanKind::axial, 60.0 * mm, 25.0 * mm, 70.0 * Pa, 570.0 * litre_per_min});
  bool several = false;
  for (const drawing::View& view : plate_views(box)) {
    CAPTURE(view.name);
    for (const std::string& complaint : drawing::crowding(view)) FAIL_CHECK(complaint);
    std::vector<drawing::Circle> holes;
    for (const drawing::Entity& entity : view.entities)
      if (const auto* circle = std::get_if<drawing::Circle>(&entity))
        if (circle->layer == drawing::Layer::cut) holes.push_back(*circle);
    REQUIRE(!holes.empty());
    if (holes.size() < 2) continue;
    several = true;
    const auto apart =
        std::hypot(in(holes[0].centre.x - holes[1].centre.x, mm), in(holes[0].centre.y - holes[1].centre.y, mm));
    CHECK(apart == near(3.0 * in(holes[0].diameter, mm), 1e-9));
  }
  CHECK(several);
}
TEST_CASE("a build whose geometry fails is drawn as a draft or not at all") {
  const Build bad = example("high-tarn-32mm");
  const Solved solved = solve(bad);
  const Assessment assessment = assess(bad);
  CHECK_THROWS_AS(drawing_files(assessment, solved, {"A4", {}, false}), NotDrawn);
  const auto files = drawing_files(assessment, solved, {"A4", {}, true});
  bool stamped = false;
  for (const NamedText& file : files)
    if (file.name.ends_with(".svg")) stamped = stamped || file.text.find("DRAFT") != std::string::npos;
  CHECK(stamped);
}
TEST_CASE("a blower is not drawn before it is measured") {
  const auto lid = [](const std::string& measured) {
    const Solved solved = solve(example("tarn-beck", {{"measured: yes", "measured: " + measured}}));
    return lid_holes(*solved.unit->fan).has_value();
  };
  CHECK(lid("yes"));
  CHECK_FALSE(lid("no"));
  const Assessment a = assess(example("tarn-beck", {{"measured: yes", "measured: no"}}));
  CHECK(verdict(a, "make.lid") == Verdict::unknown);
}
TEST_CASE("a flange with too little metal fails, and a thread that no table has is said so") {
  CHECK(verdict(assess(example("tarn-beck", {{"outside: 38 mm", "outside: 33 mm"}})), "make.flange") == Verdict::fail);
  const Assessment odd = assess(example("tarn-beck", {{"thread: 8BA", "thread: 9XY"}}));
  CHECK(verdict(odd, "make.thread") == Verdict::fail);
  CHECK(find_check(odd, "make.thread")->why.find("9XY") != std::string::npos);
}
TEST_CASE("the build sheet names each step once and each caution where it bites") {
  const Build build = example("tarn-beck");
  const std::string sheet = build_sheet(assess(build), solve(build), TextStyle{});
  std::size_t at = 0;
  for (const char* words : {"Measure before you cut", "Cut list", "Drill list", "Taps and screws", "In this order",
                            "Braze the tube", "Silver brazing", "Pickling acid", "Cut and drill", "Wire it",
                            "Lithium cells", "First lighting-up", "Carbon monoxide"}) {
    const std::size_t found = sheet.find(words, at);
    CAPTURE(words);
    REQUIRE(found != std::string::npos);
    at = found;
  }
  for (const Caution& caution : assess(build).cautions) {
    CAPTURE(caution.id);
    CHECK(sheet.find(caution.title) != std::string::npos);
  }
  CHECK_THROWS_AS(build_sheet(assess(described("name: x\n")), solve(described("name: x\n")), TextStyle{}),
                  NothingToMake);
}
