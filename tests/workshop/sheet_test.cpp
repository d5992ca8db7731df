#include "data/shop_rules.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include "workshop/box_development.hpp"
#include "workshop/grommet.hpp"
#include "workshop/off.hpp"
#include "workshop/sheet_cutting.hpp"
#include <cmath>
#include <numbers>
#include <random>

using namespace lumwright;
using namespace lumwright::workshop;

namespace {
SquareBox tin() {
  return {.width = 60.0 * mm,
          .length = 80.0 * mm,
          .height = 40.0 * mm,
          .sheet = 0.25 * mm,
          .inside_radius = 0.25 * mm,
          .tab = 0.0 * mm,
          .hem = 0.0 * mm,
          .metal = "tinplate"};
}
}  // namespace

TEST_CASE("three teeth in the cut") {
  for (const data::Row& row : published("workshop", "teeth")) {
    CAPTURE(row.text("id"));
    const SawAdvice saw = saw_for_sheet(row.quantity<Length>("sheet"));
    CHECK(std::abs(saw.wanted_teeth_per_inch - row.number("teeth")) < 0.6);
    CHECK(std::abs(saw.tilt / degree - row.number("tilt")) < 0.06);
  }
  // the finest blade in common charts has 89 teeth per inch: no blade suits tinplate (0.12 to 0.49 mm) square on
  CHECK_FALSE(saw_for_sheet(0.49 * mm).three_teeth);
  CHECK_FALSE(saw_for_sheet(0.49 * mm).two_teeth);
  CHECK(saw_for_sheet(1.0 * mm).two_teeth->name == "1");       // by hand: 50.8 / 51 = 0.996 mm
  CHECK(saw_for_sheet(1.01 * mm).three_teeth->name == "6/0");  // by hand: 76.2 / 76 = 1.003 mm
  for (const double sheet : {0.2, 0.5, 0.9, 1.6, 2.5, 5.0}) {
    const SawAdvice saw = saw_for_sheet(sheet * mm);
    CHECK(std::sin(saw.tilt) * 3.0 * in(saw.finest.tooth_pitch, mm) <= sheet * (1.0 + 1e-12));
    CHECK(saw.stack >= 3.0 * saw.finest.tooth_pitch * (1.0 - 1e-12));
    if (saw.three_teeth) CHECK(3.0 * saw.three_teeth->tooth_pitch <= sheet * mm);
  }
  CHECK_THROWS_AS(saw_for_sheet(0.0 * mm), ModelError);
}

TEST_CASE("a step drill ends on or below the hole") {
  const SheetHolePlan twenty = sheet_hole({20.0 * mm, 0.25 * mm});
  CHECK(twenty.finish == HoleFinish::on_size);
  CHECK(off(twenty.steps.back(), 20.0 * mm) < 1e-9);
  const SheetHolePlan tube = sheet_hole({14.29 * mm, 0.25 * mm});  // for a 9/16 in tube
  CHECK(tube.finish == HoleFinish::file);
  CHECK(off(tube.steps.back(), 14.0 * mm) < 1e-9);
  CHECK(off(tube.left, 0.29 * mm) < 1e-9);
  const SheetHolePlan grommet = sheet_hole({6.0 * mm, 0.25 * mm});
  CHECK(grommet.finish == HoleFinish::on_size);
  CHECK(grommet.steps.size() == 3);  // 4, 5, 6: the drill by 1 mm
  const SheetHolePlan opening = sheet_hole({57.0 * mm, 0.25 * mm});
  CHECK(opening.finish == HoleFinish::cut_out);
  CHECK(opening.steps.empty());
  CHECK(opening.pilot);
  const SheetHolePlan small = sheet_hole({2.4 * mm, 0.25 * mm});
  REQUIRE(small.twist);
  CHECK_FALSE(small.pilot);
  CHECK(small.twist->name == "2.40 mm");
  const SheetHolePlan screw = sheet_hole({3.5 * mm, 0.25 * mm, "inch"});
  CHECK_FALSE(screw.drill);  // its 1/8 in step takes nothing off a 1/8 in pilot
  REQUIRE(screw.twist);
  CHECK(screw.twist->series != "metric");
  CHECK(sheet_hole({5.0 / 32.0 * inch, 0.25 * mm, "inch"}).finish == HoleFinish::on_size);
  CHECK(sheet_hole({10.0 * mm, 5.0 * mm}).steps.empty());  // thicker than a step
  CHECK(sheet_hole({10.0 * mm, 5.0 * mm}).twist);
  std::mt19937 random(5);
  std::uniform_real_distribution<double> any(1.0, 90.0);
  for (int trial = 0; trial < 300; ++trial) {
    const Length size = any(random) * mm;
    const SheetHolePlan plan = sheet_hole({size, 0.3 * mm});
    for (std::size_t i = 1; i < plan.steps.size(); ++i) CHECK(plan.steps[i] > plan.steps[i - 1]);
    if (plan.drill) CHECK(off(plan.steps.back() + plan.left, size) < 1e-6);
    if (plan.drill) CHECK(plan.left < plan.drill->step);
    CHECK((plan.finish == HoleFinish::on_size) == (plan.left == 0.0 * mm));
    const bool has_a_way = plan.drill || plan.twist || plan.finish == HoleFinish::cut_out;
    CHECK(has_a_way);
  }
  CHECK_THROWS_AS(sheet_hole({0.0 * mm, 0.3 * mm}), ModelError);
  CHECK_THROWS_AS(sheet_hole({5.0 * mm, -0.3 * mm}), ModelError);
}

