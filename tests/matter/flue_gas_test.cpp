#include "matter/flue_gas.hpp"
#include "matter/air.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::matter;

namespace {
double in_kelvin(Temperature t) { return in(above_absolute_zero(t), K); }
}  // namespace

TEST_CASE("a gas gives its temperature back from its enthalpy") {
  for (const data::SpeciesRow& row : data::species()) {
    const IdealGas gas(row);
    for (double t = 200.0; t <= 3500.0; t += 13.7)
      CHECK(in_kelvin(gas.temperature(gas.enthalpy(kelvin(t)))) == near(t, 1e-11));
  }
}

TEST_CASE("enthalpy is the integral of heat capacity, also across the join of the ranges") {
  const IdealGas gas =
      gas_of({.carbon_dioxide = 0.2, .water = 0.05, .carbon_monoxide = 0.01, .oxygen = 0.1, .nitrogen = 0.64});
  for (const double t : {250.0, 600.0, 998.0, 1001.0, 1800.0, 3000.0}) {
    const SpecificEnergy rise = gas.enthalpy(kelvin(t + 1.0)) - gas.enthalpy(kelvin(t - 1.0));
    CHECK(rise / (2.0 * K) == near(gas.heat_capacity(kelvin(t)), 1e-5));
  }
  const SpecificEnergy step = gas.enthalpy(kelvin(1000.0)) - gas.enthalpy(kelvin(std::nextafter(1000.0, 0.0)));
  CHECK(std::abs(in(step, J_per_kg)) < 1e-6);
}

TEST_CASE("a mixture holds the heat of its parts") {
  const IdealGas a(data::species("CO2")), b(data::species("N2"));
  for (const double share : {0.0, 0.3, 1.0}) {
    const IdealGas both = mixed(a, b, share);
    const Temperature t = kelvin(1234.0);
    CHECK(both.enthalpy(t) == near((1.0 - share) * a.enthalpy(t) + share * b.enthalpy(t), 1e-12));
    CHECK(both.heat_capacity(t) == near((1.0 - share) * a.heat_capacity(t) + share * b.heat_capacity(t), 1e-12));
  }
  CHECK(mixed(a, b, 0.5).relative_mass() == near(2.0 / (1.0 / 44.0095 + 1.0 / 28.0134), 1e-12));  // hand: moles add up
}

TEST_CASE("dry air by its parts is the air of the tables") {
  CHECK(dry_air_gas().relative_mass() == near(28.9647, 1e-4));  // ISO 2533
  // Incropera and DeWitt, table A.4, from memory: 0.5 % between the two sources
  for (const double t : {300.0, 500.0, 800.0, 1000.0, 1300.0})
    CHECK(dry_air_gas().heat_capacity(kelvin(t)) == near(air_heat_capacity(kelvin(t)), 5e-3));
}

TEST_CASE("gases out of range are refused with the number") {
  const IdealGas gas(data::species("oxygen"));
  CHECK_THROWS_WITH_AS(gas.enthalpy(kelvin(199.0)), "gas temperature 199 K is not between 200 and 3500", ModelError);
  CHECK_THROWS_AS(gas.temperature(1e9 * J_per_kg), ModelError);
  CHECK_THROWS_AS(gas.temperature(std::nan("") * J_per_kg), ModelError);
  CHECK_THROWS_AS(mixed(gas, gas, 1.1), ModelError);
  CHECK_THROWS_AS(data::species("argon"), ModelError);
  CHECK_THROWS_AS(flue_gas_conductivity(kelvin(100.0)), ModelError);
  CHECK_THROWS_AS(gas_of({.carbon_dioxide = 0.5, .water = 0.0, .carbon_monoxide = 0.0, .oxygen = 0.0, .nitrogen = 0.4}),
                  ModelError);
}
