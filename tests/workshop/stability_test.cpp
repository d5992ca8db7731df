#include "workshop/stability.hpp"
#include "data/metals.hpp"
#include "data/strengths.hpp"
#include "data/tubes.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include "quantity/text.hpp"
#include "workshop/off.hpp"
#include "workshop/plane.hpp"
#include "workshop/solids.hpp"
#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

using namespace lumwright;
using namespace lumwright::workshop;

namespace {
constexpr Force newton = kg * m / s / s;
Stack stack() {
  return {.parts = {{"fan", 100.0 * g, 90.0 * mm, 0.0 * mm}, {"box", 100.0 * g, 30.0 * mm, 0.0 * mm}},
          .engaged = 30.0 * mm,
          .clearance = 0.3 * mm,
          .seat = 0.0 * mm,
          .top = 100.0 * mm,
          .push = 5.0 * newton,
          .chimney = {.bore = 28.5 * mm, .wall = 2.6 * mm, .height = 50.0 * mm, .metal = "steel"}};
}
}  // namespace

TEST_CASE("a metre of tube weighs what the standards print") {
  for (const data::Row& row : published("workshop", "tube_masses")) {
    CAPTURE(row.text("id"));
    const Volume metal = tube_volume({row.quantity<Length>("outside"), row.quantity<Length>("wall"), 1.0 * m});
    CHECK(mass_of(metal, row.text("metal")) == near(row.quantity<Mass>("mass"), 0.006));
  }
}

TEST_CASE("9/16 in tube is 14.2875 mm and is in stock") {
  // inch exact by definition; the size is common practice, no source
  const Length outside = parse_quantity<Length>("9/16 in");
  CHECK(off(outside, 14.2875 * mm) < 1e-9);
  int found = 0;
  for (const data::TubeRow& row : data::tubes()) found += off(row.outside, outside) < 0.001 ? 1 : 0;
  CHECK(found == 1);
}

TEST_CASE("plates and boxes hold the metal that hand sums give") {
  const Volume solid = plate_volume({34.0 * mm, 1.5 * mm, 0.0 * mm, 0, 0.0 * mm});
  CHECK(in(solid, mm * mm2) == near(1361.88, 1e-5));  // pi/4 34^2 1.5
  const Volume drilled = plate_volume({34.0 * mm, 1.5 * mm, 16.0 * mm, 3, 2.4 * mm});
  CHECK(in(solid - drilled, mm * mm2) == near(301.593 + 20.3575, 1e-5));  // pi/4 (16^2 + 3 x 2.4^2) 1.5
  const Volume square = box_volume({60.0 * mm, 40.0 * mm, 0.5 * mm, true, 0.0 * mm, 0.0 * mm});
  CHECK(in(square, mm * mm2) == near(61.0 * 61.0 * 41.0 - 60.0 * 60.0 * 40.0, 1e-9));  // outside less inside
  const Volume round = box_volume({60.0 * mm, 40.0 * mm, 0.5 * mm, false, 0.0 * mm, 0.0 * mm});
  CHECK(double(round / square) == near(0.25 * std::numbers::pi, 1e-9));
  CHECK_THROWS_AS(plate_volume({34.0 * mm, 1.5 * mm, 40.0 * mm, 0, 0.0 * mm}), ModelError);
  CHECK_THROWS_AS(plate_volume({34.0 * mm, 1.5 * mm, 0.0 * mm, -1, 2.0 * mm}), ModelError);
  CHECK_THROWS_AS(tube_volume({16.0 * mm, 8.0 * mm, 40.0 * mm}), ModelError);
  CHECK_THROWS_AS(box_volume({60.0 * mm, 40.0 * mm, 0.5 * mm, true, 90.0 * mm, 0.0 * mm}), ModelError);
  CHECK_THROWS_WITH_AS(mass_of(solid, "cheese"), "the density and strength of `cheese` are not known", ModelError);
}

