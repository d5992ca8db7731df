#include "workshop/detail/tube_heating.hpp"
#include "matter/air.hpp"
#include "matter/metal.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include "workshop/fit.hpp"
#include <cmath>
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::workshop;

namespace {
// A brass tube of 17.46 mm in a cast-iron chimney of 17.60 mm; gas of 230 degC, air of 12 degC.
TubeInChimney usual() {
  return {.tube = {0.45 * mm, 8530.0 * kg_per_m3, 380.0 * J_per_kg_K, 120.0 * W_per_m_K},
          .chimney = {1.8 * mm, 7200.0 * kg_per_m3, 500.0 * J_per_kg_K, 50.0 * W_per_m_K},
          .outside = 17.46 * mm,
          .gap = 0.07 * mm,
          .engaged = 33.0 * mm,
          .free = 11.0 * mm,
          .gas_side = 30.0 * W_per_m2_K,
          .gap_factor = 1.0,
          .air_side = 12.0 * W_per_m2_K,
          .gas = degC(230),
          .air = degC(12)};
}
double kelvins(Temperature t) { return in(above_absolute_zero(t), K); }
FitInput fit_of(Length outside, Length bore) {
  return {.bore = exactly(bore),
          .bore_measured_within = 0.0 * mm,
          .chimney_wall = 1.8 * mm,
          .seam_ridge = 0.0 * mm,
          .depth = 37.0 * mm,
          .chimney_metal = metal("cast iron"),
          .outside = exactly(outside),
          .outside_measured_within = 0.0 * mm,
          .tube_wall = 0.45 * mm,
          .engaged = 33.0 * mm,
          .tube_metal = metal("brass"),
          .tube_hot = degC(230),
          .chimney_cold = degC(12),
          .chimney_hot = degC(230),
          .soot = 0.05 * mm,
          .running_clearance = 0.03 * mm,
          .heat = FitHeat{.gas_side = 30.0 * W_per_m2_K,
                          .gap_factor = 1.0,
                          .air_side = 12.0 * W_per_m2_K,
                          .chimney_wall = 1.8 * mm,
                          .free = 11.0 * mm}};
}
}  // namespace

