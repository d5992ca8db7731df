#include "workshop/fit.hpp"
#include "data/fits.hpp"
#include "matter/metal.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include <cmath>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::workshop;

namespace {
constexpr Length nil = 0.0 * mm;

// A 22 mm brass tube in a steel chimney, measured exactly, so that only the case at hand moves a number.
FitInput plain() {
  return {.bore = exactly(22.22 * mm),
          .bore_measured_within = nil,
          .chimney_wall = 1.6 * mm,
          .seam_ridge = nil,
          .depth = 40.0 * mm,
          .chimney_metal = metal("steel"),
          .outside = exactly(22.0 * mm),
          .outside_measured_within = nil,
          .tube_wall = 0.3555 * mm,
          .engaged = 33.0 * mm,
          .tube_metal = metal("brass"),
          .tube_hot = degC(250),
          .chimney_cold = degC(60),
          .chimney_hot = degC(250),
          .soot = 0.05 * mm,
          .running_clearance = 0.03 * mm};
}
// Holds within the last printed digit of a hand calculation in mm.
void equal(Length found, double expected_mm, double within_mm) {
  CHECK(std::abs(in(found, mm) - expected_mm) <= within_mm);
}
}  // namespace

TEST_CASE("the worked case of a sooty hot tube: needed cold, left hot") {
  const Fit result = fit(plain());
  // hand: 22 (19.9e-6 x 230 - 11.7e-6 x 40) + 2 x 0.05 + 0.03 = 0.2204
  equal(result.lighting_up.needed, 0.2204, 0.0001);
  equal(result.needed, 0.2204, 0.0001);
  // hand: 22.22 (1 + 11.7e-6 x 40) - 22 (1 + 19.9e-6 x 230) - 0.10 = 0.0297
  equal(result.lighting_up.clearance.value, 0.0297, 0.0001);
  equal(result.cold.value, 0.22, 1e-9);
  CHECK(result.margin < nil);  // 0.2200 against 0.2204
  CHECK(fit([] {
          FitInput wider = plain();
          wider.bore = exactly(22.23 * mm);
          return wider;
        }())
            .margin > nil);
}

TEST_CASE("a running fit that is right cold seizes when the tube alone is hot") {
  // 25 H9 at its least, d9 at its most: 0.065 mm cold (ISO 286-2). Tube 250 degC, bore 20 degC, no soot
  FitInput input = plain();
  input.bore = exactly(25.0 * mm);
  input.outside = exactly(24.935 * mm);
  input.chimney_cold = degC(20);
  input.soot = nil;
  const Fit result = fit(input);
  equal(result.cold.value, 0.065, 1e-9);
  equal(result.lighting_up.clearance.value, -0.0491, 0.0001);  // hand: 25 - 24.935 (1 + 19.9e-6 x 230)
  REQUIRE(result.seizes_at.has_value());
  CHECK(std::abs(in_degC(*result.seizes_at) - (20.0 + 131.0)) < 0.5);  // hand: 0.065 / (24.935 x 19.9e-6) = 131.0 K
}

TEST_CASE("a 25 mm brass tube grows by what its coefficient says") {
  const double grown = strain(metal("brass"), degC(250)).most;
  equal(25.0 * mm * grown, 0.1144, 0.0001);  // hand: 25 x 19.9e-6 x 230
}

TEST_CASE("clearance lost with both hot depends on the chimney's metal") {
  for (const data::Row& row : published("fits", "losses")) {
    CAPTURE(row.text("id"));
    FitInput input = plain();
    input.bore = exactly(25.0 * mm);
    input.outside = exactly(25.0 * mm - 1.0 * um);
    input.chimney_metal = metal(row.text("chimney"));
    input.soot = nil;
    const Fit result = fit(input);
    const Length lost = result.cold.value - result.both_hot.clearance.value;
    equal(lost, in(row.quantity<Length>("loss"), mm), 0.0006);
  }
}

