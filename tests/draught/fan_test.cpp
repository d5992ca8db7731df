#include "draught/fan.hpp"
#include "draught/fan_estimate.hpp"
#include "draught/fan_speed.hpp"
#include "matter/air.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include "random_path.hpp"
#include "usual_fans.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::draught;

namespace {
FanCurve curve(std::vector<FanPoint> points) { return {data::FanKind::axial, 5000.0 * rpm, points, test_basis()}; }
FanPoint fan_point(double litres_per_second, double pascal) {
  return {.flow = litres_per_second * litre_per_s, .pressure = pascal * Pa};
}
FanCurve dipped() {
  return curve({fan_point(0, 60), fan_point(2, 30), fan_point(4, 36), fan_point(6, 20), fan_point(8, 0)});
}
}  // namespace

TEST_CASE("the similarity laws carry a fan to another speed") {
  // hand: 65.7 Pa (12500/8000)^2 = 160.400 Pa; 0.225 m3/min * 1.5625 = 0.3515625 m3/min
  const FanPoint fast = similar({.flow = 0.225 * m3_per_min, .pressure = 65.7 * Pa},
                                {.speed = 12500.0 / 8000.0, .size = 1.0, .density = 1.0});
  CHECK(fast.pressure == near(160.400390625 * Pa, 1e-6));
  CHECK(fast.flow == near(0.3515625 * m3_per_min, 1e-6));
}

TEST_CASE("the laws agree with published families of fans within their stated tolerance") {
  for (const data::Row& row : published("fan_families", "families")) {
    CAPTURE(row.text("id"));
    const double n = row.quantity<Rotation>("fast") / row.quantity<Rotation>("slow");
    const FanPoint fast =
        similar({.flow = 1.0 * litre_per_s, .pressure = 1.0 * Pa}, {.speed = n, .size = 1.0, .density = 1.0});
    CHECK(fast.flow == near(row.number("flow_ratio") * litre_per_s, row.number("flow_tolerance")));
    CHECK(fast.pressure == near(row.number("pressure_ratio") * Pa, row.number("pressure_tolerance")));
  }
}

TEST_CASE("size and density enter as the laws say") {
  // ISO 5801 / AMCA 210: Q ~ n D^3, p ~ rho n^2 D^2. hand: 2^3, 2^2 * 0.5
  const FanPoint big = similar(fan_point(1, 10), {.speed = 1.0, .size = 2.0, .density = 0.5});
  CHECK(big.flow == near(8.0 * litre_per_s, 1e-12));
  CHECK(big.pressure == near(20.0 * Pa, 1e-12));
  CHECK_THROWS_WITH_AS(similar(fan_point(1, 10), {.speed = 0.0, .size = 1.0, .density = 1.0}),
                       doctest::Contains("similarity ratio 0"), ModelError);
}

TEST_CASE("hot gas at the fan costs pressure in proportion to its density") {
  // 60 Pa at 1.2 kg/m3, gas of 200 degC at one atmosphere (0.74604 kg/m3): 60 * 0.74604 / 1.2 = 37.302 Pa
  const RunningFan fan{.static_pressure = [](VolumeFlow) { return 60.0 * Pa; },
                       .free_air = 1.0 * litre_per_s,
                       .highest = 60.0 * Pa,
                       .rises = false,
                       .kind = data::FanKind::centrifugal};
  const Density gas = air_density(degC(200.0), atmosphere);
  CHECK(static_pressure(fan, 0.5 * litre_per_s, gas) == near(37.302 * Pa, 1e-4));
}

TEST_CASE("a running fan is its curve carried along the laws, at every flow") {
  const FanCurve rated = dipped();
  const RunningFan slow = running(rated, 3000.0 * rpm);
  CHECK(slow.free_air == near(0.6 * 8.0 * litre_per_s, 1e-12));
  CHECK(slow.highest == near(0.36 * 60.0 * Pa, 1e-12));
  for (double q = 0.0; q < 12.0; q += 0.37) {
    const FanPoint expect = similar({.flow = q * litre_per_s, .pressure = rated.static_pressure(q * litre_per_s)},
                                    {.speed = 0.6, .size = 1.0, .density = 1.0});
    CAPTURE(q);
    CHECK(in(slow.static_pressure(expect.flow) - expect.pressure, Pa) == doctest::Approx(0.0).scale(1.0).epsilon(1e-9));
  }
  CHECK_THROWS_WITH_AS(running(rated, 0.0 * rpm), doctest::Contains("fan speed 0"), ModelError);
}

