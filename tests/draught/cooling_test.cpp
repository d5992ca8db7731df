#include "draught/cooling.hpp"
#include "matter/air.hpp"
#include "matter/convection.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>
#include <numbers>
#include <vector>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::draught;

namespace {
constexpr TubeWall tube = {.bore = 13.5 * mm, .outside = 14.5 * mm, .length = 60.0 * mm, .emissivity = 0.8};
constexpr BoxWall box = {.height = 30.0 * mm, .area = 123.0 * cm2, .emissivity = 0.85, .stirring = 2.0};
GasCooling cooling(ThermalConductance ua) {
  return {.flow = 0.5 * g_per_s,
          .heat_capacity = 1030.0 * J_per_kg_K,
          .conductance = ua,
          .inlet = degC(200),
          .ambient = degC(20)};
}
}  // namespace

TEST_CASE("gas cools towards the room and never past it; a stirred box cools it less than a tube") {
  // hand: box 20 + 180 / (1 + 0.15 / 0.515) = 159.398 degC
  CHECK(in_degC(cooled_well_mixed(cooling(0.15 * W_per_K))) == near(159.398, 1e-5));
  CHECK(cooled_along_tube(cooling(0.0 * W_per_K)) == degC(200));
  CHECK(in_degC(cooled_along_tube(cooling(1e6 * W_per_K))) == near(20.0, 1e-9));
  for (const double ua : {0.01, 0.1, 1.0}) {
    const GasCooling c = cooling(ua * W_per_K);
    CHECK(cooled_along_tube(c) < cooled_well_mixed(c));
    CHECK(cooled_along_tube(c) > degC(20));
  }
}

TEST_CASE("mixing conserves heat when each stream has its own heat capacity") {
  // hand: (0.5*1034*523.15 + 1.5*1007*293.15) / (0.5*1034 + 1.5*1007) = 713271.63 / 2027.5 = 351.79858 K
  const std::vector<Stream> streams = {{0.5 * g_per_s, 1034.0 * J_per_kg_K, degC(250)},
                                       {1.5 * g_per_s, 1007.0 * J_per_kg_K, degC(20)}};
  CHECK(mixing_temperature(streams) == near(kelvin(351.79858), 1e-6));
  const std::vector<Stream> one = {{0.5 * g_per_s, 1034.0 * J_per_kg_K, degC(250)},
                                   {0.0 * g_per_s, 1007.0 * J_per_kg_K, degC(20)}};
  CHECK(mixing_temperature(one) == near(degC(250), 1e-12));
  CHECK_THROWS_AS(mixing_temperature({}), ModelError);
}

TEST_CASE("the bleed ratio holds its temperature in the mixture") {
  for (const double gas : {100.0, 150.0, 300.0, 500.0}) {
    const double ratio = bleed_ratio({.gas = degC(gas), .bleed = degC(15), .hold = degC(65)});
    const std::vector<Stream> streams = {{1.0 * g_per_s, 1010.0 * J_per_kg_K, degC(gas)},
                                         {ratio * g_per_s, 1010.0 * J_per_kg_K, degC(15)}};
    CHECK(mixing_temperature(streams) == near(degC(65), 1e-12));
  }
  CHECK(bleed_ratio({.gas = degC(50), .bleed = degC(15), .hold = degC(65)}) == 0.0);
  CHECK_THROWS_AS(bleed_ratio({.gas = degC(200), .bleed = degC(65), .hold = degC(65)}), ModelError);
}

TEST_CASE("natural draught helps hot gas up and hinders it down") {
  const auto draught = [](Length height) {
    return natural_draught({.height = height, .ambient = 1.2 * kg_per_m3, .gas = 0.6 * kg_per_m3});
  };
  CHECK(draught(0.2 * m) == near(1.176798 * Pa, 1e-9));  // hand: 9.80665 * 0.2 * 0.6
  CHECK(draught(-0.2 * m) == near(-1.176798 * Pa, 1e-9));
}

TEST_CASE("the tube's wall passes on what it takes in") {
  const Temperature gas = degC(250), room = degC(15);
  const WallBalance w = tube_conductance(tube, 0.5 * g_per_s, gas, room);
  CHECK(w.wall < gas);
  CHECK(w.wall > room);
  const HeatTransfer outside =
      free_convection_cylinder(tube.outside, w.wall, room) + radiation_coefficient(tube.emissivity, w.wall, room);
  const Area bare = std::numbers::pi * tube.outside * tube.length;
  const Power lost = outside * bare * (w.wall - room);
  CHECK(w.conductance * (gas - room) == near(lost, 1e-9));
}

TEST_CASE("a small tube and box shave tens of kelvin, not hundreds") {
  // estimate of common practice: 30 to 50 K for a tube and a box of this size; here the order of size is tested
  const WallBalance of_tube = tube_conductance(tube, 0.5 * g_per_s, degC(250), degC(15));
  const WallBalance of_box = box_conductance(box, degC(230), degC(15));
  GasCooling c = cooling(of_tube.conductance);
  c.inlet = degC(250);
  const Temperature at_box = cooled_along_tube(c);
  c.inlet = at_box;
  c.conductance = of_box.conductance;
  const Temperature at_fan = cooled_well_mixed(c);
  CHECK(in_degC(at_fan) < 235.0);
  CHECK(in_degC(at_fan) > 180.0);
}

TEST_CASE("walls take equal temperatures, cold gas, bright metal and a stirred box in their stride") {
  const WallBalance even = tube_conductance(tube, 0.5 * g_per_s, degC(20), degC(20));
  CHECK(even.wall == degC(20));
  CHECK(even.conductance > 0.0 * W_per_K);
  CHECK(tube_conductance(tube, 0.5 * g_per_s, degC(5), degC(20)).wall < degC(20));
  CHECK(tube_conductance(tube, 0.0 * g_per_s, degC(200), degC(20)).conductance > 0.0 * W_per_K);
  BoxWall bright = box, stirred = box;
  bright.emissivity = 0.05;
  stirred.stirring = 4.0;
  const ThermalConductance black = box_conductance(box, degC(150), degC(20)).conductance;
  CHECK(box_conductance(bright, degC(150), degC(20)).conductance < black);
  CHECK(box_conductance(stirred, degC(150), degC(20)).conductance > black);
}

TEST_CASE("impossible walls and streams are refused") {
  CHECK_THROWS_AS(cooled_along_tube(cooling(-1.0 * W_per_K)), ModelError);
  GasCooling none = cooling(1.0 * W_per_K);
  none.flow = 0.0 * g_per_s;
  CHECK_THROWS_WITH_AS(cooled_well_mixed(none), "gas flow 0 kg/s is not above zero", ModelError);
  BoxWall bad = box;
  bad.emissivity = 1.4;
  CHECK_THROWS_AS(box_conductance(bad, degC(150), degC(20)), ModelError);
  TubeWall thin = tube;
  thin.outside = 13.0 * mm;
  CHECK_THROWS_AS(tube_conductance(thin, 0.5 * g_per_s, degC(200), degC(20)), ModelError);
  CHECK_THROWS_AS(tube_conductance(tube, 0.5 * g_per_s, degC(5000), degC(20)), ModelError);
}