TEST_CASE("holes in plate are opened out in order") {
  const auto order = plate_drills(12.7 * mm);
  REQUIRE(order.size() >= 2);
  for (std::size_t i = 1; i < order.size(); ++i) CHECK(order[i].diameter > order[i - 1].diameter);
  CHECK(order.front().diameter <= 6.0 * mm);
  CHECK(plate_drills(1.8 * mm).size() == 1);
  CHECK_THROWS_AS(plate_drills(20.0 * mm), ModelError);
}

TEST_CASE("bends take what handbooks' neutral lines say") {
  for (const data::Row& row : published("workshop", "bends")) {
    CAPTURE(row.text("id"));
    const Length radius = row.quantity<Length>("radius"), sheet = row.quantity<Length>("sheet");
    const Length published_length = 0.5 * std::numbers::pi * (radius + row.number("k") * sheet);
    const Length ours = bend_allowance({90.0 * degree, radius, sheet, row.text("metal")});
    CHECK(off(ours, published_length) <= 0.1 * in(sheet, mm));
  }
  const Bend right{90.0 * degree, 0.5 * mm, 0.25 * mm, "tinplate"};
  Bend half = right;
  half.angle = 45.0 * degree;
  CHECK(2.0 * bend_allowance(half) == near(bend_allowance(right), 1e-12));
  half.angle = 0.0;
  CHECK_THROWS_AS(bend_allowance(half), ModelError);
  CHECK_THROWS_WITH_AS(bend_allowance({90.0 * degree, 0.5 * mm, 0.25 * mm, "cheese"}),
                       "no bend allowance is known for `cheese`", ModelError);
}

TEST_CASE("a round box is a strip and two discs") {
  const RoundBox flat{.diameter = 84.0 * mm,
                      .height = 52.0 * mm,
                      .sheet = 0.24 * mm,
                      .lap = 5.0 * mm,
                      .skirt = 0.0 * mm,
                      .fit = DiscFit::on_top};
  const RoundBoxPieces pieces = round_box(flat);
  CHECK(off(pieces.strip_length, 269.6479 * mm) < 1e-3);  // by hand: pi 84.24 + 5
  CHECK(off(pieces.strip_width, 52.0 * mm) < 1e-9);
  CHECK(off(pieces.disc, 84.48 * mm) < 1e-9);
  CHECK(off(pieces.disc_blank, pieces.disc) < 1e-9);
  // a strip without lap holds exactly the metal of the ring that it becomes
  RoundBox butt = flat;
  butt.lap = 0.0 * mm;
  const RoundBoxPieces ring = round_box(butt);
  const Volume wall = (circle(ring.outside) - circle(butt.diameter)) * butt.height;
  CHECK(ring.strip_length * ring.strip_width * butt.sheet == near(wall, 1e-12));
  RoundBox skirted = flat;
  skirted.skirt = 6.0 * mm;
  skirted.fit = DiscFit::inside;
  const RoundBoxPieces inside = round_box(skirted);
  CHECK(off(inside.disc, 84.0 * mm) < 1e-9);
  CHECK(off(inside.strip_width, 64.48 * mm) < 1e-9);  // by hand: 52 + 2 (6 + 0.24)
  // by hand: sqrt(83.76^2 + 4 x 83.76 x 6.12) = 95.216; blanks of shells, Machinery's Handbook, from memory
  CHECK(off(inside.disc_blank, 95.216 * mm) < 0.002);
  skirted.sheet = 20.0 * mm;
  CHECK_THROWS_AS(round_box(skirted), ModelError);
  skirted.sheet = 0.24 * mm;
  skirted.lap = -1.0 * mm;
  CHECK_THROWS_AS(round_box(skirted), ModelError);
}