TEST_CASE("every metal but silver solder has density and strength") {
  for (const data::MetalRow& metal : data::metals()) {
    CAPTURE(metal.name);
    if (metal.name == "silver solder")
      CHECK_THROWS_AS(data::strength(metal.name), ModelError);
    else
      CHECK(data::strength(metal.name).hot_share <= 1.0);
  }
}

TEST_CASE("the stack leans and loads its chimney as statics says") {
  const Stability found = stability(stack());
  CHECK(found.mass == near(200.0 * g, 1e-12));
  CHECK(off(found.centre, 60.0 * mm) < 1e-9);
  CHECK(found.lean == near(0.01, 1e-12));             // by hand: 0.3 / 30
  CHECK(off(found.centre_offset, 0.75 * mm) < 1e-9);  // by hand: 0.15 + 0.01 x 60
  CHECK(off(found.top_offset, 1.15 * mm) < 1e-9);     // by hand: 0.15 + 0.01 x 100
  CHECK(in(found.at_lean, newton * mm) == near(1.9613 * 0.75, 1e-4));
  CHECK(in(found.knocked, newton * mm) == near(1.471 + 500.0, 1e-4));
  CHECK(in(found.holds, newton * mm) == near(1.9613 * 14.25, 1e-4));
  CHECK(*found.free_reserve == near(19.0, 1e-9));  // 14.25 / 0.75
  CHECK(*found.knock_reserve < 1.0);
  CHECK_FALSE(found.leans_too_far);
  const ChimneyLoad& load = found.chimney;
  CHECK(in(load.at_tube_end, newton) == near(501.471 / 30.0, 1e-4));
  CHECK(in(load.at_mouth - load.at_tube_end, newton) == near(5.0, 1e-9));  // forces balance
  // section modulus of 33.7 x 2.6 tube 1.84 cm3: EN 10210-2, from memory
  CHECK(*load.foot_stress == near(*load.at_foot / (1.84 * cm3), 0.003));
  CHECK(in(*load.at_foot, newton * mm) == near(5.0 * 150.0 + 1.471, 1e-4));
  // a strip as long as the mean radius 15.55 mm and 2.6 mm thick, bent: 6 M / (b t^2)
  const Moment ring = ring_moment({load.at_mouth, 15.55 * mm, 30.0 * degree});
  CHECK(*load.ring_stress == near(ring / (15.55 * mm * 2.6 * mm * 2.6 * mm / 6.0), 1e-4));
  // 200 MPa of soft steel, 60 % of it hot, a third of that allowed
  CHECK(*load.allowed == near(40.0 * MPa, 1e-9));
  CHECK(*load.reserve == near(double(120.0 * MPa / std::max(*load.ring_stress, *load.foot_stress)), 1e-6));
  CHECK(*load.reserve > 3.0);
}

TEST_CASE("the pressure along the tube balances push and moment") {
  const Stability found = stability(stack());
  const double length = 30.0, bore = 28.5, push = 5.0, moment = in(found.knocked, newton * mm);  // mm, N
  const double mouth = in(found.chimney.bearing, MPa) * bore;                                    // N/mm at x = 0
  // a straight line a - b x over the tube: its sum is the push, its moment about the mouth is against the stack's
  const double b = 2.0 * (mouth * length - push) / (length * length);
  double force = 0.0, about_mouth = 0.0;
  const int steps = 20000;
  for (int i = 0; i < steps; ++i) {
    const double x = (i + 0.5) * length / steps, q = mouth - b * x;
    force += q * length / steps;
    about_mouth += q * x * length / steps;
  }
  CHECK(force == near(push, 1e-6));
  CHECK(-about_mouth == near(moment, 1e-6));
}

