// Bleed holes: found by a root, proved by drilling them, and what they cost.
#include "model/solved_draught.hpp"
#include "model/solved_raise.hpp"
#include "plan/detail/bleed.hpp"
#include "draught/cooling.hpp"
#include "findings.hpp"
#include "near.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <numbers>
using namespace lumwright;
using namespace lumwright::boiler;
using namespace lumwright::draught;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;

TEST_CASE("the bleed holes that are found hold the fan at its limit when they are drilled") {
  for (const char* gas_limit : {"90 degC", "70 degC", "50 degC"}) {
    CAPTURE(gas_limit);
    const std::pair<std::string, std::string> stands = {"gas_limit: 70 degC", std::string("gas_limit: ") + gas_limit};
    const Assessment before = assess(example("tarn-beck", {stands, no_bleed}));
    const Finding& f = finding(before, "heat.bleed");
    CHECK(f.verdict == Verdict::fail);
    CHECK(value(f) == 0.0);
    CHECK(f.bound == Bound::at_least);
    const double diameter = 1e3 * std::sqrt(4.0 * limit(f) / std::numbers::pi);
    const Assessment after =
        assess(example("tarn-beck", {stands,
                                     {"bleed: { holes: 8, diameter: 8 mm }",
                                      fmt::format("bleed: {{ holes: 1, diameter: {:.9f} mm }}", diameter)}}));
    CHECK(number(after, "heat.fan_gas") == near(limit(finding(before, "heat.fan_gas")), 0.02 / 330));
    CHECK(term(finding(after, "heat.bleed"), "A") == near(limit(f), 1e-6));
    CHECK(term(finding(after, "heat.bleed"), "A_0") == near(limit(f), 1e-4));
    CHECK(number(after, "raise.to_own_blower") > number(before, "raise.to_own_blower"));
    CHECK(verdict(after, "heat.bleed") != Verdict::pass);  // nothing in hand
  }
}

TEST_CASE("who drills the holes that are advised has ten kelvin in hand, for the minutes that were named") {
  const Build build = example("tarn-beck", {no_bleed});
  const Solved solved = solve(build);
  const Holes holes = holes_for(*bleed_to_hold(DraughtTrial(solved), unchanged(solved), degC(60)), std::nullopt);
  const Assessment before = assess(build);
  CHECK(says(finding(before, "heat.bleed"),
             fmt::format("drill {} holes of {:.1f} mm", holes.count, in(holes.diameter, mm))));
  const Assessment after = assess(example(
      "tarn-beck",
      {{"holes: 8, diameter: 8 mm", fmt::format("holes: {}, diameter: {} mm", holes.count, in(holes.diameter, mm))}}));
  CHECK(verdict(after, "heat.bleed") == Verdict::pass);
  CHECK(verdict(after, "heat.fan_gas") == Verdict::pass);
  CHECK(number(after, "heat.fan_gas") < 333.15);
}

TEST_CASE("bleed holes that are enough pass, and are said to cost what they cost") {
  const Assessment a = assess(example("tarn-beck"));
  const Finding& f = finding(a, "heat.bleed");
  CHECK(f.verdict == Verdict::pass);
  CHECK(value(f) == near(8 * std::numbers::pi * 16e-6, 1e-9));
  const double without = number(assess(example("tarn-beck", {no_bleed})), "raise.to_own_blower");
  const double cost = (number(a, "raise.to_own_blower") - without) / 60;
  CHECK(says(f, fmt::format("cost {} min", format_number(cost, 2))));
}

TEST_CASE("more bleed is cooler, and a cooler limit takes more bleed") {
  for (const std::string& name : example_names()) {
    CAPTURE(name);
    const Build build = example(name);
    const Solved solved = solve(build);
    const DraughtTrial trial(solved);
    const DraughtChange now = unchanged(solved);
    CHECK(trial.alight(now).fan_gas == near(solved.draught->hot_flow.fan_gas, 1e-9));
    Temperature last = degC(2000);
    for (double area : {0.0, 10.0, 50.0, 200.0, 1000.0, 4000.0}) {
      const Temperature gas = trial.alight(with_bleed(now, area * mm2)).fan_gas;
      CHECK(gas < last);
      last = gas;
    }
    Area before = 0.0 * mm2;
    for (double hold : {120.0, 90.0, 70.0, 60.0, 50.0}) {
      const auto area = bleed_to_hold(trial, now, degC(hold));
      REQUIRE(area);
      CHECK(*area >= before);
      before = *area;
      if (*area > 0.0 * mm2) CHECK(trial.alight(with_bleed(now, *area)).fan_gas == near(degC(hold), 0.02 / 330));
    }
    CHECK(*bleed_to_hold(trial, now, degC(1000)) == 0.0 * mm2);
  }
}