TEST_CASE("a square box folds up from one sheet") {
  const SquareBoxNet net = square_box(tin());
  // by hand: floor 60 - 0.5, two bends of 0.64 x 0.25 + pi/2 x 0.25 = 0.5527, two walls of 40 - 0.25
  CHECK(off(net.across.total, 140.1054 * mm) < 1e-4);
  CHECK(off(net.along.total, 160.1054 * mm) < 1e-4);
  REQUIRE(net.across.folds.size() == 2);
  CHECK(off(net.across.folds[0], 40.02635 * mm) < 1e-4);
  CHECK(off(net.corner, net.across.folds[0]) < 1e-12);
  CHECK(off(net.across.folds[1], 100.07905 * mm) < 1e-4);  // by hand: 140.1054 - 40.02635
  CHECK(net.folds.size() == 4);
  for (const NetLine& fold : net.folds) {  // from corner to corner, so its middle lies on a middle line of the net
    const bool upright = off(fold.from.x, fold.to.x) < 1e-9;
    const Length middle = upright ? 0.5 * (fold.from.y + fold.to.y) : 0.5 * (fold.from.x + fold.to.x);
    CHECK(off(middle, 0.5 * (upright ? net.along.total : net.across.total)) < 1e-9);
    CHECK(off(distance(fold.from, fold.to), (upright ? 80.0527 : 60.0527) * mm) < 1e-4);  // floor and one bend
  }
  // the metal is the sheet less four corners
  const Area sheet = net.across.total * net.along.total - 4.0 * net.corner * net.corner;
  CHECK(net.metal == near(sheet * tin().sheet, 1e-12));

  SquareBox full = tin();
  full.tab = 6.0 * mm;
  full.hem = 4.0 * mm;
  const SquareBoxNet whole = square_box(full);
  CHECK(whole.across.folds.size() == 4);
  CHECK(whole.folds.size() == 12);  // four walls, four hems, four tabs
  // by hand: hem 3.75 flat and 0.32 in its fold, a wall shorter by one thickness: 3.82 a side
  CHECK(off(whole.across.total - net.across.total, 2.0 * 3.82 * mm) < 1e-9);
  const Length base = whole.corner - (3.75 + 0.32) * mm;
  const Area tabs = 4.0 * 6.0 * mm * (base - 3.0 * mm);  // trapezium: base and base less 6 mm
  const Area wanted = whole.across.total * whole.along.total - 4.0 * whole.corner * whole.corner + tabs;
  CHECK(whole.metal == near(wanted * full.sheet, 1e-12));
  for (const PlanePoint& point : whole.outline) {
    CHECK(point.x >= -1e-9 * mm);
    CHECK(point.y >= -1e-9 * mm);
    CHECK(point.x <= whole.across.total + 1e-9 * mm);
    CHECK(point.y <= whole.along.total + 1e-9 * mm);
  }
}

TEST_CASE("boxes that cannot be folded are refused") {
  SquareBox box = tin();
  box.height = 0.1 * mm;
  CHECK_THROWS_AS(square_box(box), ModelError);
  box = tin();
  box.tab = 60.0 * mm;
  CHECK_THROWS_AS(square_box(box), ModelError);
  box = tin();
  box.hem = 0.1 * mm;
  CHECK_THROWS_WITH_AS(square_box(box), "hem 0.1 mm is not wider than the sheet is thick", ModelError);
  box = tin();
  box.inside_radius = 40.0 * mm;
  CHECK_THROWS_AS(square_box(box), ModelError);
  box = tin();
  box.width = 0.0 * mm;
  CHECK_THROWS_AS(square_box(box), ModelError);
}

TEST_CASE("a 6 mm hole takes the grommet of a thin pair of leads") {
  // common practice, no source
  const GrommetChoice choice = grommet_for({3.0 * mm, 0.25 * mm});
  CHECK(off(choice.grommet.hole, 6.0 * mm) < 1e-9);
  CHECK(choice.needs_thicker_edge);
  CHECK_FALSE(grommet_for({3.0 * mm, 1.2 * mm}).needs_thicker_edge);
  CHECK(grommet_for({3.0 * mm, 2.0 * mm}).too_thick);
  for (std::size_t i = 0; i < data::grommets().size(); ++i) {
    const data::GrommetRow& row = data::grommets()[i];
    CHECK(row.lead < row.hole);
    CHECK(off(grommet_for({row.lead, 1.2 * mm}).grommet.hole, row.hole) < 1e-9);
  }
  CHECK_THROWS_WITH_AS(grommet_for({12.0 * mm, 1.0 * mm}), "no grommet that is listed takes a lead 12 mm thick, the largest one of 9.5 mm",
                       ModelError);
  CHECK_THROWS_AS(grommet_for({0.0 * mm, 1.0 * mm}), ModelError);
}

TEST_CASE("rules of the bench lie within the range that people set") {
  for (const char* name :
       {"web least", "web preferred", "braze gap least", "braze gap most", "braze run", "sheet lap", "hem", "pilot",
        "pilot above", "edge break", "outlet margin", "opening over", "hole position"}) {
    const auto& rule = data::shop_length(name).value;
    CAPTURE(std::string(name));
    CHECK(rule.low <= rule.value);
    CHECK(rule.value <= rule.high);
  }
  for (const char* name : {"edge least", "edge preferred", "pitch least", "pitch preferred", "full threads least",
                           "full threads preferred", "thread share", "teeth in cut", "burr share", "tilt",
                           "strength reserve", "tipping reserve", "load spread"}) {
    const auto& rule = data::shop_number(name).value;
    CAPTURE(std::string(name));
    CHECK(rule.low <= rule.value);
    CHECK(rule.value <= rule.high);
  }
  CHECK_THROWS_AS(data::shop_length("nothing"), std::logic_error);
}