TEST_CASE("a pressed ring bends as curved-bar theory says") {
  const Moment point = ring_moment({10.0 * newton, 9.0 * mm, 0.0});
  // 3/(4 pi) P r: a ring under one radial load held by shear, Timoshenko, Strength of Materials part II, from memory
  CHECK(in(point, newton * mm) == near(0.238732 * 90.0, 1e-5));
  CHECK(ring_moment({10.0 * newton, 9.0 * mm, 0.001}) == near(point, 0.002));
  for (const double half : {10.0, 20.0, 30.0}) {  // the harmonics summed one by one, under the middle of the push
    CAPTURE(half);
    double sum = 0.0;
    for (int n = 2; n < 20000; ++n)
      sum += std::sin(n * half * degree) / (n * std::sin(half * degree) * (static_cast<double>(n) * n - 1.0));
    CHECK(in(ring_moment({10.0 * newton, 9.0 * mm, half * degree}), newton * mm) ==
          near(sum / std::numbers::pi * 90.0, 1e-6));
  }
  Moment before = point;
  for (int half = 5; half <= 90; half += 5) {  // the wider the push, the less it bends
    const Moment now = ring_moment({10.0 * newton, 9.0 * mm, half * degree});
    CHECK(now < before);
    before = now;
  }
  CHECK_THROWS_AS(ring_moment({10.0 * newton, 9.0 * mm, 2.0}), ModelError);
  CHECK_THROWS_AS(ring_moment({10.0 * newton, 0.0 * mm, 0.5}), ModelError);
}

TEST_CASE("a longer engagement and a closer tube lean less, a thinner chimney is worse off") {
  std::mt19937 random(11);
  std::uniform_real_distribution<double> any(0.5, 2.0);
  for (int trial = 0; trial < 200; ++trial) {
    Stack one = stack();
    one.engaged = any(random) * 25.0 * mm;
    one.clearance = any(random) * 0.2 * mm;
    one.push = any(random) * 4.0 * newton;
    const Stability base = stability(one);
    Stack longer = one;
    longer.engaged = 1.3 * one.engaged;
    CHECK(stability(longer).lean < base.lean);
    CHECK(stability(longer).chimney.at_mouth < base.chimney.at_mouth);
    Stack slack = one;
    slack.clearance = 1.5 * one.clearance;
    CHECK(stability(slack).top_offset > base.top_offset);
    CHECK(*stability(slack).free_reserve < *base.free_reserve);
    Stack thin = one;
    thin.chimney.wall = 0.5 * *one.chimney.wall;
    CHECK(*stability(thin).chimney.reserve < *base.chimney.reserve);
    Stack seated = one;
    seated.seat = 17.0 * mm;
    CHECK(*stability(seated).free_reserve > *base.free_reserve);
  }
}

TEST_CASE("what is not known is not answered, and what cannot be is refused") {
  Stack bare = stack();
  bare.chimney.wall = std::nullopt;
  CHECK_FALSE(stability(bare).chimney.reserve);
  bare = stack();
  bare.chimney.height = std::nullopt;
  CHECK_FALSE(stability(bare).chimney.foot_stress);
  CHECK(stability(bare).chimney.ring_stress);
  bare = stack();
  bare.clearance = 0.0 * mm;
  bare.push = 0.0 * newton;
  CHECK_FALSE(stability(bare).free_reserve);
  CHECK_FALSE(stability(bare).chimney.reserve);
  bare = stack();
  bare.parts = {};
  CHECK_THROWS_WITH_AS(stability(bare), "mass of the fan stack 0 g is not above zero", ModelError);
  bare = stack();
  bare.engaged = 0.0 * mm;
  CHECK_THROWS_WITH_AS(stability(bare), "engaged length 0 mm is not above zero", ModelError);
  bare = stack();
  bare.parts[0].mass = -1.0 * g;
  CHECK_THROWS_AS(stability(bare), ModelError);
  bare = stack();
  bare.push = -1.0 * newton;
  CHECK_THROWS_AS(stability(bare), ModelError);
  bare = stack();
  bare.chimney.metal = "cheese";
  CHECK_THROWS_AS(stability(bare), ModelError);
  CHECK(in(usual_knock(), newton) == near(4.903325, 1e-9));  // half a kilogram, standard gravity
}