TEST_CASE("the leak is the annulus over the tube's bore") {
  // hand: 2 D c / d^2 with mean diameter D 22, c 0.25, d 21.289: 2.43 %
  CHECK(leak_share({.bore = 22.125 * mm, .outside = 21.875 * mm, .tube_bore = 21.289 * mm}) == near(0.0243, 2e-3));
  CHECK(leak_share({.bore = 22.0 * mm, .outside = 22.0 * mm, .tube_bore = 21.0 * mm}) == 0.0);
  CHECK_THROWS_WITH_AS(leak_share({.bore = 22.0 * mm, .outside = 22.0 * mm, .tube_bore = nil}),
                       "tube bore 0 mm is not above zero", ModelError);
  const Fit result = fit(plain());
  CHECK(result.leak_area.value == near(7.6407 * mm2, 1e-5));  // hand: pi / 4 (22.22^2 - 22^2)
  const Area tube_bore = circle(21.289 * mm);
  CHECK(result.leak_area.value == near(result.leak_share.value * tube_bore, 1e-12));
}

TEST_CASE("spreads are taken at their worst and measuring uncertainty by root sum of squares") {
  FitInput input = plain();
  input.bore = {22.40 * mm, 22.37 * mm, 22.43 * mm};
  input.outside = {22.0 * mm, 21.99 * mm, 22.02 * mm};
  input.bore_measured_within = 0.05 * mm;
  input.outside_measured_within = 0.005 * mm;
  const Fit result = fit(input);
  equal(result.cold.low, 0.35, 1e-9);
  equal(result.cold.value, 0.40, 1e-9);
  equal(result.cold.high, 0.44, 1e-9);
  equal(result.uncertainty, 0.05025, 0.00001);  // hand: sqrt(0.05^2 + 0.005^2)
  equal(result.margin, in(result.cold.low - result.uncertainty - result.needed, mm), 1e-12);
}

TEST_CASE("a seam ridge narrows the bore by its height, and a flat on the tube gives it back") {
  FitInput input = plain();
  input.bore = exactly(22.40 * mm);
  input.tube_wall = 0.9 * mm;
  const Fit clean = fit(input);
  input.seam_ridge = 0.25 * mm;  // what a flash-controlled grade of welded tube leaves, ASTM A513, from memory
  const Fit ridged = fit(input);
  equal(clean.cold.value - ridged.cold.value, 0.25, 1e-9);
  CHECK(!clean.ridge_flat.has_value());
  REQUIRE(ridged.ridge_flat.has_value());
  equal(ridged.ridge_flat->depth, 0.35, 1e-9);    // the shop's rule: ridge + 0.1
  equal(ridged.ridge_flat->width, 5.506, 0.001);  // hand: 2 sqrt(0.35 (22 - 0.35)), chord of a circle
  equal(ridged.ridge_flat->wall_left, 0.55, 1e-9);
  CHECK(ridged.ridge_flat->strong_enough);
  equal(ridged.ridge_flat->margin, in(clean.margin, mm), 1e-4);  // the needed clearance does not hang on the bore
  CHECK(ridged.margin < nil);
  CHECK(ridged.skim.ridge_only);
  CHECK(ridged.skim.on_diameter == nil);
  input.tube_wall = 0.356 * mm;
  CHECK(!fit(input).ridge_flat->strong_enough);
  input.tube_wall = 0.34 * mm;  // the flat would cut through
  CHECK(!fit(input).ridge_flat.has_value());
}

TEST_CASE("a bore skimmed to the size asked for accepts the tube with nothing to spare") {
  FitInput input = plain();
  input.bore = {21.90 * mm, 21.88 * mm, 21.93 * mm};
  input.bore_measured_within = 0.02 * mm;
  input.outside_measured_within = 0.005 * mm;
  const Fit tight = fit(input);
  REQUIRE(tight.skim.on_diameter > nil);
  // hand: 22 + 0.22040 + sqrt(0.02^2 + 0.005^2) = 22.24101; less 21.88 = 0.36101
  equal(tight.skim.bore, 22.2410, 0.0001);
  equal(tight.skim.on_diameter, 0.3610, 0.0001);
  REQUIRE(tight.skim.wall_left.has_value());
  equal(*tight.skim.wall_left, 1.4095, 0.0001);  // hand: 1.6 - 0.1805 - 0.01
  equal(*tight.skim.wall_needed, 0.96, 1e-9);    // 60 % of 1.6, stricter than 0.8 for steel
  CHECK(tight.skim.finishing_cuts == 1);
  CHECK(tight.skim.roughing_cuts == 2);  // hand: 0.311 in cuts of 0.20
  CHECK(!tight.skim.heavy);
  input.bore = exactly(tight.skim.bore);
  const Fit skimmed = fit(input);
  equal(skimmed.margin, 0.0, 1e-6);
  input.chimney_metal = metal("cast iron");
  CHECK(*fit(input).skim.wall_needed == near(1.5 * mm, 1e-9));  // the limit for cast iron, stricter than 60 %
}

