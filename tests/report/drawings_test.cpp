#include "model/solved_fan.hpp"
#include "report/drawings.hpp"
#include "data/first_words.hpp"
#include "drawing/crowding.hpp"
#include "near.hpp"
#include "report/../plan/describe.hpp"
#include "report/build_sheet.hpp"
#include "report/templates/orifice_plates.hpp"
#include "report/templates/templates.hpp"
#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <map>
#include <set>
#include <sstream>
using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::workshop;
using namespace lumwright::drawing;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;
using namespace lumwright::report;

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
// The same with bleed holes, and what else a case wants changed.
std::string with_bleed(const std::string& shape, int holes, const std::string& from = "", const std::string& to = "") {
  std::string text = practice(shape);
  text.insert(text.find("fan:"), "  bleed: { holes: " + std::to_string(holes) + ", diameter: 4 mm }\n");
  if (!from.empty()) text.replace(text.find(from), from.size(), to);
  return text;
}
std::vector<std::string> boxes() {
  std::vector<std::string> all;
  for (const char* shape : {"round", "square"}) {
    for (const int holes : {1, 2, 3, 7}) all.push_back(with_bleed(shape, holes));
    all.push_back(with_bleed(shape, 4, "height: 40 mm", "height: 12 mm"));
    all.push_back(with_bleed(shape, 4, "height: 40 mm", "height: 90 mm"));
    all.push_back(with_bleed(shape, 2, "mount: inside", "mount: outside"));     // no grommet
    all.push_back(with_bleed(shape, 2, "outside: 42 mm", "outside: 1.65 in"));  // inches beneath
    all.push_back(practice(shape));
  }
  return all;
}
const drawing::View* view_of(const std::vector<Template>& parts, const std::string& id) {
  for (const Template& part : parts)
    if (part.id == id) return &part.view;
  return nullptr;
}
struct Round {
  double x, y, diameter;  // mm
};
std::vector<Round> circles_of(const drawing::View& view) {
  std::vector<Round> all;
  for (const drawing::Entity& entity : view.entities)
    if (const auto* c = std::get_if<drawing::Circle>(&entity))
      if (c->layer == drawing::Layer::drill || c->layer == drawing::Layer::cut)
        all.push_back({in(c->centre.x, mm), in(c->centre.y, mm), in(c->diameter, mm)});
  return all;
}
// DXF R12: a CIRCLE has its middle behind the codes 10 and 20 and its radius behind 40.
std::vector<Round> circles_of(const std::string& dxf) {
  std::vector<Round> all;
  std::istringstream lines(dxf);
  bool circle = false;
  for (std::string code, value; std::getline(lines, code) && std::getline(lines, value);) {
    const int number = std::stoi(code);
    if (number == 0) {
      circle = value.starts_with("CIRCLE");
      if (circle) all.push_back({});
    }
    if (!circle) continue;
    if (number == 10) all.back().x = std::stod(value);
    if (number == 20) all.back().y = std::stod(value);
    if (number == 40) all.back().diameter = 2.0 * std::stod(value);
  }
  return all;
}
bool holds(const std::vector<Round>& circles, const HolePlace& hole) {
  return std::any_of(circles.begin(), circles.end(), [&](const Round& c) {
    return std::abs(c.x - in(hole.centre.x, mm)) < 1e-3 && std::abs(c.y - in(hole.centre.y, mm)) < 1e-3 &&
           std::abs(c.diameter - in(hole.diameter, mm)) < 1e-3;
  });
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
TEST_CASE("every hole of lid, bottom and sides is drawn at its place, for the scissors and for the machine") {
  for (const std::string& text : boxes()) {
    CAPTURE(text);
    const Build build = described(text);
    const Solved solved = solve(build);
    REQUIRE(solved.unit);
    const auto parts = templates(*solved.unit, build);
    std::map<std::string, int> found;
    for (const HolePlace& hole : hole_places(*solved.unit)) {
      CAPTURE(hole.part);
      CAPTURE(hole.what);
      const drawing::View* view = view_of(parts, hole.part);
      if (view == nullptr) view = view_of(parts, "side");  // floor and walls of a square box
      REQUIRE(view != nullptr);
      CHECK(holds(circles_of(*view), hole));
      CHECK(holds(circles_of(dxf(*view, {})), hole));
      ++found[hole.part + " " + hole.what.substr(0, hole.what.find_last_not_of(" 0123456789") + 1)];
    }
    // the drill list counts the same holes
    const auto listed = [&](const char* where) {
      const auto all = drillings(*solved.unit);
      return drilling(all, where) == nullptr ? 0 : drilling(all, where)->count;
    };
    int bleeds = 0, grommets = 0;
    for (const auto& [name, count] : found) {
      if (name.ends_with("side bleed")) bleeds += count;
      if (name.ends_with("side grommet")) grommets += count;
    }
    CHECK(bleeds == listed("side, bleed"));
    CHECK(grommets == listed("side, grommet"));
    CHECK(found["bottom tube"] == 1);
    CHECK(found["bottom flange screw"] == listed("bottom, flange screws"));
  }
}
TEST_CASE("the holes of a square box lie on the faces that they belong to") {
  // hand: inside 84 x 84 x 40 mm. A sharp fold takes 0.254 mm times the metal's share; the floor lies in the middle of
  // the net, and half up a wall is 20 mm from its rim. Three bleed holes go to three walls; the grommet to the wall
  // over the floor, beside a bleed hole: both a quarter of 84 - 2 x 6 mm (tabs) from the middle.
  const Solved solved = solve(described(with_bleed("square", 3)));
  const SquareBoxNet& net = *solved.unit->box->net;
  const double wide = in(net.across.total, mm), middle = 0.5 * wide;
  CHECK(wide > 84.0 + 2.0 * 40.0);
  CHECK(wide < 84.0 + 2.0 * 40.0 + 4.0 * 0.254);
  const double quarter = 0.25 * (84.0 - 2.0 * in(solved.unit->box->lap, mm));
  struct Row {
    const char *part, *what;
    double x, y;  // from the edges of the net
  };
  const Row rows[] = {{"bottom", "tube", middle, middle},
                      {"bottom", "flange screw 1", middle, middle + 15.0},
                      {"bottom", "flange screw 3", middle + 12.990381, middle - 7.5},
                      {"lower side", "bleed 1", middle, 20.0},
                      {"upper side", "bleed 2", middle - quarter, wide - 20.0},
                      {"upper side", "grommet", middle + quarter, wide - 20.0},
                      {"left side", "bleed 3", 20.0, middle}};
  const auto places = hole_places(*solved.unit);
  for (const Row& row : rows) {
    CAPTURE(row.part);
    CAPTURE(row.what);
    const auto hole = std::find_if(places.begin(), places.end(),
                                   [&](const HolePlace& h) { return h.part == row.part && h.what == row.what; });
    REQUIRE(hole != places.end());
    CHECK(std::abs(in(hole->corner.x, mm) - row.x) < 1e-5);
    CHECK(std::abs(in(hole->corner.y, mm) - row.y) < 1e-5);
  }
}
TEST_CASE("no word on a template lies over another or over a line") {
  std::vector<Build> builds;
  for (const std::string& text : boxes()) builds.push_back(described(text));
  for (const std::string& name : example_names()) builds.push_back(example(name));
  for (const Build& build : builds) {
    const Solved solved = solve(build);
    if (!solved.unit) continue;
    for (const UnitSystem units : {UnitSystem::as_written, UnitSystem::metric, UnitSystem::imperial})
      for (const Template& part : templates(*solved.unit, build, units)) {
        CAPTURE(build.file);
        CAPTURE(part.id);
        CAPTURE(static_cast<int>(units));
        for (const std::string& complaint : drawing::crowding(part.view)) FAIL_CHECK(complaint);
      }
  }
}
TEST_CASE("orifice plates: holes three diameters apart, words beside them") {
  const TestBox box = test_box_for({data::FanKind::axial, 60.0 * mm, 25.0 * mm, 70.0 * Pa, 570.0 * litre_per_min});
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
  CHECK_THROWS_AS(drawing_files(assessment, solved, {"A4", {}, false}), NoAnswer);
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
                            "Braze the tube", "Pickling acid", "Silver brazing", "Cut and drill", "Wire it",
                            "Lithium cells", "First lighting-up", "Carbon monoxide"}) {
    const std::size_t found = sheet.find(words, at);
    CAPTURE(words);
    REQUIRE(found != std::string::npos);
    at = found;
  }
  for (const Caution& caution : assess(build).cautions) {
    CAPTURE(caution.id);
    CHECK(sheet.find(caution.title) != std::string::npos);
    CHECK(sheet.find("Authority: " + caution.authority.substr(0, 12)) != std::string::npos);
    // what bites again where the fire is lit is told again there
    const bool again = std::find(caution.steps.begin(), caution.steps.end(), "light") != caution.steps.end();
    if (again) CHECK(sheet.find(caution.title, sheet.find("First lighting-up")) != std::string::npos);
  }
  CHECK(sheet.starts_with(data::first_lines()));
  CHECK_THROWS_AS(build_sheet(assess(described("name: x\n")), solve(described("name: x\n")), TextStyle{}),
                  NothingToMake);
}
TEST_CASE("the build sheet beside the drawings is in the units that were asked for") {
  const Build build = example("tarn-beck");
  const Solved solved = solve(build);
  const auto sheet = [&](UnitSystem units) {
    for (const NamedText& file : drawing_files(assess(build, units), solved, {"A4", {}, false, units}))
      if (file.name == "sheet.txt") return file.text;
    return std::string();
  };
  // the flange is written as 38 mm: 1.496 in by 25.4 mm/in (exact, the international inch of 1959)
  CHECK(sheet(UnitSystem::as_written).find("disc 38 mm") != std::string::npos);
  CHECK(sheet(UnitSystem::metric).find("disc 38 mm") != std::string::npos);
  CHECK(sheet(UnitSystem::imperial).find("disc 1.496 in") != std::string::npos);
  CHECK(sheet(UnitSystem::imperial).find("disc 38 mm") == std::string::npos);
}