TEST_CASE("straight data stays straight and a dip stays a dip") {
  const FanCurve straight =
      curve({fan_point(0, 40), fan_point(3, 30), fan_point(5, 70.0 / 3.0), fan_point(6, 20), fan_point(12, 0)});
  for (double q = 0.0; q <= 12.0; q += 0.1)
    CHECK(in(straight.static_pressure(q * litre_per_s), Pa) == doctest::Approx(40.0 * (1.0 - q / 12.0)).epsilon(1e-9));
  CHECK_FALSE(straight.rises());

  const FanCurve dip = dipped();
  CHECK(dip.rises());
  for (const FanPoint& p : dip.points())
    CHECK(in(dip.static_pressure(p.flow) - p.pressure, Pa) == doctest::Approx(0.0).scale(1.0).epsilon(1e-9));
  for (double q = 0.05; q < 8.0; q += 0.05) {  // between two points, never outside them
    std::size_t i = 1;
    while (dip.points()[i].flow < q * litre_per_s) ++i;
    const Pressure a = dip.points()[i - 1].pressure, b = dip.points()[i].pressure;
    const Pressure p = dip.static_pressure(q * litre_per_s);
    CHECK(p >= std::min(a, b) - 1e-9 * Pa);
    CHECK(p <= std::max(a, b) + 1e-9 * Pa);
  }
}

TEST_CASE("two or three points are joined straight, and a sheet that stops short is carried on to free air") {
  const FanCurve two = curve({fan_point(0, 40), fan_point(4, 20)});
  CHECK(two.free_air() == near(8.0 * litre_per_s, 1e-12));  // hand: 20 Pa more at 5 Pa a litre per second
  CHECK(two.static_pressure(6.0 * litre_per_s) == near(10.0 * Pa, 1e-12));
  const FanCurve sheet = curve_from_sheet(
      {.kind = data::FanKind::axial, .speed = 5000.0 * rpm, .points = {fan_point(0, 40), fan_point(4, 20)}});
  CHECK(sheet.basis().sentence.find("carried on straight") != std::string::npos);
}

TEST_CASE("beyond free air the fan is a resistance, with no step and no kink") {
  const FanCurve fan = dipped();
  const double before = in(fan.static_pressure(7.999 * litre_per_s), Pa);
  const double after = in(fan.static_pressure(8.001 * litre_per_s), Pa);
  CHECK(before > 0.0);
  CHECK(after < 0.0);
  CHECK(before + after == doctest::Approx(0.0).scale(1.0).epsilon(1e-4));
  CHECK(fan.static_pressure(16.0 * litre_per_s) < fan.static_pressure(9.0 * litre_per_s));
}

TEST_CASE("a curve that is none is refused") {
  CHECK_THROWS_WITH_AS(curve({fan_point(0, 40)}), "a fan curve needs two points or more", ModelError);
  CHECK_THROWS_WITH_AS(curve({fan_point(1, 40), fan_point(2, 0)}),
                       "fan curve starts at 60.0 l/min, where it needs the pressure at zero flow", ModelError);
  CHECK_THROWS_AS(curve({fan_point(0, 40), fan_point(2, 30), fan_point(2, 10)}), ModelError);
  CHECK_THROWS_AS(curve({fan_point(0, 40), fan_point(2, 0), fan_point(3, 0)}), ModelError);
  CHECK_THROWS_AS(curve({fan_point(0, 40), fan_point(2, -1)}), ModelError);
  CHECK_THROWS_WITH_AS(curve({fan_point(0, 40), fan_point(2, 40)}),
                       "fan curve ends at 40.0 Pa without falling towards free air", ModelError);
  CHECK_THROWS_AS(curve({fan_point(0, std::nan("")), fan_point(2, 0)}), ModelError);
}

