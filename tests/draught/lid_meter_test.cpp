#include "draught/lid_meter.hpp"
#include "data/fan_test.hpp"
#include "draught/orifice.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <numbers>
#include <string>

using namespace lumwright;
using namespace lumwright::draught;

namespace {
// 20 degC, 101325 Pa: ideal gas with R = 287.05 J/kgK; Sutherland (White)
constexpr RoomAir usual_room{.density = 1.204118 * kg_per_m3, .viscosity = 1.81332e-5 * Pa_s};
LidPlate thin_plate(Length hole, int holes = 1) { return {.hole = hole, .holes = holes, .thickness = 0.2 * mm}; }
bool inside(double x, const Band<double>& band) { return x >= band.low && x <= band.high; }
/// The plate with corner taps in a pipe of 72 mm or more: ISO 5167-2:2003, equation 4 (Reader-Harris and Gallagher). With
/// these taps its other terms are zero. `beta` is hole over pipe.
double plate_in_pipe(double beta, double pipe_reynolds) {
  const double re = pipe_reynolds, a = std::pow(19000.0 * beta / re, 0.8);
  return 0.5961 + 0.0261 * std::pow(beta, 2) - 0.216 * std::pow(beta, 8) +
         0.000521 * std::pow(1e6 * beta / re, 0.7) +
         (0.0188 + 0.0063 * a) * std::pow(beta, 3.5) * std::max(std::pow(1e6 / re, 0.3), 22.7 - 0.0047 * re);
}
}  // namespace

TEST_CASE("a plate of 20 mm at 5 mm of water, its coefficient stated") {
  // Hand: m = 0.60 (pi/4) d^2 sqrt(2 rho 49.03325 Pa), Q = m / rho, Re = 4 m / (pi d mu).
  const MeteredFlow f = plate_flow(thin_plate(20.0 * mm), 5.0 * mmH2O, usual_room, exactly(0.60));
  CHECK(f.flow == near(2.04831 * g_per_s, 1e-5));
  CHECK(f.flow / usual_room.density == near(1.70109 * litre_per_s, 1e-5));
  CHECK(f.reynolds == near(7191.0, 2e-4));
}

TEST_CASE("errors of the flow add up as the equation says") {
  // Hand, in quadrature: 2 % of Cd, twice 1 % of d, half of 10 % of the drop, half of 1 % of the density: 5.77 %
  const auto flow = [](double cd, double d, double p, double rho) {
    const RoomAir room{.density = rho * usual_room.density, .viscosity = usual_room.viscosity};
    return plate_flow(thin_plate(d * 20.0 * mm), p * 50.0 * Pa, room, exactly(cd * 0.60)).flow / kg_per_s;
  };
  const double here = flow(1, 1, 1, 1), h = 1e-3;
  const double cd = 0.02 * (flow(1 + h, 1, 1, 1) / here - 1) / h, d = 0.01 * (flow(1, 1 + h, 1, 1) / here - 1) / h;
  const double p = 0.10 * (flow(1, 1, 1 + h, 1) / here - 1) / h, rho = 0.01 * (flow(1, 1, 1, 1 + h) / here - 1) / h;
  CHECK(std::sqrt(cd * cd + d * d + p * p + rho * rho) == near(0.0577, 2e-3));
}

TEST_CASE("several holes pass as much as they are many, each with its own Reynolds number") {
  const MeteredFlow one = plate_flow(thin_plate(12.0 * mm), 30.0 * Pa, usual_room),
                    three = plate_flow(thin_plate(12.0 * mm, 3), 30.0 * Pa, usual_room);
  CHECK(three.flow == near(3.0 * one.flow, 1e-12));
  CHECK(three.reynolds == near(one.reynolds, 1e-12));
}

TEST_CASE("the flow is solved with the coefficient of its own Reynolds number") {
  for (const double d : {4.0, 8.0, 14.0, 28.0})
    for (const double p : {8.0, 40.0, 400.0}) {
      CAPTURE(d);
      CAPTURE(p);
      const LidPlate plate = {.hole = d * mm, .holes = 1, .thickness = 0.2 * mm};
      const MeteredFlow f = plate_flow(plate, p * Pa, usual_room);
      CHECK(f.flow == near(orifice_flow(f.coefficient.value, circle(d * mm), usual_room.density, p * Pa), 1e-12));
      CHECK(f.coefficient.value == near(plate_coefficient(f.reynolds, 0.2 / d).value, 1e-9));
    }
}

