#include "draught/fittings.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>
#include <numbers>

using namespace lumwright;

namespace {
constexpr double right_angle = std::numbers::pi / 2.0;
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

TEST_CASE("a cone of a straight angle is a sudden step") {
  const double pi = std::numbers::pi;
  const Step step{.small = 10.0 * mm, .large = 40.0 * mm};
  CHECK(conical_contraction({.small = 10.0 * mm, .large = 40.0 * mm, .angle = pi, .friction = 0.0}) ==
        near(sudden_contraction(step, Handbook::rennels), 1e-9));
  CHECK(conical_expansion({.small = 10.0 * mm, .large = 40.0 * mm, .angle = pi, .friction = 0.0}) ==
        near(sudden_expansion(step), 0.02));
  CHECK(conical_expansion({.small = 10.0 * mm, .large = 15.0 * mm, .angle = pi, .friction = 0.0}) ==
        near(sudden_expansion({.small = 10.0 * mm, .large = 15.0 * mm}), 0.02));
}

TEST_CASE("a slim diffuser loses far less than a step, and its pieces meet") {
  const auto diffuser = [](double degrees, Length large) {
    return conical_expansion(
        {.small = 10.0 * mm, .large = large, .angle = degrees * std::numbers::pi / 180.0, .friction = 0.02});
  };
  CHECK(diffuser(10.0, 30.0 * mm) < 0.25 * sudden_expansion({.small = 10.0 * mm, .large = 30.0 * mm}));
  for (const Length& large : {15.0 * mm, 30.0 * mm})
    CHECK(diffuser(20.0, large) == near(diffuser(20.0001, large), 0.03));
  CHECK(diffuser(60.0, 15.0 * mm) == near(diffuser(60.0001, 15.0 * mm), 0.06));
}

TEST_CASE("a bend that does not turn loses nothing; more turn and less radius lose more") {
  CHECK(mitre_bend({.bore = 13.5 * mm, .angle = 0.0, .reynolds = 1e5}) == 0.0);
  const auto smooth = [](double angle, Length radius) {
    return smooth_bend({.bore = 13.5 * mm, .radius = radius, .angle = angle, .friction = 0.018});
  };
  CHECK(smooth(right_angle, 13.5 * mm) == near(0.313, 2e-3));  // Rennels and Hudson 2012 via fluids 1.0.22
  CHECK(smooth(right_angle, 27.0 * mm) == near(0.204, 2e-3));  // the same
  CHECK(smooth(right_angle, 13.5 * mm) > smooth(right_angle, 27.0 * mm));
  CHECK(smooth(right_angle, 20.0 * mm) > smooth(0.5 * right_angle, 20.0 * mm));
  CHECK(mitre_bend({.bore = 13.5 * mm, .angle = right_angle, .reynolds = 1e5}) > smooth(right_angle, 13.5 * mm));
}

TEST_CASE("handbooks agree on a sharp corner within a tenth, and it loses more in slow flow") {
  const auto mitre = [](double re, Handbook h) {
    return mitre_bend({.bore = 13.5 * mm, .angle = right_angle, .reynolds = re}, h);
  };
  CHECK(mitre(1e5, Handbook::rennels) == near(mitre(1e5, Handbook::miller), 0.1));
  CHECK(mitre(1e6, Handbook::miller) < mitre(1e5, Handbook::miller));
  CHECK(mitre(1e4, Handbook::miller) > 1.1 * mitre(1e5, Handbook::miller));
}

TEST_CASE("plates and screens lose more the less they are open, and an open one nothing") {
  CHECK(perforated_plate(1.0) == 0.0);
  CHECK(square_edge_screen(1.0) == 0.0);
  // the plate's equation against the independent table of screens, 10 % to 15 %
  for (const double s : {0.3, 0.4, 0.5, 0.6, 0.7}) {
    CAPTURE(s);
    CHECK(perforated_plate(s) == near(square_edge_screen(s), 0.15));
  }
  double plate = 1e9, screen = 1e9, wire = 1e9;
  for (double s = 0.3; s <= 0.95; s += 0.01) {
    CHECK(perforated_plate(s) < plate);
    CHECK(square_edge_screen(s) < screen);
    CHECK(round_edge_screen(s, 100.0) < wire);
    plate = perforated_plate(s);
    screen = square_edge_screen(s);
    wire = round_edge_screen(s, 100.0);
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
  CHECK_THROWS_AS(
      smooth_bend({.bore = 10.0 * mm, .radius = 15.0 * mm, .angle = right_angle, .friction = 0.02}, Handbook::miller),
      ModelError);
  CHECK_THROWS_AS(blast_pipe_obstruction({.tube_bore = 14.0 * mm, .gap = 0.0 * mm}), ModelError);
  CHECK_THROWS_AS(perforated_plate(0.0), ModelError);
  CHECK_THROWS_AS(perforated_plate(1.1), ModelError);
  CHECK_THROWS_AS(square_edge_screen(0.1), ModelError);
  CHECK_THROWS_AS(round_edge_screen(0.5, 10.0), ModelError);
  CHECK_THROWS_AS(orifice_loss(0.0), ModelError);
  CHECK_THROWS_AS(rounded_inlet({.bore = 0.0 * mm, .radius = 1.0 * mm}), ModelError);
  CHECK_THROWS_AS(mitre_bend({.bore = 10.0 * mm, .angle = 4.0, .reynolds = 1e5}), ModelError);
  CHECK_THROWS_AS(conical_contraction({.small = 10.0 * mm, .large = 20.0 * mm, .angle = 0.0, .friction = 0.02}),
                  ModelError);
}