TEST_CASE("a skim deeper than the trade advises is heavy, and an unknown wall stays unknown") {
  FitInput input = plain();
  input.bore = exactly(21.6 * mm);
  input.chimney_wall = std::nullopt;
  const Fit result = fit(input);
  CHECK(result.skim.heavy);  // over 0.5 mm
  CHECK(!result.skim.wall_left.has_value());
  CHECK(!result.skim.wall_needed.has_value());
}

TEST_CASE("engaged length is judged in diameters and against the depth") {
  const Fit result = fit(plain());
  REQUIRE(result.engagement.has_value());
  CHECK(result.engagement->over_outside == near(1.5, 1e-9));  // hand: 33 / 22
  CHECK(result.engagement->tilt == near(0.22 / 33.0, 1e-9));  // hand: clearance over length
  CHECK(*result.engagement->share_of_depth == near(33.0 / 40.0, 1e-9));
  const data::Rule<double>& rule = data::number_rule("engaged over outside");
  CHECK(rule.value.low < rule.value.value);
  FitInput unknown = plain();
  unknown.depth = std::nullopt;
  CHECK(!fit(unknown).engagement->share_of_depth.has_value());
  unknown.engaged = std::nullopt;
  CHECK(!fit(unknown).engagement.has_value());
}

TEST_CASE("soot that fills the gap seizes a cold tube, and a wide gap never seizes") {
  FitInput input = plain();
  input.bore = exactly(22.08 * mm);  // 0.10 mm of soot on the diameter
  input.chimney_cold = degC(20);
  CHECK(*fit(input).seizes_at == near(degC(20), 1e-12));
  input.bore = exactly(23.0 * mm);
  CHECK(!fit(input).seizes_at.has_value());
}

TEST_CASE("sizes and temperatures that no fit can have are refused by name") {
  const auto refused = [](auto&& change, const char* message) {
    FitInput input = plain();
    change(input);
    CHECK_THROWS_WITH_AS(fit(input), message, ModelError);
  };
  refused([](FitInput& i) { i.bore = exactly(-1.0 * mm); }, "chimney bore -1 mm is not above zero");
  refused([](FitInput& i) { i.bore = exactly(std::nan("") * mm); }, "chimney bore nan mm is not above zero");
  refused(
      [](FitInput& i) {
        i.bore = {22.0 * mm, 22.1 * mm, 22.2 * mm};
      },
      "chimney bore 22 mm is not at least the low end of its spread");
  refused([](FitInput& i) { i.outside.high = i.outside.low - 1.0 * mm; },
          "tube outside diameter 21 mm is not in order with its spread");
  refused([](FitInput& i) { i.tube_wall = 11.0 * mm; }, "tube wall 11 mm is not thin enough to leave a bore");
  refused([](FitInput& i) { i.seam_ridge = 12.0 * mm; }, "seam ridge 12 mm is not less than half the bore");
  refused([](FitInput& i) { i.soot = -0.1 * mm; }, "soot -0.1 mm is not zero or more");
  refused([](FitInput& i) { i.depth = nil; }, "chimney depth 0 mm is not above zero");
  refused([](FitInput& i) { i.engaged = nil; }, "engaged length 0 mm is not above zero");
  refused([](FitInput& i) { i.tube_hot = degC(1000); },
          "brass temperature 1000 degC is not between -50.0 degC and 915 degC");
}

TEST_CASE("every rule of the shop lies inside the range in which people set it") {
  for (const char* name :
       {"soot", "running clearance", "roughing cut", "finishing cut", "heavy skim", "flat beyond ridge"}) {
    CAPTURE(std::string(name));
    const auto& rule = data::length_rule(name);
    CHECK(rule.value.low <= rule.value.value);
    CHECK(rule.value.value <= rule.value.high);
  }
  for (const char* name : {"leak share", "wall left share", "flat wall share", "engaged over outside"})
    CHECK(data::number_rule(name).value.low <= data::number_rule(name).value.high);
  CHECK_THROWS_AS(data::length_rule("luck"), std::logic_error);
  for (const data::MetalRow& row : data::metals())
    if (row.expansion && row.name != "tinplate") {
      CAPTURE(row.name);
      CHECK(data::wall_limit(row.name).has_value());
    }
}
