#include "matter/water.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include <string>

using namespace lumwright;
using namespace lumwright::matter;

TEST_CASE("the pressure and temperature of boiling are those of IF97's own verification tables") {
  for (const data::Row& row : published("steam", "region_4_pressure")) {
    CAPTURE(row.text("id"));
    CHECK(saturation_pressure(row.quantity<Temperature>("temperature")) ==
          near(row.quantity<Pressure>("expect"), row.number("tolerance")));
  }
  for (const data::Row& row : published("steam", "region_4_temperature")) {
    CAPTURE(row.text("id"));
    CHECK(saturation_temperature(row.quantity<Pressure>("pressure")) ==
          near(row.quantity<Temperature>("expect"), row.number("tolerance")));
  }
}

TEST_CASE("densities and enthalpies are the check values of the release on saturation properties") {
  for (const data::Row& row : published("steam", "release")) {
    CAPTURE(row.text("id"));
    const Saturation state = saturation(row.quantity<Temperature>("temperature"));
    const double density = row.number("density_tolerance"), enthalpy = row.number("enthalpy_tolerance");
    CHECK(state.pressure == near(row.quantity<Pressure>("pressure"), 2e-4));  // region 4 against the release
    CHECK(state.water_density == near(row.quantity<Density>("water_density"), density));
    CHECK(state.steam_density == near(row.quantity<Density>("steam_density"), density));
    CHECK(state.alpha == near(row.quantity<SpecificEnergy>("alpha"), enthalpy));
    CHECK(state.water_enthalpy == near(row.quantity<SpecificEnergy>("water_enthalpy"), enthalpy));
    CHECK(state.steam_enthalpy == near(row.quantity<SpecificEnergy>("steam_enthalpy"), enthalpy));
  }
}

namespace {
// Greatest distance of SR1-86 from IF97 over 5-188 degC, found by comparing both
constexpr double water_density_scatter = 2.2e-5, steam_density_scatter = 1.4e-4;
constexpr SpecificEnergy energy_scatter = 0.22 * kJ_per_kg;

void agrees(SpecificEnergy found, SpecificEnergy expected) {
  CHECK(found > expected - energy_scatter);
  CHECK(found < expected + energy_scatter);
}
}  // namespace

TEST_CASE("steam at boiler pressures is that of a general water and steam library") {
  for (const data::Row& row : published("steam", "by_pressure")) {
    CAPTURE(row.text("id"));
    const Saturation state = saturation_at(row.quantity<Pressure>("pressure"));
    // half the last of the seven printed digits
    CHECK(in_degC(state.temperature) == near(in_degC(row.quantity<Temperature>("temperature")), 5e-7));
    agrees(state.water_enthalpy, row.quantity<SpecificEnergy>("water_enthalpy"));
    agrees(state.water_energy, row.quantity<SpecificEnergy>("water_energy"));
    agrees(state.steam_enthalpy, row.quantity<SpecificEnergy>("steam_enthalpy"));
    CHECK(state.water_density == near(row.quantity<Density>("water_density"), water_density_scatter));
    CHECK(state.steam_density == near(row.quantity<Density>("steam_density"), steam_density_scatter));
  }
}

TEST_CASE("steam at temperatures from cold feed to full boil is that of a general water and steam library") {
  for (const data::Row& row : published("steam", "by_temperature")) {
    CAPTURE(row.text("id"));
    const Saturation state = saturation(row.quantity<Temperature>("temperature"));
    CHECK(state.pressure == near(row.quantity<Pressure>("pressure"), 6e-7));  // half the last printed digit
    agrees(state.water_energy, row.quantity<SpecificEnergy>("water_energy"));
    agrees(state.steam_enthalpy, row.quantity<SpecificEnergy>("steam_enthalpy"));
    CHECK(state.water_density == near(row.quantity<Density>("water_density"), water_density_scatter));
    CHECK(state.steam_density == near(row.quantity<Density>("steam_density"), steam_density_scatter));
  }
}

TEST_CASE("what steam holds in a closed boiler is its enthalpy less the work of making room") {
  // IF97 as python3-iapws 1.5.3 computes it (u of saturated steam); handbooks print 2402, 2506, 2550, 2583 kJ/kg
  struct Row {
    double celsius;
    SpecificEnergy energy;
  };
  for (const Row& row : {Row{20.0, 2402.353 * kJ_per_kg}, Row{100.0, 2506.015 * kJ_per_kg},
                         Row{140.0, 2549.614 * kJ_per_kg}, Row{180.0, 2582.847 * kJ_per_kg}}) {
    CAPTURE(row.celsius);
    agrees(saturation(degC(row.celsius)).steam_energy, row.energy);
  }
}

TEST_CASE("water of a 300 g boiler takes up the heat that IF97 gives") {
  // Closed vessel, 15 degC to 1 and 3 bar on the gauge: m (u2 - u1). hand, from IF97's u_f (python3-iapws): 132.71,
  // 162.55 kJ
  const auto heat = [](Pressure p) {
    const Energy taken = 0.300 * kg * (saturation_at(p).water_energy - saturation(degC(15)).water_energy);
    return taken;
  };
  CHECK(heat(2.01325 * bar) == near(132.71 * kJ, 1e-3));
  CHECK(heat(4.01325 * bar) == near(162.55 * kJ, 1e-3));
}

TEST_CASE("boiling temperature and pressure undo one another over the whole line") {
  for (double t = 273.15; t <= 647.096; t += 0.37) {
    CAPTURE(t);
    CHECK(saturation_temperature(saturation_pressure(kelvin(t))) == near(kelvin(t), 1e-9));
  }
  CHECK(saturation_temperature(saturation_pressure(kelvin(647.096))) == near(kelvin(647.096), 1e-9));
  CHECK(saturation_at(saturation_pressure(kelvin(647.096))).steam_density == near(322.0 * kg_per_m3, 1e-2));
}

TEST_CASE("hotter water is lighter, its steam denser, and pressure rises, with enthalpies apart by the latent heat") {
  Saturation before = saturation(kelvin(277.13));  // 4 degC, where liquid water is densest
  for (double t = 278.0; t < 647.0; t += 1.3) {
    CAPTURE(t);
    const Saturation state = saturation(kelvin(t));
    CHECK(state.pressure > before.pressure);
    CHECK(state.water_density < before.water_density);
    CHECK(state.steam_density > before.steam_density);
    CHECK(state.water_energy > before.water_energy);
    CHECK(state.steam_enthalpy > state.water_enthalpy);
    before = state;
  }
}

TEST_CASE("water outside the saturation line is refused with the quantity and its value") {
  CHECK_THROWS_WITH_AS(saturation_pressure(degC(-5)),
                       "water temperature 268.150 K is not between 273.15 K and 647.096 K", ModelError);
  CHECK_THROWS_WITH_AS(saturation(kelvin(700)), "water temperature 700.000 K is not between 273.16 K and 647.096 K",
                       ModelError);
  CHECK_THROWS_WITH_AS(saturation_temperature(25.0 * MPa),
                       "steam pressure 25000000 Pa (absolute) is not between 611.213 Pa and 22.064 MPa", ModelError);
  CHECK_THROWS_WITH_AS(saturation_temperature(std::nan("") * Pa),
                       "steam pressure that is no number (absolute) is not between 611.213 Pa and 22.064 MPa",
                       ModelError);
  CHECK_THROWS_AS(saturation_at(0.0 * Pa), ModelError);
}