TEST_CASE("a plate's coefficient against theory and the standard's plate in a pipe") {
  // Kirchhoff 1869, free jet from a slot in a wall: pi / (pi + 2) (theory)
  CHECK(inside(std::numbers::pi / (std::numbers::pi + 2.0), plate_coefficient(1e4, 0.02)));
  // ISO 5167-2, equation 4: a small hole in a wide pipe is nearly one in a wall. Corner taps, hole a tenth of the pipe.
  for (const double hole_re : {3e4, 1e5, 1e6})
    CHECK(inside(plate_in_pipe(0.1, 0.1 * hole_re), plate_coefficient(hole_re, 0.02)));
  // Range of drilled plates, 0.61 to 0.64 from Re 1500 to 10 000 and 0.64 to 0.70 at 200 to 1000 (Johansen 1930 and ISO
  // 5801, from memory)
  for (const double middle : {0.61, 0.64}) CHECK(inside(middle, plate_coefficient(4000.0, 0.02)));
  CHECK(inside(0.67, plate_coefficient(500.0, 0.02)));
  double before = 1.0;
  for (double re = 200.0; re < 1e6; re *= 1.3) {
    const double cd = plate_coefficient(re, 0.0).value;
    CHECK(cd <= before);
    before = cd;
  }
}

TEST_CASE("a thick edge passes more, and between the two nothing is sure") {
  const Band<double> sharp = plate_coefficient(5000.0, 0.1), thick = plate_coefficient(5000.0, 0.5),
                     between = plate_coefficient(5000.0, 0.3);
  // 0.75 to 0.8 for edges of half to one diameter (Lichtarowicz et al. 1965, Idelchik, from memory)
  CHECK(inside(0.77, thick));
  CHECK(between.value > sharp.value);
  CHECK(between.value < thick.value);
  CHECK(between.high - between.low > 1.5 * (thick.high - thick.low));
  CHECK_THROWS_AS(plate_coefficient(5000.0, 1.6), ModelError);
}

TEST_CASE("what a jet gives back to its box") {
  // Borda and Carnot: 2 s (1 - s) of the jet's head comes back for a small share s, so s of the flow; hand value for a
  // hole of a quarter of a square box: 0.61 (pi/4) / 16
  CHECK(jet_recovery(thin_plate(40.0 * mm), 0.61, 160.0 * mm * 160.0 * mm) ==
        near(0.61 * std::numbers::pi / 64.0, 1e-12));
}

TEST_CASE("pitot tube and straight tube") {
  CHECK(pitot_velocity(60.0 * Pa, 1.2 * kg_per_m3) == near(10.0 * m_per_s, 1e-12));  // hand: sqrt(2 60 / 1.2)
  CHECK(pitot_velocity(0.0 * Pa, 1.2 * kg_per_m3) == 0.0 * m_per_s);
  const auto share = [](double lengths, double speed) {
    const StraightTube tube{.bore = 30.0 * mm, .length = lengths * 30.0 * mm};
    return tube_flow(tube, speed * m_per_s, usual_room).coefficient;
  };
  CHECK(inside(49.0 / 60.0, share(20.0, 10.0)));  // 1/7 power law: 2 n^2 / (n + 1)(2 n + 1), n = 7
  CHECK(inside(0.5, share(20.0, 0.5)));           // Poiseuille
  CHECK(inside(1.0, share(1.0, 10.0)));           // a core that no wall has slowed yet
  const StraightTube tube{.bore = 30.0 * mm, .length = 300.0 * mm};
  // hand: 0.8 10 m/s (pi/4) (30 mm)^2 1.204118
  CHECK(tube_flow(tube, 10.0 * m_per_s, usual_room, exactly(0.8)).flow == near(6.80909 * g_per_s, 1e-5));
}

TEST_CASE("a U-tube's doubt") {
  // GUM 4.3.7: half-width over the root of three
  CHECK(u_tube_sigma({.reads_to = 0.5 * mmH2O, .incline = 1.0}) == near(4.903325 / std::sqrt(3.0) * Pa, 1e-12));
  const Pressure least = data::laid_down_u_tube().least;
  CHECK(u_tube_sigma({.reads_to = 0.5 * mmH2O, .incline = 20.0}) == near(least / std::sqrt(3.0), 1e-12));
  CHECK_THROWS_AS(u_tube_sigma({.reads_to = 0.5 * mmH2O, .incline = 0.5}), ModelError);
}

TEST_CASE("plates that are none are refused") {
  CHECK_THROWS_WITH_AS(plate_flow(thin_plate(0.0 * mm), 40.0 * Pa, usual_room),
                       "hole of a test plate 0 m is not above zero", ModelError);
  CHECK_THROWS_AS(plate_flow(thin_plate(10.0 * mm, 0), 40.0 * Pa, usual_room), ModelError);
  CHECK_THROWS_AS(plate_flow(thin_plate(10.0 * mm), 0.0 * Pa, usual_room), ModelError);
  CHECK_THROWS_AS(plate_flow(thin_plate(0.3 * mm), 1.0 * Pa, usual_room), ModelError);  // Reynolds number far below 200
  CHECK_THROWS_AS(pitot_velocity(-1.0 * Pa, usual_room.density), ModelError);
}
