#include "draught/other_bed_laws.hpp"
#include "matter/air.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::draught;

namespace {
constexpr Bed charcoal = {
    .particle = 8.0 * mm, .sphericity = 0.7, .voidage = 0.47, .depth = 30.0 * mm, .grate = 24.0 * cm2};
Pressure drop_at(double celsius, MassFlow flow) {
  return bed_drop(charcoal, flow, air_density(degC(celsius), atmosphere), air_viscosity(degC(celsius)));
}
MassFlow flow_at(double celsius, Pressure drop) {
  return flow_that_makes(charcoal, drop, air_density(degC(celsius), atmosphere), air_viscosity(degC(celsius)));
}
BedFlow sample(double voidage) {
  return {.particle = 6.0 * mm,
          .sphericity = 1.0,
          .voidage = voidage,
          .depth = 30.0 * mm,
          .superficial = 0.5 * m_per_s,
          .density = 0.35 * kg_per_m3,
          .viscosity = 4.2e-5 * Pa_s};
}
}  // namespace

TEST_CASE("a hotter bed resists the same mass flow more, at every step of temperature") {
  Pressure before = 0.0 * Pa;
  for (double t = 20.0; t <= 1400.0; t += 20.0) {
    const Pressure drop = drop_at(t, 0.5 * g_per_s);
    CAPTURE(t);
    CHECK(drop > before);
    before = drop;
  }
}

TEST_CASE("at one suction the lit bed passes less than the cold one") {
  CHECK(flow_at(800.0, 25.0 * Pa) < 0.5 * flow_at(20.0, 25.0 * Pa));
}

TEST_CASE("the flow that makes a drop makes that drop, from creeping to roaring") {
  // hand: the root of viscous x + inertial x^2 = drop, from the drops at two flows
  const MassFlow one = 1.0 * g_per_s;
  const double a = in(drop_at(500.0, one), Pa), b = in(drop_at(500.0, 2.0 * one), Pa);
  const double inertial = 0.5 * b - a, viscous = a - inertial;
  for (const double drop : {1e-9, 1e-3, 1.0, 25.0, 400.0, 1e5}) {
    CAPTURE(drop);
    const double x = 2.0 * drop / (viscous + std::sqrt(viscous * viscous + 4.0 * inertial * drop));
    CHECK(flow_at(500.0, drop * Pa) == near(x * one, 1e-9));
  }
  CHECK(drop_at(500.0, 0.0 * g_per_s) == 0.0 * Pa);
}

TEST_CASE("slow flow is Blake and Kozeny's, fast flow Burke and Plummer's") {
  // Bird, Stewart and Lightfoot, Transport Phenomena, sec. 6.4: 150 mu v (1-e)^2 L / (d^2 e^3); 1.75 rho v^2 (1-e) L /
  // (d e^3)
  BedFlow slow = sample(0.45);
  slow.superficial =
      1e-7 * m_per_s;  // hand: 150 * 4.2e-5 * 1e-7 * 0.3025 * 0.03 / (3.6e-5 * 0.091125) = 1.742798e-6 Pa
  CHECK(ergun(slow) == near(1.742798e-6 * Pa, 1e-5));
  BedFlow fast = sample(0.45);
  fast.superficial = 1000.0 * m_per_s;  // hand: 1.75 * 0.35 * 1e6 * 0.55 * 0.03 / (6e-3 * 0.091125) = 1.848422e7 Pa
  CHECK(ergun(fast) == near(1.848422e7 * Pa, 2e-3));
}

TEST_CASE("five laws agree on our beds within a quarter") {
  for (const double v : {0.05, 0.2, 0.5, 1.0, 2.0}) {
    CAPTURE(v);
    BedFlow bed = sample(0.45);
    bed.superficial = v * m_per_s;
    for (const auto law : {carman, erdim, kta, brauer}) CHECK(law(bed) == near(ergun(bed), 0.25));
  }
}

TEST_CASE("voidage weighs most: 0.05 either way moves the drop by a third down or two thirds up") {
  const Pressure middle = ergun(sample(0.45));
  CHECK(ergun(sample(0.50)) == near(0.62 * middle, 0.02));
  CHECK(ergun(sample(0.40)) == near(1.65 * middle, 0.02));
}

TEST_CASE("a loose piece hangs where its weight is its drag") {
  // Stokes: (rho_p - rho) g d^2 / (18 mu), 10 um, 2000 kg/m3 in air at 20 degC: 6.0066 mm/s; Re 0.004
  CHECK(terminal_velocity({.diameter = 10.0 * um, .density = 2000.0 * kg_per_m3}, 1.204 * kg_per_m3, 1.813e-5 * Pa_s) ==
        near(6.006e-3 * m_per_s, 3e-3));
  Velocity before = 0.0 * m_per_s;
  for (double d = 0.05; d < 20.0; d *= 1.3) {
    const Velocity v =
        terminal_velocity({.diameter = d * mm, .density = 400.0 * kg_per_m3}, 0.33 * kg_per_m3, 4.33e-5 * Pa_s);
    CHECK(v > before);
    before = v;
  }
  CHECK_THROWS_AS(terminal_velocity({.diameter = 1.0 * mm, .density = 1.0 * kg_per_m3}, 1.2 * kg_per_m3, 1.8e-5 * Pa_s),
                  ModelError);
  CHECK_THROWS_AS(
      terminal_velocity({.diameter = 1.0 * m, .density = 8000.0 * kg_per_m3}, 1.2 * kg_per_m3, 1.8e-5 * Pa_s),
      ModelError);
}

TEST_CASE("impossible beds are refused with the quantity and its value") {
  CHECK_THROWS_WITH_AS(ergun(sample(1.2)), "solid share of the bed -0.2 is not above zero", ModelError);
  CHECK_THROWS_WITH_AS(ergun(sample(0.0)), "bed voidage 0 is not above zero", ModelError);
  BedFlow bed = sample(0.45);
  bed.sphericity = 1.5;
  CHECK_THROWS_WITH_AS(ergun(bed), "sphericity 1.5 is not between 0 and 1", ModelError);
  bed = sample(0.45);
  bed.superficial = -1.0 * m_per_s;
  CHECK_THROWS_AS(ergun(bed), ModelError);
  bed = sample(0.45);
  bed.particle = 0.0 * mm;
  CHECK_THROWS_AS(ergun(bed), ModelError);
  Bed no_grate = charcoal;
  no_grate.grate = 0.0 * cm2;
  CHECK_THROWS_AS(bed_drop(no_grate, 1.0 * g_per_s, 1.2 * kg_per_m3, 1.8e-5 * Pa_s), ModelError);
}
