#include "matter/metal.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include <set>
#include <string>

using namespace lumwright;
using namespace lumwright::matter;

TEST_CASE("metals swell as handbooks and the European standards say") {
  for (const data::Row& row : published("fits", "strains")) {
    CAPTURE(row.text("id"));
    const data::MetalRow& named = metal(row.text("metal"));
    const Temperature t = row.quantity<Temperature>("temperature");
    const double found = row.text("form") == "linear" ? linear_strain(named, t) : tabulated_strain(named, t);
    CHECK(found == near(row.number("expect"), row.number("tolerance")));
  }
}

TEST_CASE("the metal of a boiler takes up the heat that a hand sum gives") {
  // hand: 1.10 x 390 + 0.25 x 380 + 0.30 x 480 = 668 J/K with Kaye and Laby's specific heats (from memory)
  const auto capacity = 1.10 * kg * *metal("copper").specific_heat + 0.25 * kg * *metal("brass").specific_heat +
                        0.30 * kg * *metal("steel").specific_heat;
  const Energy taken = capacity * (105.42 * K);
  CHECK(taken == near(70.42 * kJ, 1e-4));
}

TEST_CASE("a metal answers to every usual name, in any letter case, and to no other") {
  CHECK(metal("Brass").name == "brass");
  CHECK(metal("CuZn37").name == "yellow brass");
  CHECK(metal("cast iron").name == "cast iron");
  CHECK(metal("aluminum").name == "aluminium");
  CHECK_THROWS_WITH_AS(metal("unobtainium"),
                       "metal `unobtainium` is not one of brass, yellow brass, free-cutting brass, copper, steel, "
                       "stainless, ferritic stainless, cast iron, gunmetal, aluminium, tinplate, silver solder",
                       ModelError);
}

TEST_CASE("no two metals share a name, and each elongation form exists") {
  std::set<std::string> names;
  for (const data::MetalRow& row : data::metals()) {
    CAPTURE(row.name);
    CHECK(names.insert(row.name).second);
    for (const std::string& other : row.also) CHECK(names.insert(other).second);
    if (row.elongation_form) CHECK_NOTHROW(tabulated_strain(row, degC(100)));
  }
}

TEST_CASE("the strain range holds both forms and never falls as the metal gets hotter") {
  for (const data::MetalRow& row : data::metals()) {
    if (!row.expansion) continue;
    CAPTURE(row.name);
    StrainRange before = strain(row, degC(-50));
    for (double t = -49.0; t <= 230.0; t += 1.0) {
      const StrainRange now = strain(row, degC(t));
      CHECK(now.least <= now.most);
      CHECK(now.least > before.least);
      CHECK(now.most > before.most);
      before = now;
    }
  }
  // a constant coefficient of mild steel understates how far a hot bore opens, so the fit's least is the linear one
  const StrainRange hot_steel = strain(metal("steel"), degC(300));
  CHECK(hot_steel.least == near(11.7e-6 * 280.0, 1e-9));
  CHECK(hot_steel.most == near(3.7184e-3, 1e-5));  // EN 1993-1-2
}

TEST_CASE("temperatures beyond the metal, and metals without data, are refused") {
  CHECK_THROWS_WITH_AS(strain(metal("brass"), degC(950)),
                       "brass temperature 950 degC is not between -50.0 degC and 915 degC", ModelError);
  CHECK_THROWS_WITH_AS(strain(metal("steel"), degC(800)),
                       "steel temperature 800 degC is not between -50.0 degC and 750 degC", ModelError);
  CHECK_THROWS_AS(strain(metal("brass"), degC(std::nan(""))), ModelError);
  CHECK_THROWS_WITH_AS(linear_strain(metal("silver solder"), degC(20)),
                       "no expansion coefficient is known for silver solder", ModelError);
  CHECK_THROWS_WITH_AS(tabulated_strain(metal("brass"), degC(100)), "no standard's elongation curve is known for brass",
                       ModelError);
}
