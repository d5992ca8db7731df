#include "matter/convection.hpp"
#include "matter/air.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::matter;

namespace {
void check_row(const data::Row& row) {
  const std::string what = row.text("what");
  const double within = row.number("tolerance");
  const auto numbers = [&] { return FreeConvection{.rayleigh = row.number("ra"), .prandtl = row.number("pr")}; };
  const auto at = [&](const char* key) { return row.quantity<Temperature>(key); };
  if (what == "plate")
    CHECK(plate_nusselt(numbers()) == near(row.number("expect"), within));
  else if (what == "cylinder")
    CHECK(cylinder_nusselt(numbers()) == near(row.number("expect"), within));
  else if (what == "plate in air")
    CHECK(free_convection_plate(row.quantity<Length>("size"), at("surface"), at("air")) ==
          near(row.quantity<HeatTransfer>("expect"), within));
  else if (what == "cylinder in air")
    CHECK(free_convection_cylinder(row.quantity<Length>("size"), at("surface"), at("air")) ==
          near(row.quantity<HeatTransfer>("expect"), within));
  else if (what == "radiation")
    CHECK(radiation_coefficient(row.number("emissivity"), at("surface"), at("air")) ==
          near(row.quantity<HeatTransfer>("expect"), within));
  else if (what == "hausen")
    CHECK(hausen_nusselt({.reynolds = row.number("re"),
                          .prandtl = row.number("pr"),
                          .bore_over_length = row.quantity<Length>("bore") / row.quantity<Length>("length")}) ==
          near(row.number("expect"), within));
  else if (what == "gnielinski")
    CHECK(gnielinski_nusselt(row.number("re"), row.number("pr")) == near(row.number("expect"), within));
  else
    FAIL("no law called ", what);
}
}  // namespace

TEST_CASE("published values of heat transfer come out of our functions") {
  int rows = 0;
  for (const data::Row& row : published("gas_path", "heat")) {
    const std::string id = row.text("id");
    CAPTURE(id);
    check_row(row);
    ++rows;
  }
  CHECK(rows == 10);
}

TEST_CASE("still air conducts: the limits of no rise") {
  CHECK(plate_nusselt({.rayleigh = 0.0, .prandtl = 0.7}) == near(0.825 * 0.825, 1e-12));
  CHECK(cylinder_nusselt({.rayleigh = 0.0, .prandtl = 0.7}) == near(0.36, 1e-12));
  const HeatTransfer even = free_convection_plate(50.0 * mm, degC(20), degC(20));
  CHECK(even == near(0.680625 * air_conductivity(degC(20)) / (50.0 * mm), 1e-9));
}

TEST_CASE("convection rises with the difference and does not ask which side is warm") {
  HeatTransfer before = 0.0 * W_per_m2_K;
  for (double t = 21.0; t < 400.0; t += 10.0) {
    const HeatTransfer h = free_convection_cylinder(15.0 * mm, degC(t), degC(20));
    CHECK(h > before);
    before = h;
  }
  CHECK(free_convection_plate(60.0 * mm, degC(120), degC(20)) ==
        near(free_convection_plate(60.0 * mm, degC(20), degC(120)), 1e-12));
}

TEST_CASE(
    "the chart of films is the equation, worked out from air's own properties, between and on the rows of air.yaml") {
  // identity: Ra = g beta dT L^3 Pr / nu^2 at the mean temperature, beta of an ideal gas
  for (const Length& size : {15.0 * mm, 0.3 * m})
    for (double surface = -50.0; surface < 1500.0; surface += 13.7)
      for (const double air : {-20.0, 20.0, 600.0}) {
        CAPTURE(surface);
        const Temperature warm = degC(surface), cold = degC(air), mean = cold + 0.5 * (warm - cold);
        const auto nu = air_viscosity(mean) / air_density(mean, atmosphere);
        const double rise = std::abs(surface - air) / in(above_absolute_zero(mean), K), pr = prandtl(mean);
        const double cubed = in(size, m) * in(size, m) * in(size, m), kinematic = AnyQuantity(nu).si;
        const FreeConvection at{.rayleigh = 9.80665 * rise * cubed * pr / (kinematic * kinematic), .prandtl = pr};
        CHECK(free_convection_plate(size, warm, cold) ==
              near(plate_nusselt(at) * air_conductivity(mean) / size, 1e-10));
        CHECK(free_convection_cylinder(size, warm, cold) ==
              near(cylinder_nusselt(at) * air_conductivity(mean) / size, 1e-10));
      }
}

TEST_CASE("radiation's coefficient times the difference is Stefan and Boltzmann's law") {
  // hand: 5.670374e-8 (500^4 - 300^4) = 3084.68 W/m2 over 200 K; at equal temperatures 4 sigma T^3 = 6.12400
  CHECK(radiation_coefficient(1.0, kelvin(500), kelvin(300)) == near(15.42342 * W_per_m2_K, 1e-6));
  CHECK(radiation_coefficient(1.0, kelvin(300), kelvin(300)) == near(6.124004 * W_per_m2_K, 1e-6));
  CHECK(radiation_coefficient(0.0, kelvin(500), kelvin(300)) == 0.0 * W_per_m2_K);
}

TEST_CASE("flow inside a tube: long laminar tubes have 3.66, and nothing jumps on the way to turbulence") {
  CHECK(hausen_nusselt({.reynolds = 100.0, .prandtl = 0.7, .bore_over_length = 1e-9}) == near(3.66, 1e-6));
  const auto at = [](double re) { return TubeHeat{.reynolds = re, .prandtl = 0.7, .bore_over_length = 0.1}; };
  double before = tube_nusselt(at(0.0));
  for (double re = 10.0; re < 2e4; re += 10.0) {
    const double nu = tube_nusselt(at(re));
    REQUIRE(nu > before);
    REQUIRE(nu - before < 0.25);
    before = nu;
  }
}

TEST_CASE("numbers outside the equations are refused") {
  CHECK_THROWS_WITH_AS(plate_nusselt({.rayleigh = -1.0, .prandtl = 0.7}),
                       "Rayleigh number -1 is not between 0 and 1000000000000", ModelError);
  CHECK_THROWS_AS(cylinder_nusselt({.rayleigh = 1e13, .prandtl = 0.7}), ModelError);
  CHECK_THROWS_AS(plate_nusselt({.rayleigh = 1e6, .prandtl = 0.0}), ModelError);
  CHECK_THROWS_AS(radiation_coefficient(1.1, degC(100), degC(20)), ModelError);
  CHECK_THROWS_AS(gnielinski_nusselt(2000.0, 0.7), ModelError);
  CHECK_THROWS_AS(hausen_nusselt({.reynolds = 100.0, .prandtl = 0.7, .bore_over_length = 0.0}), ModelError);
  CHECK_THROWS_AS(free_convection_plate(0.0 * mm, degC(100), degC(20)), ModelError);
}
