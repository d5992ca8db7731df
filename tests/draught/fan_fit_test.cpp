#include "draught/fan_fit.hpp"
#include "data/fan_test.hpp"
#include "draught/fan_test.hpp"
#include "draught/orifice.hpp"
#include "draught/test_box.hpp"
#include "matter/air.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::draught;

namespace {
TestPoint read(double litres, double pascals, double sigma) {
  return {.flow = litres * litre_per_s,
          .pressure = pascals * Pa,
          .pressure_sigma = sigma * Pa,
          .flow_with_pressure = litres > 0.0 ? 0.5 : 0.0,
          .flow_sigma = 0.0};
}
TestedFan fan(std::vector<TestPoint> points, data::FanKind kind = data::FanKind::axial) {
  return {.kind = kind, .thickness = 20.0 * mm, .points = std::move(points), .common = {}};
}
/// A straight fan, 60 Pa (1 - Q / 6 L/s), which needs no source.
std::vector<TestPoint> straight(double sigma) {
  std::vector<TestPoint> points;
  for (const double q : {0.0, 0.5, 1.0, 1.6, 2.4, 3.2, 4.2, 5.2})
    points.push_back(read(q, 60.0 * (1.0 - q / 6.0), sigma));
  return points;
}
bool held(const CurveBandPoint& p, Pressure truth) { return truth >= p.low && truth <= p.high; }
/// A fan with a dip of `depth` about 2.5 L/s.
std::vector<TestPoint> dipped(double depth, double sigma) {
  std::vector<TestPoint> points;
  for (const double q : {0.0, 0.6, 1.2, 1.8, 2.2, 2.6, 3.0, 3.5, 4.2, 5.0, 5.6}) {
    const double smooth = 60.0 - 3.0 * q - 1.28 * q * q;
    points.push_back(read(q, smooth - depth * std::exp(-std::pow((q - 2.4) / 0.55, 2)), sigma));
  }
  return points;
}
}  // namespace

TEST_CASE("sharp readings of a straight fan give it back") {
  const FanFit fit = fit_fan_curve(fan(straight(0.1)));
  CHECK(fit.shut_off_read);
  CHECK_FALSE(fit.hump);
  CHECK(fit.shut_off.value == near(60.0 * Pa, 5e-3));
  CHECK(fit.free_air.value == near(6.0 * litre_per_s, 3e-2));
  CHECK(fit.free_air.low < 6.0 * litre_per_s);
  CHECK(fit.free_air.high > 6.0 * litre_per_s);
  for (const double q : {0.0, 0.8, 1.3, 2.0, 2.8, 3.7, 4.7}) {
    CAPTURE(q);
    const CurveBandPoint p = fit.at(q * litre_per_s);
    CHECK(p.pressure == near(60.0 * (1.0 - q / 6.0) * Pa, 3e-2));
    CHECK(held(p, 60.0 * (1.0 - q / 6.0) * Pa));
    CHECK_FALSE(p.beyond);
  }
  CHECK(fit.at(5.6 * litre_per_s).beyond);
  CHECK(fit.curve.back().pressure == 0.0 * Pa);
}

TEST_CASE("worse readings and common errors widen the band") {
  const auto half = [](const TestedFan& tested) {
    const CurveBandPoint p = fit_fan_curve(tested).at(2.0 * litre_per_s);
    return 0.5 * (p.high - p.low);
  };
  const Pressure sharp = half(fan(straight(0.5))), blunt = half(fan(straight(3.0)));
  CHECK(blunt > 2.0 * sharp);
  TestedFan with_common = fan(straight(0.5));
  with_common.common = {{.flow = 0.0, .pressure = 0.05}};
  CHECK(half(with_common) > 0.05 * 40.0 * Pa);
}

TEST_CASE("readings that disagree widen the band, those that agree do not narrow it") {
  std::vector<TestPoint> points = straight(1.0);
  const FanFit calm = fit_fan_curve(fan(points));
  for (std::size_t i = 0; i < points.size(); ++i) points[i].pressure += (i % 2 == 0 ? 6.0 : -6.0) * Pa;
  const FanFit rough = fit_fan_curve(fan(points));
  CHECK(calm.widened == 1.0);
  CHECK(rough.widened > 1.5);
}

