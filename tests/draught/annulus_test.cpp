#include "draught/annulus.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>
#include <numbers>

using namespace lumwright;
using namespace lumwright::draught;

namespace {
constexpr Density cool_air = 1.20412 * kg_per_m3;
constexpr Viscosity cool_viscosity = 1.81332e-5 * Pa_s;
Annulus annular_gap(double radial, double eccentricity) {
  return {.mean_diameter = 14.0 * mm, .radial_gap = radial * mm, .engaged = 20.0 * mm, .eccentricity = eccentricity};
}
MassFlow leak(double radial, double eccentricity, Pressure drop) {
  return annulus_flow(annular_gap(radial, eccentricity), drop, cool_air, cool_viscosity);
}
}  // namespace

TEST_CASE("a tight fit leaks nothing, and so does any fit without suction") {
  CHECK(leak(0.0, 0.0, 30.0 * Pa) == 0.0 * g_per_s);
  CHECK(leak(-0.05, 0.0, 30.0 * Pa) == 0.0 * g_per_s);
  CHECK(leak(0.25, 0.0, 0.0 * Pa) == 0.0 * g_per_s);
}

TEST_CASE("a narrow gap is plane Poiseuille flow, a wide one a nozzle with 1.5 heads") {
  // hand: pi Dm c^3 rho drop / (12 mu L)
  const Length gap = 0.01 * mm;
  const MassFlow slow = std::numbers::pi * 14.0 * mm * gap * gap * gap * cool_air * (30.0 * Pa) /
                        (12.0 * cool_viscosity * (20.0 * mm));
  CHECK(leak(0.01, 0.0, 30.0 * Pa) == near(slow, 1e-6));
  // hand: A sqrt(2 rho drop / 1.5)
  const Area ring = std::numbers::pi * 14.0 * mm * (5.0 * mm);
  const MassFlow nozzle = ring * square_root(2.0 * cool_air * (3000.0 * Pa) / 1.5);
  CHECK(leak(5.0, 0.0, 3000.0 * Pa) == near(nozzle, 2e-3));
}

TEST_CASE("a touching tube leaks two and a half times as much while flow is slow") {
  CHECK(leak(0.02, 1.0, 30.0 * Pa) == near(2.5 * leak(0.02, 0.0, 30.0 * Pa), 1e-4));
}

TEST_CASE("the leak grows with gap, suction and eccentricity, and shrinks with engaged length") {
  for (double c = 0.02; c < 1.5; c += 0.02) {
    CHECK(leak(c + 0.02, 0.3, 30.0 * Pa) > leak(c, 0.3, 30.0 * Pa));
    CHECK(leak(c, 0.3, 31.0 * Pa) > leak(c, 0.3, 30.0 * Pa));
    CHECK(leak(c, 0.4, 30.0 * Pa) > leak(c, 0.3, 30.0 * Pa));
    Annulus longer = annular_gap(c, 0.3);
    longer.engaged = 30.0 * mm;
    CHECK(annulus_flow(longer, 30.0 * Pa, cool_air, cool_viscosity) < leak(c, 0.3, 30.0 * Pa));
  }
}

TEST_CASE("impossible gaps are refused") {
  CHECK_THROWS_WITH_AS(leak(0.2, 1.5, 30.0 * Pa), "eccentricity 1.5 is not between 0 and 1", ModelError);
  CHECK_THROWS_AS(leak(0.2, 0.0, -1.0 * Pa), ModelError);
  CHECK_THROWS_AS(annulus_flow(annular_gap(0.2, 0.0), 1.0 * Pa, cool_air, 0.0 * Pa_s), ModelError);
  Annulus none = annular_gap(0.2, 0.0);
  none.engaged = 0.0 * mm;
  CHECK_THROWS_AS(annulus_flow(none, 1.0 * Pa, cool_air, cool_viscosity), ModelError);
}
