// Every row of tests/published/combustion.yaml under `rows`, sent to the function that its `what` names.
#include "fire/burning_bed.hpp"
#include "fire/flame.hpp"
#include "fire/other_heating_values.hpp"
#include "laws.hpp"
#include "near.hpp"
#include <doctest/doctest.h>
#include <map>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::fire;
using data::Row;

namespace {
template <class Q>
void check(const Row& row, Q actual) {
  CHECK(actual == near(row.quantity<Q>("expect"), row.number("tolerance")));
}
Temperature temperature(const Row& row) { return row.quantity<Temperature>("temperature"); }
/// Numbers of a row as an analysis; what is not given is zero.
data::FuelAnalysis analysis(const Row& row) {
  const auto share = [&](const char* key) { return row.has(key) ? row.number(key) : 0.0; };
  return {.moisture = 0.0,
          .volatiles = 0.0,
          .ash = 0.0,
          .carbon = share("carbon"),
          .hydrogen = share("hydrogen"),
          .oxygen = share("oxygen"),
          .nitrogen = share("nitrogen"),
          .sulphur = share("sulphur"),
          .basis = {}};
}
data::FuelAnalysis carbon() {
  return {.moisture = 0.0,
          .volatiles = 0.0,
          .ash = 0.0,
          .carbon = 1.0,
          .hydrogen = 0.0,
          .oxygen = 0.0,
          .nitrogen = 0.0,
          .sulphur = 0.0,
          .basis = {}};
}
const data::FuelAnalysis& fuel(const Row& row) { return data::fuel(row.text("fuel")).analysis; }
AirAndFuel mix(const Row& row) {
  return {.air_ratio = row.number("ratio"), .monoxide_carbon = row.has("monoxide") ? row.number("monoxide") : 0.0};
}
const IdealGas one_gas(const Row& row) { return IdealGas(data::species(row.text("gas"))); }

/// Flue gas of air that holds 7.5 g of vapour for each kilogram.
IdealGas humid(const Row& row) {
  const FlueGas dry = flue_gas(fuel(row), mix(row));
  const double vapour = 0.0075 * row.number("ratio") * stoichiometric_air(fuel(row));
  return mixed(gas_of(dry.shares), IdealGas(data::species("H2O")), vapour / (dry.per_fuel + vapour));
}

using Law = void (*)(const Row&);
const std::map<std::string, Law> laws = {
    {"molar heat",
     [](const Row& r) {
       const IdealGas gas = one_gas(r);
       check(r, in(gas.enthalpy(temperature(r)) - gas.enthalpy(at_25), kJ_per_kg) * gas.relative_mass() * 1e-3);
     }},
    {"molar capacity",
     [](const Row& r) {
       const IdealGas gas = one_gas(r);
       check(r, in(gas.heat_capacity(temperature(r)), J_per_kg_K) * gas.relative_mass() * 1e-3);
     }},
    {"carbon heat", [](const Row& r) { check(r, carbon_heat()); }},
    {"monoxide heat", [](const Row& r) { check(r, carbon_monoxide_heat()); }},
    {"oxygen in air", [](const Row& r) { check(r, oxygen_in_air()); }},
    {"conductivity", [](const Row& r) { check(r, flue_gas_conductivity(temperature(r))); }},
    {"pure air", [](const Row& r) { check(r, stoichiometric_air(analysis(r))); }},
    {"air", [](const Row& r) { check(r, stoichiometric_air(fuel(r))); }},
    {"dulong", [](const Row& r) { check(r, gross_heat_dulong(analysis(r))); }},
    {"boie", [](const Row& r) { check(r, gross_heat_boie(analysis(r))); }},
    {"gross", [](const Row& r) { check(r, gross_heat(fuel(r))); }},
    {"net", [](const Row& r) { check(r, net_heat(fuel(r))); }},
    {"flame",
     [](const Row& r) {
       check(r, adiabatic_temperature(fuel(r), {.net_heat = net_heat(fuel(r)), .mix = mix(r), .air = degC(15)}));
     }},
    {"carbon flame",
     [](const Row& r) {
       check(r, adiabatic_temperature(carbon(), {.net_heat = carbon_heat(), .mix = mix(r), .air = degC(15)}));
     }},
    {"carbon dry CO2", [](const Row& r) { check(r, dry_reading(flue_gas(carbon(), mix(r)).shares).carbon_dioxide); }},
    {"carbon dry O2", [](const Row& r) { check(r, dry_reading(flue_gas(carbon(), mix(r)).shares).oxygen); }},
    {"dry CO2", [](const Row& r) { check(r, dry_reading(flue_gas(fuel(r), mix(r)).shares).carbon_dioxide); }},
    {"humid molar mass", [](const Row& r) { check(r, humid(r).relative_mass()); }},
    {"humid capacity", [](const Row& r) { check(r, humid(r).heat_capacity(temperature(r))); }},
    {"lifting",
     [](const Row& r) {
       check(r, lifting_flux({.diameter = r.quantity<Length>("lump"), .density = r.quantity<Density>("piece")},
                             kelvin(1200.0)));
     }},
};
}  // namespace

TEST_CASE("published values of combustion come out of our functions") { CHECK(follow("combustion", laws) >= 58); }

TEST_CASE("heat for each kilogram of air hardly depends on the fuel") {
  // Huggett, Fire and Materials 4 (1980), from memory: 13.1 MJ for each kilogram of oxygen, +-5 %
  for (const data::FuelRow& row : data::fuels()) {
    CAPTURE(row.name);
    const SpecificEnergy per_air = net_heat(row.analysis) / stoichiometric_air(row.analysis);
    CHECK(per_air == near(13.1 * oxygen_in_air() * MJ_per_kg, 0.05));
  }
  for (const char* name : {"lump charcoal", "anthracite", "steam coal", "house coal", "coke", "lignite briquette"}) {
    CAPTURE(name);  // second program: 2.985 to 3.014 MJ/kg
    const data::FuelAnalysis& fuel = data::fuel(name).analysis;
    CHECK(net_heat(fuel) / stoichiometric_air(fuel) == near(3.0 * MJ_per_kg, 0.005));
  }
}

TEST_CASE("three formulas for the heating value agree where all of them hold") {
  for (const data::FuelRow& row : data::fuels()) {
    CAPTURE(row.name);
    const SpecificEnergy ours = gross_heat(row.analysis);
    CHECK(gross_heat_boie(row.analysis) == near(ours, 0.04));
    if (row.analysis.oxygen <= 0.10) CHECK(gross_heat_dulong(row.analysis) == near(ours, 0.04));
  }
}
