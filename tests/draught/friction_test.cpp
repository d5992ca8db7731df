#include "draught/other_friction.hpp"
#include "data/losses.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>
#include <numbers>

using namespace lumwright;
using namespace lumwright::draught;

namespace {
constexpr Density air = 1.204 * kg_per_m3;
constexpr Viscosity thin = 1.813e-5 * Pa_s;
constexpr Tube short_tube = {.bore = 13.5 * mm, .length = 38.0 * mm, .roughness = 0.0015 * mm};
}  // namespace

TEST_CASE("a short laminar tube loses what Shah's equation says") {
  for (const double re : {1.0, 50.0, 300.0, 1000.0}) {
    CAPTURE(re);
    CHECK(friction_short_tube(re, 38.0 / 13.5, 1e-4) == near(friction_developing(re, 38.0 / 13.5), 1e-5));
  }
}

TEST_CASE("a very long tube is laminar, or turbulent as Colebrook's equation says") {
  for (const double re : {1e-3, 10.0, 300.0, 1000.0}) CHECK(friction_long_tube(re, 1e-3) == near(64.0 / re, 1e-3));
  for (const double re : {1e4, 1e5, 1e6}) CHECK(friction_long_tube(re, 1e-3) == near(friction_colebrook(re, 1e-3), 0.03));
}

TEST_CASE("a long laminar tube adds the entrance's 1.25 velocity heads and no more") {
  // identity: Shah's equation for x+ -> infinity is 64/Re L/D + 1.25 (Hagenbach factor, Shah and London 1978)
  const double re = 100.0, lengths = 2000.0;
  CHECK(friction_developing(re, lengths) * lengths == near(64.0 / re * lengths + 1.25, 1e-5));
}

TEST_CASE("Poiseuille's law comes out of a long thin tube") {
  // hand: 128 mu L m / (pi rho D^4), 1 mm bore, 1 m long, 1 mg/s: 128 * 1.813e-5 * 1e-6 / (pi * 1.204e-12) = 613.53 Pa
  const Tube tube{.bore = 1.0 * mm, .length = 1.0 * m, .roughness = 0.0 * mm};
  CHECK(tube_friction(1.0 * mg_per_s, tube, air, thin) == near(613.53 * Pa, 2e-3));
}

TEST_CASE("rough turbulent flow is the limit of both equations") {
  // Nikuradse: 1/sqrt f = -2 log10(e/3.7); e = 0.01 gives 0.03791
  CHECK(friction_colebrook(1e8, 0.01) == near(0.03791, 1e-3));
  CHECK(friction_long_tube(1e8, 0.01) == near(0.03791, 1e-2));
}

TEST_CASE("smooth turbulent flow agrees with Blasius") {
  // Blasius 1913: 0.3164 Re^-0.25; smooth-pipe laws lie within 3 % of it from 1e4 to 1e5
  for (const double re : {1e4, 3e4, 1e5}) {
    CAPTURE(re);
    const double blasius = 0.3164 / std::pow(re, 0.25);
    CHECK(friction_colebrook(re, 0.0) == near(blasius, 0.03));
    CHECK(friction_long_tube(re, 0.0) == near(blasius, 0.03));
  }
}

TEST_CASE("the loss of a tube rises with every little more flow, whatever its length and roughness") {
  for (const double lengths : {0.5, 1.0, 2.8, 5.0, 20.0, 100.0, 3000.0})
    for (const double roughness : {0.0, 1e-4, 1e-3, 0.02, 0.1}) {
      CAPTURE(lengths);
      CAPTURE(roughness);
      double before = 0, falls = 0;
      for (double re = 1e-6; re < 1e7; re *= 1.003) {
        const double drop = friction_short_tube(re, lengths, roughness) * re * re;
        if (!(drop > before)) ++falls;
        before = drop;
      }
      CHECK(falls == 0);
    }
}

TEST_CASE("the factor has no step between laminar and turbulent") {
  double before = friction_short_tube(1000.0, 2.8, 1e-4);
  for (double re = 1001.0; re < 6000.0; re += 1.0) {
    const double f = friction_short_tube(re, 2.8, 1e-4);
    REQUIRE(std::abs(f / before - 1.0) < 5e-3);
    before = f;
  }
}

