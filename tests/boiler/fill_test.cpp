#include "boiler/fill.hpp"
#include "matter/water.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::boiler;

TEST_CASE("a boiler shut with air in it shows pressure too soon") {
  // second program: p_sat(T) + p_air (T/T0)(V0/V) with IAPWS-IF97; 0.05 K
  struct Row {
    double share, one, two, three;  // degC at 1, 2 and 3 bar on the gauge
  };
  for (const Row& row :
       {Row{0.75, 87.21, 110.3, 124.9}, Row{0.60, 89.6, 112.6, 127.1}, Row{0.85, 82.8, 105.5, 119.8}}) {
    CAPTURE(row.share);
    const Fill fill{.water_share = row.share, .cold = degC(15), .barometer = atmosphere};
    CHECK(std::abs(in_degC(false_reading(fill, {1.0 * bar})) - row.one) < 0.06);
    CHECK(std::abs(in_degC(false_reading(fill, {2.0 * bar})) - row.two) < 0.06);
    CHECK(std::abs(in_degC(false_reading(fill, {3.0 * bar})) - row.three) < 0.06);
    for (const double p : {0.1, 1.0, 4.0}) {  // the inverse, and always below the true temperature
      const Temperature t = false_reading(fill, {p * bar});
      CHECK(gauge_with_air(fill, t).above_barometer == near(p * bar, 1e-9));
      CHECK(t < saturation_temperature(p * bar + atmosphere));
    }
  }
}

TEST_CASE("water swells by 6 % to 1 bar and 11 % to 6 bar") {
  const Fill fill{.water_share = 0.75, .cold = degC(15), .barometer = atmosphere};
  // IAPWS-IF97 by an open library
  CHECK(water_share_at(fill, degC(120.4204)) == near(0.75 * 1.060, 3e-4));
  CHECK(water_share_at(fill, degC(143.7318)) == near(0.75 * 1.083, 5e-4));
  CHECK(water_share_at(fill, degC(165.029)) == near(0.75 * 1.107, 3e-4));
  CHECK(water_share_at(fill, degC(15)) == near(0.75, 1e-12));
}

TEST_CASE("a boiler that is full before it is hot is refused, and its gauge rises without bound before that") {
  const Fill fill{.water_share = 0.97, .cold = degC(15), .barometer = atmosphere};
  CHECK_THROWS_AS(water_share_at(fill, degC(120)), ModelError);
  CHECK(false_reading(fill, {3.0 * bar}) < degC(90));
  CHECK_THROWS_AS(water_share_at({.water_share = 1.0, .cold = degC(15), .barometer = atmosphere}, degC(20)),
                  ModelError);
  CHECK_THROWS_AS(false_reading(fill, {0.0 * bar}), ModelError);
}

TEST_CASE("steam that drives out the air") {
  // hand: 3 changes of 0.1 l at 0.5976 kg/m3 (IAPWS-IF97 at one atmosphere)
  CHECK(purge_steam(0.1 * litre, 3.0, atmosphere) == near(0.17929 * g, 1e-3));
  CHECK_THROWS_AS(purge_steam(-0.1 * litre, 3.0, atmosphere), ModelError);
}
