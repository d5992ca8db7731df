#include "draught/orifice.hpp"
#include "draught/friction.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>
#include <numbers>

using namespace lumwright;
using namespace lumwright::draught;

TEST_CASE("flow, drop and diameter of a hole are one equation") {
  const Area hole = circle(10.0 * mm);
  const Density air = 1.2 * kg_per_m3;
  const MassFlow flow = orifice_flow(0.61, hole, air, 40.0 * Pa);
  CHECK(orifice_drop(0.61, hole, air, flow) == near(40.0 * Pa, 1e-12));
  CHECK(orifice_diameter(0.61, air, 40.0 * Pa, flow) == near(10.0 * mm, 1e-12));
  CHECK(loss(1.0 / (0.61 * 0.61), flow, hole, air) == near(40.0 * Pa, 1e-12));  // as a loss factor
  CHECK(orifice_flow(0.61, hole, air, 160.0 * Pa) == near(2.0 * flow, 1e-12));
}

TEST_CASE("a shut hole or no drop passes nothing") {
  CHECK(orifice_flow(0.61, 0.0 * mm2, 1.2 * kg_per_m3, 40.0 * Pa) == 0.0 * g_per_s);
  CHECK(orifice_flow(0.61, circle(5.0 * mm), 1.2 * kg_per_m3, 0.0 * Pa) == 0.0 * g_per_s);
}

TEST_CASE("discharge coefficients come from the table, the sharp hole's about the free jet's") {
  // Kirchhoff: pi / (pi + 2)
  const double jet = std::numbers::pi / (std::numbers::pi + 2.0);
  const Band<double> sharp = discharge_coefficient("sharp hole");
  CHECK(sharp.value == near(jet, 5e-3));
  CHECK(sharp.low < jet);
  CHECK(sharp.high > jet);
  for (const char* kind : {"thick hole", "rounded hole", "door", "thin ring", "test plate"})
    CHECK(discharge_coefficient(kind).value <= 1.0);
  CHECK_THROWS_WITH_AS(discharge_coefficient("keyhole"), "no discharge coefficient is known for 'keyhole'", ModelError);
}

TEST_CASE("impossible holes are refused") {
  CHECK_THROWS_WITH_AS(orifice_flow(0.61, circle(5.0 * mm), 1.2 * kg_per_m3, -3.0 * Pa),
                       "pressure drop over a hole -3 Pa is not zero or more", ModelError);
  CHECK_THROWS_AS(orifice_flow(1.2, circle(5.0 * mm), 1.2 * kg_per_m3, 3.0 * Pa), ModelError);
  CHECK_THROWS_AS(orifice_flow(0.6, circle(5.0 * mm), 0.0 * kg_per_m3, 3.0 * Pa), ModelError);
  CHECK_THROWS_AS(orifice_drop(0.6, 0.0 * mm2, 1.2 * kg_per_m3, 1.0 * g_per_s), ModelError);
  CHECK_THROWS_AS(orifice_diameter(0.6, 1.2 * kg_per_m3, 0.0 * Pa, 1.0 * g_per_s), ModelError);
}
