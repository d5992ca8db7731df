#include "matter/air.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::matter;

TEST_CASE("air has the properties of the published table") {
  for (const data::Row& row : published("gas_path", "air")) {
    const Temperature t = row.quantity<Temperature>("t");
    CAPTURE(in_degC(t));
    CHECK(air_density(t, atmosphere) == near(row.quantity<Density>("density"), 2e-5));  // five digits printed
    CHECK(air_viscosity(t) == near(row.quantity<Viscosity>("viscosity"), 3e-6));
    CHECK(air_conductivity(t) == near(row.quantity<Conductivity>("conductivity"), 2e-4));  // four digits printed
    CHECK(air_heat_capacity(t) ==
          near(row.quantity<SpecificHeat>("cp"), 1e-3));  // four digits, by linear interpolation
  }
}

TEST_CASE("the equations meet measured air within their stated error") {
  for (const data::Row& row : published("gas_path", "measured_air")) {
    const Temperature t = row.quantity<Temperature>("t");
    CHECK(air_viscosity(t) == near(row.quantity<Viscosity>("viscosity"), row.number("within")));
    CHECK(air_conductivity(t) == near(row.quantity<Conductivity>("conductivity"), row.number("within")));
  }
}

namespace {
// Heat capacities over R of GRI-Mech 3.0 (open data; NASA form a1 + a2 T + ... + a5 T^4), 300..1000 and 1000..5000 K.
struct Gas {
  double share, low[5], high[5];
};
constexpr Gas gases[] = {{0.78084,
                          {3.298677, 1.4082404e-3, -3.963222e-6, 5.641515e-9, -2.444854e-12},
                          {2.92664, 1.4879768e-3, -5.68476e-7, 1.0097038e-10, -6.753351e-15}},
                         {0.20946,
                          {3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12},
                          {3.28253784, 1.48308754e-3, -7.57966669e-7, 2.09470555e-10, -2.16717794e-14}},
                         {0.00970, {2.5, 0, 0, 0, 0}, {2.5, 0, 0, 0, 0}}};
double polynomial_cp(double t) {
  double sum = 0;
  for (const Gas& gas : gases) {
    const double(&a)[5] = t < 1000.0 ? gas.low : gas.high;
    sum += gas.share * (a[0] + t * (a[1] + t * (a[2] + t * (a[3] + t * a[4]))));
  }
  return sum * 8.314462618 / 28.9647e-3;
}
}  // namespace

TEST_CASE("heat capacity follows the spectroscopic polynomials of nitrogen, oxygen and argon") {
  double before = 0;
  for (double t = 300.0; t <= 2500.0; t += 10.0) {
    const double cp = in(air_heat_capacity(kelvin(t)), J_per_kg_K);
    CAPTURE(t);
    CHECK(cp == near(polynomial_cp(t), 5e-3));
    CHECK(cp > before);
    before = cp;
  }
}

TEST_CASE("Prandtl number stays about 0.7") {
  for (double t = -20.0; t <= 1000.0; t += 20.0) CHECK(prandtl(degC(t)) == near(0.71, 0.05));
}

TEST_CASE("air thins and thickens as it should") {
  for (double t = 210.0; t < 2490.0; t += 10.0) {
    const Temperature cool = kelvin(t), warm = kelvin(t + 10.0);
    CHECK(air_density(warm, atmosphere) < air_density(cool, atmosphere));
    CHECK(air_viscosity(warm) > air_viscosity(cool));
    CHECK(air_conductivity(warm) > air_conductivity(cool));
  }
  CHECK(air_density(degC(20), 2.0 * atmosphere) == near(2.0 * air_density(degC(20), atmosphere), 1e-12));
  // the air of a fan's data sheet is room air: 1.2 kg/m3 at 21 degC
  CHECK(air_density(degC(21), atmosphere) == near(standard_fan_air, 1e-3));
}

TEST_CASE("temperatures and heights without an answer are refused with their value") {
  CHECK_THROWS_WITH_AS(air_viscosity(kelvin(150)), "air temperature 150 K is not between 200 and 2500", ModelError);
  CHECK_THROWS_AS(air_heat_capacity(kelvin(3000)), ModelError);
  CHECK_THROWS_AS(air_conductivity(kelvin(std::nan(""))), ModelError);
  CHECK_THROWS_AS(air_density(degC(20), 0.0 * Pa), ModelError);
}