TEST_CASE("the bleed that holds a limit mixes as the energy balance says") {
  // Without a wall to lose heat through: bleed / gas = (T - hold) / (hold - room) by mass, for one heat capacity; from
  // 200 degC to 65 with 20 degC air it is 3.00 (hand). Hot air's heat capacity is 2 % over cold air's.
  const Build build = example("tarn-beck");
  const Solved solved = solve(build);
  const DraughtTrial trial(solved);
  DraughtChange bare = unchanged(solved);
  bare.path.box->wall = std::nullopt;
  const auto area = bleed_to_hold(trial, bare, degC(65));
  REQUIRE(area);
  const PathFlow flow = trial.alight(with_bleed(bare, *area));
  const double expected = (in_degC(flow.adapter_exit_gas) - 65.0) / (65.0 - 12.0);
  CHECK(in(flow.bleed, flow.chimney) == near(expected, 0.03));
  CHECK(bleed_ratio({degC(200), degC(20), degC(65)}) == near(3.0, 1e-12));
}

TEST_CASE("a change that changes nothing raises steam in the same time") {
  const Build build = example("tarn-beck");
  const Solved solved = solve(build);
  const auto time = DraughtTrial(solved).to_own_blower(unchanged(solved));
  REQUIRE(time);
  CHECK(*time == near(*solved.raise->raise.time_of(RaiseEventKind::own_blower), 1e-5));
}

TEST_CASE("holes of one drill add up to the area at least, and hardly more") {
  for (double area : {5.0, 20.0, 134.0, 402.0, 2262.0}) {
    CAPTURE(area);
    const Holes holes = holes_for(area * mm2, std::nullopt);
    CHECK(holes.count <= 8);
    CHECK(1.0 * holes.count * circle(holes.diameter) >= area * mm2);
    CHECK(1.0 * (holes.count - 1) * circle(holes.diameter) < area * mm2);
  }
  CHECK(holes_for(8.0 * circle(8.0 * mm), 8.0 * mm).count == 8);  // exactly enough is enough
  CHECK(holes_for(8.1 * circle(8.0 * mm), 8.0 * mm).count == 9);
  CHECK_THROWS_AS(holes_for(0.0 * mm2, std::nullopt), ModelError);
}

TEST_CASE("a limit that no holes can hold is met some other way, or said to be out of reach") {
  const Assessment cold = assess(example("tarn-beck", {{"gas_limit: 70 degC", "gas_limit: 20 degC"}}));
  CHECK(finding(cold, "heat.bleed").verdict == Verdict::fail);
  CHECK(says(finding(cold, "heat.bleed"), "cooler day"));
  const Build build = example("tarn-beck");
  const Solved solved = solve(build);
  const DraughtTrial trial(solved);
  CHECK_FALSE(bleed_to_hold(trial, unchanged(solved), degC(13)));
  CHECK_FALSE(other_remedy(solved, trial, degC(13), 11.0 * minute));
  const auto remedy = other_remedy(solved, trial, degC(45), 30.0 * minute);
  REQUIRE(remedy);
  CHECK(remedy->words == "paint the box matt black");  // the fan stands outside already
  CHECK(*remedy->time < 30.0 * minute);
  CHECK_FALSE(other_remedy(solved, trial, degC(45), 1.0 * minute));
}

TEST_CASE("a fan taken out of a flat box holds the limit as the description of such a build says") {
  const std::pair<std::string, std::string> flat = {"height: 46 mm", "height: 19 mm"};
  const Build inside = example("tarn-beck", {{"mount: outside", "mount: inside"}, flat, no_bleed});
  const Solved solved = solve(inside);
  const auto remedy = other_remedy(solved, DraughtTrial(solved), degC(70), 30.0 * minute);
  REQUIRE(remedy);
  CHECK(remedy->words == "mount the fan outside the box");
  const double diameter = 2e3 * std::sqrt(in(remedy->bleed, m2) / std::numbers::pi);
  const Assessment done = assess(example(
      "tarn-beck", {flat, {"holes: 8, diameter: 8 mm", fmt::format("holes: 1, diameter: {:.9f} mm", diameter)}}));
  CHECK(number(done, "heat.fan_gas") == near(343.15, 0.02 / 343));
  CHECK(number(done, "raise.to_own_blower") == near(in(*remedy->time, s), 1e-4));
}

TEST_CASE("a slower fan is cooler and takes longer, as a fan of the similar curve does") {
  // similarity laws (ISO 5801): at 0.7 of the speed 0.7 of the flow at 0.49 of the pressure
  const Build build = example("tarn-beck"), weaker = [] {
    Build b = example("tarn-beck");
    for (auto& point : b.fan.curve.points) point = {0.7 * point.x, 0.49 * point.y};
    return b;
  }();
  const Solved solved = solve(build), similar_fan = solve(weaker);
  const DraughtTrial trial(solved);
  const DraughtChange slow{unchanged(solved).path, 0.7};
  CHECK(trial.alight(slow).fan_gas < trial.alight(unchanged(solved)).fan_gas);
  CHECK(trial.alight(slow).fan_gas == near(similar_fan.draught->hot_flow.fan_gas, 1e-7));
  CHECK(*trial.to_own_blower(slow) > *trial.to_own_blower(unchanged(solved)));
  CHECK(*trial.to_own_blower(slow) == near(*similar_fan.raise->raise.time_of(RaiseEventKind::own_blower), 1e-4));
}