TEST_CASE("no flow loses nothing, and next to none next to nothing") {
  CHECK(tube_friction(0.0 * g_per_s, short_tube, air, thin) == 0.0 * Pa);
  const Pressure creeping = tube_friction(1e-30 * g_per_s, short_tube, air, thin);
  CHECK(is_finite(creeping));
  CHECK(creeping > 0.0 * Pa);
  CHECK(is_finite(tube_friction(1e-250 * g_per_s, short_tube, air, thin)));
}

TEST_CASE("a narrower or longer tube loses more") {
  const MassFlow flow = 0.5 * g_per_s;
  Pressure before = 1e9 * Pa;
  for (double bore = 5.0; bore < 40.0; bore += 0.5) {
    const Pressure drop =
        tube_friction(flow, {.bore = bore * mm, .length = 38.0 * mm, .roughness = 0.0015 * mm}, air, thin);
    CHECK(drop < before);
    before = drop;
  }
  Tube longer = short_tube;
  longer.length = 60.0 * mm;
  CHECK(tube_friction(flow, longer, air, thin) > tube_friction(flow, short_tube, air, thin));
}

TEST_CASE("heads and Reynolds number are their definitions") {
  // hand: 0.5 g/s of 1.2 kg/m3 through 1 cm2: 0.5e-3 / 1.2 / 1e-4 = 4.16667 m/s, 0.5 * 1.2 * 4.16667^2 = 10.4167 Pa
  CHECK(mean_velocity(0.5 * g_per_s, 1.0 * cm2, 1.2 * kg_per_m3) == near(4.1666667 * m_per_s, 1e-7));
  CHECK(velocity_head(0.5 * g_per_s, 1.0 * cm2, 1.2 * kg_per_m3) == near(10.416667 * Pa, 1e-7));
  CHECK(loss(2.0, 0.5 * g_per_s, 1.0 * cm2, 1.2 * kg_per_m3) == near(20.833333 * Pa, 1e-7));
}

TEST_CASE("impossible flows and tubes are refused with the quantity and its value") {
  CHECK_THROWS_WITH_AS(friction_short_tube(0.0, 3.0, 0.0), "Reynolds number 0 is not above zero", ModelError);
  CHECK_THROWS_WITH_AS(friction_long_tube(1000.0, 0.2), "relative roughness 0.2 is not between 0 and 0.1", ModelError);
  CHECK_THROWS_WITH_AS(reynolds_tube(1.0 * g_per_s, -1.0 * mm, thin), "tube bore -0.001 m is not above zero",
                       ModelError);
  CHECK_THROWS_AS(tube_friction(-1.0 * g_per_s, short_tube, air, thin), ModelError);
  CHECK_THROWS_AS(tube_friction(std::nan("") * g_per_s, short_tube, air, thin), ModelError);
  CHECK_THROWS_AS(tube_friction(1.0 * g_per_s, short_tube, 0.0 * kg_per_m3, thin), ModelError);
  CHECK_THROWS_AS(tube_friction(1.0 * g_per_s, short_tube, air, 0.0 * Pa_s), ModelError);
  CHECK_THROWS_AS(
      tube_friction(1.0 * g_per_s, {.bore = 5.0 * mm, .length = 0.0 * mm, .roughness = 0.0 * mm}, air, thin),
      ModelError);
  CHECK_THROWS_AS(loss(-1.0, 1.0 * g_per_s, 1.0 * cm2, air), ModelError);
}

TEST_CASE("walls have a roughness, with its source") {
  // Moody 1944: drawn tubing 0.0015 mm, commercial steel 0.045 mm
  CHECK(data::roughness("drawn brass").value.value == near(0.0015 * mm, 1e-12));
  CHECK(data::roughness("steel").value.value == near(0.045 * mm, 1e-12));
  CHECK(data::roughness("sooted").value.low < data::roughness("sooted").value.high);
  CHECK_THROWS_AS(data::roughness("cheese"), ModelError);
  for (const data::Roughness& row : data::roughnesses()) CHECK(!row.basis.source.empty());
}