TEST_CASE("far from its ends the tube settles where gas, gap and air balance") {
  TubeInChimney w = usual();
  w.free = 0.0 * mm;  // no end leads heat in: every place alike
  const HeatingCourse course = heat_tube(w, 5.0 * minute);
  // three resistances in a row, each over the tube's outside (hand)
  const double d = 17.46e-3, h_gas = 30.0 * (d - 0.9e-3) / d, gap = 0.07e-3;
  const double h_gap = in(air_conductivity(degC(121)), W_per_m_K) / gap;
  const double h_out = 12.0 * (d + 2.0 * gap + 3.6e-3) / d;
  const double flow = 218.0 / (1.0 / h_gas + 1.0 / h_gap + 1.0 / h_out);
  for (const WallPair& at : course.settled.places) {
    CHECK(kelvins(at.tube) == near(kelvins(degC(230)) - flow / h_gas, 1e-6));
    CHECK(kelvins(at.chimney) == near(kelvins(degC(12)) + flow / h_out, 1e-6));
  }
}
TEST_CASE("a tube and chimney that are as one warm along an exponential") {
  TubeInChimney w = usual();
  w.free = 0.0 * mm;
  w.gap = 0.0 * mm;
  w.gap_factor = 1000.0;
  const double d = 17.46e-3, r = 10e-6, shell = 1.8e-3, bore = d + 2.0 * r;
  const double h_gas = 30.0 * (d - 0.9e-3) / d, h_out = 12.0 * (bore + 2.0 * shell) / d;
  const double holds = 8530.0 * 380.0 * 0.45e-3 + 7200.0 * 500.0 * shell * (bore + shell) / d;
  const double rise = 218.0 * h_gas / (h_gas + h_out);
  for (const HeatingMoment& moment : heat_tube(w, 5.0 * minute).moments) {
    const double wanted = rise * (1.0 - std::exp(-in(moment.time, s) * (h_gas + h_out) / holds));
    const double found = kelvins(moment.places[7].chimney) - kelvins(degC(12));
    CHECK(std::abs(found - wanted) < 0.02 * rise);
  }
}
TEST_CASE("heat led down from the free part fades as along a fin") {
  TubeInChimney w = usual();
  w.engaged = 60.0 * mm;
  w.free = 200.0 * mm;
  w.chimney.thickness = 1.0 * m;  // holds so much that it stays cold
  w.outside = 2.0 * m;            // flat: gas, gap and air on one area
  w.gap = 0.07 * mm;
  const HeatingCourse course = heat_tube(w, 2.0 * minute);
  // Two fins that meet (any text on conduction): theta falls by exp(-x / L), L = root(k w / sum of h); what one gives
  // at the joint the other takes.
  const double kw = 120.0 * 0.45e-3, h_gas = 30.0, h_gap = in(air_conductivity(degC(121)), W_per_m_K) / 0.07e-3;
  const double deep = 12.0 + 218.0 * h_gas / (h_gas + h_gap), high = 12.0 + 218.0 * 30.0 / 42.0;
  const double l_in = std::sqrt(kw / (h_gas + h_gap)), l_out = std::sqrt(kw / 42.0);
  const double mouth = (deep / l_in + high / l_out) / (1.0 / l_in + 1.0 / l_out);
  const HeatingMoment& late = course.moments.back();
  for (const std::size_t i : {29u, 27u, 24u, 20u}) {
    const double x = (29.5 - static_cast<double>(i)) * 2e-3;  // from the mouth
    CHECK(std::abs(in_degC(late.places[i].tube) - deep - (mouth - deep) * std::exp(-x / l_in)) < 3.0);
  }
}
// The worked figures: gas side 20 to 40 W/m2K, gap 170 to 600 W/m2K; the wall stands 10 to 30 K over the chimney, up to
// 80 K at the mouth; a 17 mm fit closes by 0.01 to 0.03 mm (derived).
TEST_CASE("a thin tube stays near the chimney's temperature, not the gas's") {
  for (const double gas_side : {20.0, 30.0, 40.0}) {
    TubeInChimney w = usual();
    w.gas_side = gas_side * W_per_m2_K;
    for (const HeatingMoment& moment : heat_tube(w, 5.0 * minute).moments) {
      if (moment.time < 20.0 * s) continue;
      const WallPair &low = moment.places.front(), &mouth = moment.places.back();
      CHECK(in(low.tube - low.chimney, K) > 3.0);
      CHECK(in(low.tube - low.chimney, K) < 30.0);
      CHECK(in(mouth.tube - mouth.chimney, K) < 80.0);
      CHECK(mouth.tube > low.tube);
    }
  }
}
TEST_CASE("a tube of 17.46 mm in a cold chimney of 17.60 mm keeps sliding") {
  const Fit found = fit(fit_of(17.46 * mm, 17.60 * mm));
  CHECK(found.lighting_up.clearance.value > 0.01 * mm);
  CHECK(found.lighting_up.clearance.value < 0.03 * mm);
  CHECK(found.both_hot.clearance.value > 0.01 * mm);
  CHECK(found.needed > 0.14 * mm);
  CHECK(found.needed < 0.16 * mm);
  REQUIRE(found.put_back);
  CHECK(found.put_back->chimney > found.lighting_up.chimney);  // it is the chimney that was hot
  CHECK(found.put_back->clearance.value >= found.both_hot.clearance.value - 0.002 * mm);
  FitInput as_gas = fit_of(17.46 * mm, 17.60 * mm);
  as_gas.heat.reset();  // what a tube as hot as the gas would do
  CHECK(fit(as_gas).lighting_up.clearance.value < -0.03 * mm);
}
TEST_CASE("what heats the tube more, or cools it less, leaves it less room") {
  const auto room = [](double gas_side, double gap_factor) {
    FitInput w = fit_of(17.46 * mm, 17.60 * mm);
    w.heat->gas_side = gas_side * W_per_m2_K;
    w.heat->gap_factor = gap_factor;
    return fit(w).lighting_up.clearance.value;
  };
  CHECK(room(40.0, 1.0) < room(30.0, 1.0));
  CHECK(room(30.0, 1.0) < room(20.0, 1.0));
  CHECK(room(30.0, 0.8) < room(30.0, 2.0));
}
TEST_CASE("heat that cannot be followed is refused") {
  TubeInChimney w = usual();
  w.gas_side = 0.0 * W_per_m2_K;
  CHECK_THROWS_AS(heat_tube(w, 1.0 * minute), ModelError);
  w = usual();
  w.engaged = 0.0 * mm;
  CHECK_THROWS_AS(heat_tube(w, 1.0 * minute), ModelError);
  CHECK_THROWS_AS(heat_tube(usual(), 0.0 * s), ModelError);
  FitInput solder = fit_of(17.46 * mm, 17.60 * mm);
  solder.tube_metal.conductivity.reset();
  CHECK_THROWS_AS(fit(solder), ModelError);
}
