// What hot gas does by its own weight: the heights it rises through, and a box that stands above the room's pressure.
#include "draught/duty.hpp"
#include "draught/gas_path.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::draught;

namespace {
const Ambient room_20{.temperature = degC(20), .pressure = atmosphere};
FixedTemperatures hot_all(double celsius) {
  const Temperature t = degC(celsius);
  return FixedTemperatures({.bed_mean = t, .firebox = t, .tube_mean = t, .tube_exit = t, .fuel_per_air = 0.0});
}
GasPath tall(Length rise) {
  GasPath path;
  path.tubes = FireTubes{.count = 8,
                         .each = {.bore = 8.0 * mm, .length = 120.0 * mm, .roughness = 0.0 * mm},
                         .firebox = 16.0 * circle(8.0 * mm),
                         .rise = 0.0 * mm};
  path.adapter = Adapter{
      .tube = {.bore = 13.5 * mm, .length = 38.0 * mm, .roughness = 0.0 * mm},
      .inlet = {.kind = Inlet::square, .bore = 13.5 * mm, .wall = 0.0 * mm, .projection = 0.0 * mm, .radius = 0.0 * mm},
      .fittings = 0.0,
      .rise = rise,
      .wall = std::nullopt};
  path.box = Box{.bore = 60.0 * mm,
                 .depth = {40.0 * mm, 40.0 * mm},
                 .rise = 0.0 * mm,
                 .wall = BoxWall{.height = 40.0 * mm, .area = 130.0 * cm2, .emissivity = 0.3, .stirring = 2.0}};
  return path;
}
}  // namespace

TEST_CASE("firebox and smokebox draw by their heights") {
  // hand: 0.05 + 0.04 m at 200 degC in 20 degC air: 9.80665 * 0.09 * (1.20412 - 0.74604) = 0.40430 Pa
  GasPath path = tall(0.0 * mm);
  const GasNetwork flat(path, room_20);
  path.tubes->above_bed = 50.0 * mm;
  path.smokebox_rise = 40.0 * mm;
  const GasNetwork high(path, room_20);
  const PathFlow without = flat.follow(0.1 * g_per_s, hot_all(200)), with = high.follow(0.1 * g_per_s, hot_all(200));
  CHECK(without.natural_draught == 0.0 * Pa);
  CHECK(with.natural_draught == near(0.40430 * Pa, 1e-4));
  CHECK(in(without.fan_suction - with.fan_suction, Pa) == near(0.40430, 1e-4));
}
TEST_CASE("a tube that stands in the chimney for all its length loses nothing to the room") {
  GasPath path = tall(0.0 * mm);
  path.adapter->wall = TubeWall{13.5 * mm, 14.4 * mm, 0.0 * mm, 0.3};
  const PathFlow inside = GasNetwork(path, room_20).follow(0.3 * g_per_s, hot_all(200));
  CHECK(inside.adapter_exit_gas == inside.smokebox_gas);
  path.adapter->wall->length = 11.0 * mm;
  const PathFlow free = GasNetwork(path, room_20).follow(0.3 * g_per_s, hot_all(200));
  CHECK(free.adapter_exit_gas < inside.adapter_exit_gas);
}
TEST_CASE("where gas blows out of the bleed holes the box cools all that passes it") {
  GasPath path = tall(1.0 * m);  // draws 4.5 Pa by itself: more than 0.2 g/s asks for
  const PathFlow shut = GasNetwork(path, room_20).follow(0.2 * g_per_s, hot_all(200));
  REQUIRE(shut.box_suction < 0.0 * Pa);
  // holes that take nearly all of it: the little that is left for the fan is as warm as the rest, not as the room
  for (const double area : {1.0, 10.0, 50.0}) {
    CAPTURE(area);
    path.bleed = Hole{.area = area * mm2, .discharge = 0.61};
    const PathFlow open = GasNetwork(path, room_20).follow(0.2 * g_per_s, hot_all(200));
    CHECK(open.bleed < 0.0 * kg_per_s);
    CHECK(open.fan < shut.fan);
    CHECK(open.fan_gas == near(shut.fan_gas, 1e-12));
  }
}
TEST_CASE("with the fan off the draught of the heat is used up by the losses") {
  GasPath path = tall(0.3 * m);
  const GasNetwork network(path, room_20);
  const auto off = without_fan(network, hot_all(200), 2.0 * g_per_s);
  REQUIRE(off);
  Pressure lost = 0.0 * Pa;
  for (const ElementLoss& loss : losses(path, *off)) lost += loss.loss;
  CHECK(off->bed > 0.05 * g_per_s);
  CHECK(off->bed < 2.0 * g_per_s);
  CHECK(in(lost, Pa) == near(in(off->natural_draught, Pa), 1e-6));
  CHECK_FALSE(without_fan(network, unlit(room_20), 2.0 * g_per_s));  // cold gas does not rise
  path.adapter->rise = -0.3 * m;
  CHECK_FALSE(without_fan(GasNetwork(path, room_20), hot_all(200), 2.0 * g_per_s));
  CHECK_THROWS_AS(without_fan(network, hot_all(200), 0.0 * g_per_s), ModelError);
}