TEST_CASE("stretching a curve multiplies its ends") {
  const FanCurve s = stretched(dipped(), {.pressure = 0.8, .flow = 1.1});
  CHECK(s.shut_off() == near(48.0 * Pa, 1e-12));
  CHECK(s.free_air() == near(8.8 * litre_per_s, 1e-12));
  CHECK_THROWS_AS(stretched(dipped(), {.pressure = 0.0, .flow = 1.0}), ModelError);
}

TEST_CASE("tip-speed coefficients of a published 40x20 fan") {
  // hand: u = pi 0.038 m 8000/60 = 15.92 m/s; psi = 65.7 / (0.6 u^2) = 65.7/152.0; phi on the disc of 38 mm
  const FanCoefficients c = coefficients({.kind = data::FanKind::axial,
                                          .frame = 40.0 * mm,
                                          .speed = 8000.0 * rpm,
                                          .shut_off = 65.7 * Pa,
                                          .free_air = 0.225 * m3_per_min});
  CHECK(c.tip_speed == near(15.92 * m_per_s, 0.005 / 15.92));
  CHECK(c.psi == near(0.432, 0.0005 / 0.432));
  CHECK(c.phi == near(0.208, 0.0005 / 0.208));
  CHECK(c.verdict == Credibility::usual);
}

TEST_CASE("a claim above what a wheel of that speed can hold is not believed") {
  // A published sheet of a 75x30 blower claims 274 Pa at 4000 rpm: psi about 3.1. The speed is that of free air; shut, the
  // wheel speeds up, and the claim is possible.
  FanClaim claim{.kind = data::FanKind::centrifugal,
                 .frame = 75.0 * mm,
                 .speed = 4000.0 * rpm,
                 .shut_off = 274.0 * Pa,
                 .free_air = 7.7 * litre_per_s};
  CHECK(coefficients(claim).psi == near(3.1, 0.05 / 3.1));
  CHECK(coefficients(claim).verdict == Credibility::unusual);
  claim.shut_off = 360.0 * Pa;  // psi 4.1
  CHECK(coefficients(claim).verdict == Credibility::not_credible);
  claim.shut_off = 130.0 * Pa;
  CHECK(coefficients(claim).verdict == Credibility::usual);
  claim.shut_off = 20.0 * Pa;
  CHECK(coefficients(claim).verdict == Credibility::unusual);
  claim.kind = data::FanKind::axial;  // the limit of an axial wheel is 0.9
  claim.frame = 40.0 * mm;
  claim.speed = 8000.0 * rpm;
  claim.shut_off = 0.95 * 152.0 * Pa;
  CHECK(coefficients(claim).verdict == Credibility::not_credible);
}

TEST_CASE("every usual fan passes its own test of credibility") {
  for (const UsualFan& fan : usual_fans()) {
    CAPTURE(fan.id);
    CHECK(coefficients({.kind = fan.kind,
                        .frame = fan.frame,
                        .speed = fan.rated_speed,
                        .shut_off = fan.shut_off,
                        .free_air = fan.free_air})
              .verdict == Credibility::usual);
  }
}

namespace {
MotorLabel motor(std::vector<SpeedPoint> points) {
  return {.rated_voltage = 12.0 * V, .rated_speed = 6000.0 * rpm, .starts_at = std::nullopt, .speed_at = points};
}
}  // namespace