TEST_CASE("a hump is kept where it exceeds the noise, and only there") {
  const FanFit seen = fit_fan_curve(fan(dipped(14.0, 0.4)));
  REQUIRE(seen.hump);
  CHECK(seen.hump->dip > 1.8 * litre_per_s);
  CHECK(seen.hump->top < 4.2 * litre_per_s);
  CHECK(seen.hump->rise > 0.5 * Pa);
  CHECK(seen.hump->sigmas > 2.0);
  for (const FanFit& falls : {fit_fan_curve(fan(dipped(14.0, 8.0))), fit_fan_curve(fan(dipped(0.0, 0.4)))}) {
    CHECK_FALSE(falls.hump);
    for (std::size_t i = 1; i < falls.curve.size(); ++i) CHECK(falls.curve[i].pressure <= falls.curve[i - 1].pressure);
  }
}

TEST_CASE("a closed lid that leaks falls short of the trend") {
  std::vector<TestPoint> points = straight(0.8);
  CHECK_FALSE(leak_suspicion(fan(points)));
  points.front().pressure = 48.0 * Pa;  // as 1.2 L/s of leak would have it: 60 (1 - 1.2 / 6)
  const auto leak = leak_suspicion(fan(points));
  REQUIRE(leak);
  CHECK(leak->expected == near(60.0 * Pa, 0.05));
  CHECK(leak->flow == near(1.2 * litre_per_s, 0.15));
  CHECK(leak->sigmas > 2.0);
  CHECK(fit_fan_curve(fan(points)).shut_off.high > 58.0 * Pa);  // the band holds the trend as well
  points.erase(points.begin());
  CHECK_FALSE(leak_suspicion(fan(points)));
  CHECK_FALSE(fit_fan_curve(fan(points)).shut_off_read);
}

TEST_CASE("the order of the readings does not matter") {
  std::vector<TestPoint> points = straight(1.0);
  const FanFit one = fit_fan_curve(fan(points));
  std::reverse(points.begin(), points.end());
  CHECK(fit_fan_curve(fan(points)).shut_off.value == one.shut_off.value);
}

TEST_CASE("readings from which no curve follows") {
  CHECK_THROWS_WITH_AS(fit_fan_curve(fan({})), "a fan's curve needs readings at two flows or more", ModelError);
  CHECK_THROWS_AS(fit_fan_curve(fan({read(0.0, 60.0, 1.0)})), ModelError);
  CHECK_THROWS_AS(fit_fan_curve(fan({read(1.0, 60.0, 1.0), read(1.0, 59.0, 1.0)})), ModelError);
  CHECK_THROWS_AS(fit_fan_curve(fan({read(0.0, 50.0, 1.0), read(1.0, 60.0, 1.0)})), ModelError);
  CHECK_THROWS_AS(fit_fan_curve(fan({read(0.0, -50.0, 1.0), read(1.0, 60.0, 1.0)})), ModelError);
  CHECK_THROWS_AS(fit_fan_curve(fan(straight(1.0))).at(9.0 * litre_per_s), ModelError);
}

TEST_CASE("from the box to the fan's static pressure") {
  const BoxReading still{.depression = 40.0 * Pa,
                         .flow = 2.4 * g_per_s,
                         .room = 1.2 * kg_per_m3,
                         .barometer = 100000.0 * Pa,
                         .box = std::nullopt};
  CHECK(density_in_box(still) == near(1.2 * (1.0 - 4e-4) * kg_per_m3, 1e-12));  // ideal gas at one temperature
  CHECK(fan_point(still).pressure == 40.0 * Pa);
  CHECK(fan_point(still).flow == near(2.0 / (1.0 - 4e-4) * litre_per_s, 1e-12));
  BoxReading small = still;
  small.box = 20.0 * cm2;
  // ISO 5801: less the velocity head, hand: 0.5 1.2 (1.0 m/s)^2, the air thinner by 0.04 %
  CHECK(fan_point(small).pressure == near((40.0 - 0.6 / (1.0 - 4e-4)) * Pa, 1e-9));
  small.box = 2.0 * cm2;
  CHECK_THROWS_AS(fan_point(small), ModelError);
}

