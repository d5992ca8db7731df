#include "draught/fittings.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::draught;

namespace {
double projecting(Length wall, Length projection) {
  return inlet_loss(
      {.kind = Inlet::projecting, .bore = 13.5 * mm, .wall = wall, .projection = projection, .radius = 0.0 * mm});
}
double rounded(Length radius) {
  return inlet_loss(
      {.kind = Inlet::rounded, .bore = 13.5 * mm, .wall = 0.5 * mm, .projection = 0.0 * mm, .radius = radius});
}
}  // namespace

TEST_CASE("the three kinds of inlet are one family: flush, not rounded and not projecting are the same") {
  const double square = inlet_loss(
      {.kind = Inlet::square, .bore = 13.5 * mm, .wall = 0.5 * mm, .projection = 0.0 * mm, .radius = 0.0 * mm});
  CHECK(square == near(0.5, 1e-12));
  CHECK(rounded(0.0 * mm) == near(square, 1e-12));
  CHECK(projecting(0.5 * mm, 0.0 * mm) == near(square, 1e-12));
}

TEST_CASE("a knife edge far out is Borda's mouthpiece, a thick one acts flush") {
  // theory: momentum balance of a re-entrant tube, K = 1
  CHECK(projecting(0.0 * mm, 20.0 * mm) == near(1.0, 1e-12));
  CHECK(projecting(0.7 * mm, 20.0 * mm) == near(0.5, 1e-12));
  CHECK(projecting_inlet({.bore = 10.0 * mm, .wall = 0.0 * mm, .projection = 10.0 * mm}, Handbook::rennels) ==
        near(1.12, 1e-12));
}

TEST_CASE("an inlet loses less the rounder, the thicker and the less projecting it is") {
  double before = 1.0;
  for (double r = 0.0; r <= 2.7; r += 0.05) {
    const double k = rounded(r * mm);
    CAPTURE(r);
    CHECK(k < before);
    before = k;
  }
  CHECK(rounded(5.0 * mm) == near(0.03, 1e-12));  // the handbook's last value, from 0.2 bore on
  before = 2.0;
  for (double wall = 0.0; wall < 0.7; wall += 0.05) {
    const double k = projecting(wall * mm, 10.0 * mm);
    CHECK(k <= before);
    CHECK(projecting(wall * mm, 1.0 * mm) <= k);
    before = k;
  }
}

TEST_CASE("steps that change nothing lose nothing, and a step into the open loses the whole head") {
  CHECK(sudden_expansion({.small = 10.0 * mm, .large = 10.0 * mm}) == 0.0);
  CHECK(sudden_contraction({.small = 10.0 * mm, .large = 10.0 * mm}) == 0.0);
  CHECK(sudden_contraction({.small = 10.0 * mm, .large = 10.0 * mm}, Handbook::rennels) == 0.0);
  CHECK(sudden_expansion({.small = 1.0 * mm, .large = 10.0 * m}) == near(free_exit, 1e-6));
  CHECK(sudden_contraction({.small = 1.0 * mm, .large = 10.0 * m}) == near(square_inlet(), 1e-6));
  CHECK(sudden_contraction({.small = 1.0 * mm, .large = 10.0 * m}, Handbook::rennels) ==
        near(0.57, 3e-3));  // their flush inlet
}

TEST_CASE("a screen of wires against another handbook's chart") {
  // python3-fluids, round_edge_screen(s, Re=1000): Blevins 1984, table 10-10; Idelchik's formula is ours
  const std::pair<double, double> screens[] = {{0.6, 0.92444}, {0.7, 0.54122}, {0.8, 0.29250}, {0.9, 0.12198}};
  for (const auto& [open, k] : screens) CHECK(wire_screen(open) == near(k, 0.18));
  CHECK(wire_screen(1.0) == 0.0);
  CHECK(wire_screen(0.8) < perforated_plate(0.8));  // sharp holes lose more than round wires
  CHECK_THROWS_AS(wire_screen(0.0), ModelError);
  CHECK_THROWS_AS(wire_screen(1.1), ModelError);
}

TEST_CASE("plates lose more the less they are open, and an open one nothing") {
  CHECK(perforated_plate(1.0) == 0.0);
  // square-edge screens, Blevins, Applied Fluid Dynamics Handbook (1984): an independent table, 10 % to 15 % from plates
  const double screens[][2] = {{0.3, 17.0}, {0.4, 7.7}, {0.5, 3.8}, {0.6, 2.0}, {0.7, 1.1}};
  for (const auto& [open, k] : screens) CHECK(perforated_plate(open) == near(k, 0.15));
  double before = 1e9;
  for (double s = 0.3; s <= 0.95; s += 0.01) {
    CHECK(perforated_plate(s) < before);
    before = perforated_plate(s);
  }
}

TEST_CASE("a blast pipe under the tube and a shallow box follow the curtain's area") {
  // hand: (D/4h)^2, h/D 0.25 -> 1, 0.5 -> 0.25, 1 -> 0.0625
  const double gaps[][2] = {{0.25, 1.0}, {0.5, 0.25}, {1.0, 0.0625}};
  for (const auto& [ratio, k] : gaps) {
    CHECK(blast_pipe_obstruction({.tube_bore = 14.0 * mm, .gap = ratio * 14.0 * mm}) == near(k, 1e-12));
    CHECK(box_shadow({.fan_opening = 38.0 * mm, .distance = ratio * 38.0 * mm}) == near(k, 1e-12));
  }
}

TEST_CASE("geometry that cannot be cut is refused") {
  CHECK_THROWS_WITH_AS(sudden_expansion({.small = 20.0 * mm, .large = 10.0 * mm}),
                       "wide bore minus narrow bore -0.01 m is not zero or more", ModelError);
  CHECK_THROWS_WITH_AS(square_inlet(Handbook::harris), "no equation of Harris is kept for a square inlet", ModelError);
  CHECK_THROWS_AS(blast_pipe_obstruction({.tube_bore = 14.0 * mm, .gap = 0.0 * mm}), ModelError);
  CHECK_THROWS_AS(perforated_plate(0.0), ModelError);
  CHECK_THROWS_AS(perforated_plate(1.1), ModelError);
  CHECK_THROWS_AS(rounded_inlet({.bore = 0.0 * mm, .radius = 1.0 * mm}), ModelError);
}