TEST_CASE("speed against voltage follows the published three-voltage sheets") {
  for (const data::Row& row : published("fan_families", "voltages")) {
    CAPTURE(row.text("id"));
    const auto volts = row.list<Voltage>("voltage");
    const auto speeds = row.list<Rotation>("speed");
    const MotorLabel label{.rated_voltage = row.quantity<Voltage>("rated"),
                           .rated_speed = speeds[1],
                           .starts_at = std::nullopt,
                           .speed_at = {}};
    const MotorLaw fitted = motor_law(label, row.number("zero_share"));
    const MotorLaw measured = motor_law({.rated_voltage = label.rated_voltage,
                                         .rated_speed = label.rated_speed,
                                         .starts_at = std::nullopt,
                                         .speed_at = {{volts[0], speeds[0]}, {volts[2], speeds[2]}}});
    for (std::size_t i = 0; i < 3; ++i) CHECK(fan_speed(fitted, volts[i]) == near(speeds[i], row.number("tolerance")));
    CHECK(fan_speed(measured, volts[0]) == near(speeds[0], 1e-12));
    CHECK(fan_speed(measured, volts[1]) == near(speeds[1], row.number("tolerance")));
    CHECK(fan_speed(measured, volts[2]) == near(speeds[2], 1e-12));
  }
}

TEST_CASE("a twelve volt fan on nine volts keeps 56 per cent of its pressure if speed is in proportion") {
  // (9/12)^2 = 0.5625, common practice
  const MotorLaw law = motor_law(motor({}), 0.0);
  CHECK(std::pow(fan_speed(law, 9.0 * V) / fan_speed(law, 12.0 * V), 2) == near(0.5625, 1e-12));
}

TEST_CASE("measured speeds are joined straight; one is joined to the rating") {
  const MotorLaw one = motor_law(motor({{8.0 * V, 3000.0 * rpm}}));
  CHECK(fan_speed(one, 10.0 * V) == near(4500.0 * rpm, 1e-12));  // hand: half way to 6000
  CHECK(fan_speed(one, 13.0 * V) == near(6750.0 * rpm, 1e-12));
  const MotorLaw three = motor_law(motor({{6.0 * V, 2000.0 * rpm}, {9.0 * V, 4000.0 * rpm}, {12.0 * V, 5000.0 * rpm}}));
  CHECK(fan_speed(three, 7.5 * V) == near(3000.0 * rpm, 1e-12));
  CHECK(fan_speed(three, 10.5 * V) == near(4500.0 * rpm, 1e-12));
  CHECK(fan_speed(three, 12.0 * V) == near(5000.0 * rpm, 1e-12));  // the measurement, not the label
  const MotorLaw at_rated = motor_law(motor({{12.0 * V, 5500.0 * rpm}}));
  CHECK(fan_speed(at_rated, 12.0 * V) == near(5500.0 * rpm, 1e-12));
  CHECK_THROWS_AS(motor_law(motor({{9.0 * V, 4000.0 * rpm}, {6.0 * V, 2000.0 * rpm}})), ModelError);
  CHECK_THROWS_AS(motor_law(motor({{6.0 * V, 4000.0 * rpm}, {9.0 * V, 2000.0 * rpm}})), ModelError);
  CHECK_THROWS_AS(motor_law(motor({}), 1.0), ModelError);
}

TEST_CASE("a fan starts, runs on, stops and is overdriven at the usual shares of its rating") {
  MotorLabel label = motor({});
  const MotorLaw usual = motor_law(label);
  CHECK(usual.highest == near(13.8 * V, 1e-12));  // +15 %, the most that sheets allow
  CHECK(fan_motion(usual, 14.4 * V) == FanMotion::too_high);
  CHECK(fan_motion(usual, 12.0 * V) == FanMotion::runs);
  CHECK(fan_motion(usual, 7.0 * V) == FanMotion::may_not_start);
  CHECK(fan_motion(usual, 3.0 * V) == FanMotion::stopped);
  CHECK(fan_speed(usual, 3.0 * V) == 0.0 * rpm);
  CHECK(fan_speed(usual, 14.4 * V) > fan_speed(usual, 12.0 * V));
  label.starts_at = 5.0 * V;
  CHECK(fan_motion(motor_law(label), 5.0 * V) == FanMotion::runs);
  CHECK(fan_motion(motor_law(label), 4.9 * V) == FanMotion::may_not_start);
  label.starts_at = std::nullopt;
  label.speed_at = {{4.0 * V, 1500.0 * rpm}, {12.0 * V, 6000.0 * rpm}};  // it was seen turning at 4 V
  CHECK(fan_speed(motor_law(label), 4.0 * V) == near(1500.0 * rpm, 1e-12));
}