TEST_CASE("readings are carried to the rated speed along the motor's line") {
  const MotorLabel label{.rated_voltage = 12.0 * V, .rated_speed = 4300.0 * rpm, .starts_at = {}, .speed_at = {}};
  CHECK(speed_to_rated(label, 12.0 * V).value == near(1.0, 1e-12));
  // hand: n ~ V - 0.05 Vr; ends of the usual spread -0.25 and 0.25 Vr
  const Band<double> nine = speed_to_rated(label, 9.0 * V);
  CHECK(nine.value == near(0.95 / 0.70, 1e-12));
  CHECK(nine.low == near(1.25 / 1.0, 1e-12));
  CHECK(nine.high == near(0.75 / 0.5, 1e-12));
  CHECK(speed_to_rated(label, 4.0 * V).value > 3.0);  // it was read turning there
  MotorLabel measured = label;
  measured.speed_at = {{6.0 * V, 2000.0 * rpm}, {12.0 * V, 4000.0 * rpm}};
  CHECK(speed_to_rated(measured, 9.0 * V).high == near(4.0 / 3.0, 1e-12));
  CHECK_THROWS_AS(speed_to_rated(label, 0.0 * V), ModelError);
  CHECK_THROWS_AS(speed_to_rated(label, 0.3 * V), ModelError);
}

TEST_CASE("a test box follows its own rules for every fan") {
  struct Row {
    data::FanKind kind;
    double frame, depth, shut_off, free_air;
  };
  // invented sizes from the smallest to the largest frame in use
  const Row rows[] = {{data::FanKind::axial, 30, 10, 25, 1.5},        {data::FanKind::axial, 40, 28, 415, 12.7},
                      {data::FanKind::axial, 60, 25, 40, 11.1},       {data::FanKind::axial, 120, 38, 85, 53.8},
                      {data::FanKind::centrifugal, 50, 15, 110, 2.1}, {data::FanKind::centrifugal, 97, 33, 300, 20}};
  for (const Row& r : rows) {
    CAPTURE(r.frame);
    const ExpectedFan expected{.kind = r.kind,
                               .frame = r.frame * mm,
                               .thickness = r.depth * mm,
                               .shut_off = r.shut_off * Pa,
                               .free_air = r.free_air * litre_per_s};
    const TestBox box = test_box_for(expected);
    CHECK(box.side * box.side >= 8.0 * expected.frame * expected.frame);
    CHECK(box.length > box.screen);
    REQUIRE(box.plates.size() >= 4);
    for (std::size_t i = 0; i < box.plates.size(); ++i) {
      const PlannedPlate& p = box.plates[i];
      CHECK(p.hole <= 0.25 * box.side);
      CHECK(box.screen >= 5.0 * p.hole);
      CHECK(orifice_drop(discharge_coefficient("test plate").value, double(p.holes) * circle(p.hole), standard_fan_air,
                         p.flow * standard_fan_air) == near(p.depression, 1e-6));
      if (i > 0) CHECK(p.flow > box.plates[i - 1].flow);
      if (i > 0) CHECK(p.depression < box.plates[i - 1].depression);
    }
    CHECK(box.plates[1].flow < 0.3 * expected.free_air);  // two below a third: where such fans work
    CHECK(box.plates[1].reading < 0.15);
    CHECK(box.covered > 0.5);
    CHECK(box.u_tube > expected.shut_off / mmH2O * mm);
  }
  CHECK_THROWS_AS(test_box_for({.kind = data::FanKind::axial,
                                .frame = 0.0 * mm,
                                .thickness = 20.0 * mm,
                                .shut_off = 40.0 * Pa,
                                .free_air = 10.0 * litre_per_s}),
                  ModelError);
}
