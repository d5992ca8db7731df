#include "boiler/boiler.hpp"
#include "example.hpp"
#include "matter/metal.hpp"
#include "matter/water.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include <array>
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::draught;
using namespace lumwright::fire;
using namespace lumwright::boiler;

TEST_CASE("published Nusselt numbers of fire tubes") {
  for (const data::Row& row : published("combustion", "tubes")) {
    const std::string id = row.text("id"), what = row.text("what");
    CAPTURE(id);
    // a Graetz number is Re Pr d/L; at d/L = 0.05 and Pr = 0.7
    const TubeHeat at =
        row.has("graetz")
            ? TubeHeat{.reynolds = row.number("graetz") / (0.7 * 0.05), .prandtl = 0.7, .bore_over_length = 0.05}
            : TubeHeat{.reynolds = row.number("re"), .prandtl = 0.7, .bore_over_length = row.number("ratio")};
    const double nusselt = what == "laminar"     ? laminar_nusselt(at)
                           : what == "turbulent" ? turbulent_nusselt(at)
                                                 : fire_tube_nusselt(at);
    CHECK(nusselt == near(row.number("expect"), row.number("tolerance")));
  }
}

TEST_CASE("the Nusselt number has no step and never falls with the flow") {
  double before = 0.0;
  for (double re = 0.0; re < 2e4; re += 7.0) {
    const double nu = fire_tube_nusselt({.reynolds = re, .prandtl = 0.7, .bore_over_length = 0.0533});
    CHECK(nu >= before);
    if (re > 0.0) CHECK(nu < before + 0.2);
    before = nu;
  }
}

TEST_CASE("snapshots of the worked example") {
  // second program with the same equations (standard library only, bisection), five digits
  struct Row {
    double water, firebox, exit, to_plates, to_tubes, reynolds, nusselt, coefficient, units, outside;
  };
  const RaiseInput input = example_a();
  const Burning burning = input.fire.burn(1.0, 0.0 * W, 0.3 * g_per_s, 0.1 * g_per_s);
  for (const Row& row : {Row{60.0, 1101.8, 489.1, 476.9, 303.1, 273, 4.160, 29.9, 1.595, 15.7},
                         Row{120.42, 1107.1, 535.0, 474.1, 284.8, 268, 4.151, 30.5, 1.618, 36.9}}) {
    CAPTURE(row.water);
    const BoilerHeat heat = heat_of(input, burning, degC(row.water));
    CHECK(burning.mixture.temperature(burning.enthalpy) == near(kelvin(1962.3), 1e-4));
    CHECK(heat.firebox.gas == near(kelvin(row.firebox), 1e-4));
    CHECK(heat.tubes.exit == near(kelvin(row.exit), 2e-4));
    CHECK(heat.firebox.heat == near(row.to_plates * W, 3e-4));
    CHECK(heat.tubes.heat == near(row.to_tubes * W, 3e-4));
    CHECK(heat.tubes.reynolds == near(row.reynolds, 3e-3));
    CHECK(heat.tubes.nusselt == near(row.nusselt, 3e-4));
    CHECK(heat.tubes.coefficient == near(row.coefficient * W_per_m2_K, 2e-3));
    CHECK(heat.tubes.transfer_units == near(row.units, 5e-4));
    CHECK(heat.outside == near(row.outside * W, 4e-3));
  }
  for (const auto& [t, q] : {std::pair{20.0, 793.8}, {40.0, 786.9}, {80.0, 773.1}, {100.0, 766.2}, {143.7, 750.6}})
    CHECK(heat_of(input, burning, degC(t)).absorbed == near(q * W, 1e-3));
}

TEST_CASE("every balance closes at any flow, lit or not, gas hotter or colder than the water") {
  const RaiseInput input = example_a();
  for (const double air : {0.0, 1e-6, 1e-3, 0.05, 0.4, 3.0, 100.0})
    for (const double lit : {0.0, 0.1, 1.0})
      for (const double wanted : {0.0, 122.0})
        for (const double past : {-0.2, 0.0, 0.25})
          for (const double water : {1.0, 15.0, 60.0, 160.0}) {
            CAPTURE(air);
            CAPTURE(lit);
            CAPTURE(past);
            CAPTURE(water);
            const Burning b = input.fire.burn(lit, wanted * W, air * g_per_s, past * air * g_per_s);
            const BoilerHeat h = heat_of(input, b, degC(water));
            CHECK(std::abs(in(b.to_gas - h.absorbed - h.stack, W)) < 1e-9 + 1e-8 * in(b.to_gas, W));
            const Temperature low = std::min(degC(water), b.mixture.temperature(b.enthalpy)),
                              high = std::max(degC(water), b.mixture.temperature(b.enthalpy));
            CHECK(h.firebox.gas >= low - 1e-6 * K);
            CHECK(h.firebox.gas <= high + 1e-6 * K);
            CHECK(h.tubes.exit >= std::min(h.firebox.gas, degC(water)) - 1e-6 * K);
            CHECK(h.tubes.exit <= std::max(h.firebox.gas, degC(water)) + 1e-6 * K);
          }
}

TEST_CASE("a heat factor moves heat, it makes none") {
  RaiseInput input = example_a();
  input.boiler.heat_factor = 0.758;
  const Burning b = input.fire.burn(1.0, 0.0 * W, 0.3 * g_per_s, 0.1 * g_per_s);
  const BoilerHeat h = heat_of(input, b, degC(60));
  CHECK(h.absorbed == near(0.758 * 780.0 * W, 1e-3));
  CHECK(b.to_gas == near(h.absorbed + h.stack + h.astray, 1e-10));
}

TEST_CASE("no heat factor makes heat: gas cooled to the water is the end of it") {
  // second law: the gas, at 15 degC without heat, keeps at least its sensible heat at the water's temperature
  const RaiseInput base = example_a();
  const Burning b = base.fire.burn(1.0, 0.0 * W, 0.3 * g_per_s, 0.1 * g_per_s);
  for (const double water : {60.0, 120.42, 170.0})
    for (const double factor : {1.0, 1.05, 1.35, 2.44, 20.0}) {
      CAPTURE(water);
      CAPTURE(factor);
      Boiler boiler = base.boiler;
      boiler.heat_factor = factor;
      const BoilerHeat h = boiler_heat(boiler, base.fire, b, zones(boiler, b, degC(water)), degC(water));
      const Power carried = b.gas * (b.mixture.enthalpy(degC(water)) - b.mixture.enthalpy(degC(15)));
      CHECK(h.absorbed + carried <= b.to_gas + 1e-6 * W);
      CHECK(b.to_gas == near(h.absorbed + h.stack + h.astray, 1e-10));
      CHECK(*most_heat_factor(h) > 1.0);
      if (factor < *most_heat_factor(h))
        CHECK(h.absorbed == near(factor * (h.firebox.heat + h.tubes.heat), 1e-12));
      else
        CHECK(h.absorbed + carried == near(b.to_gas, 1e-9));
    }
}

TEST_CASE("what water and metal hold") {
  // hand: 1.10 390 + 0.25 380 + 0.30 480 = 668 J/K
  const std::array parts = {MetalMass{&metal("copper"), 1.10 * kg}, MetalMass{&metal("brass"), 0.25 * kg},
                            MetalMass{&metal("steel"), 0.30 * kg}};
  CHECK(heat_capacity(parts) * (105.42 * K) == near(70.42 * kJ, 1e-4));
  // IAPWS-IF97 by an open library
  CHECK(0.300 * kg * heat_to(degC(15), degC(120.4204)) == near(132.71 * kJ, 3e-4));
  CHECK(0.300 * kg * heat_to(degC(15), degC(143.7318)) == near(162.55 * kJ, 3e-4));
  for (double t = 274.0; t < 572.0; t += 3.3) {
    CAPTURE(t);
    CHECK(std::abs(in(water_energy(kelvin(t)) - saturation(kelvin(t)).water_energy, J_per_kg)) < 1.0);
    const SpecificEnergy rise = saturation(kelvin(t + 0.05)).water_energy - saturation(kelvin(t - 0.05)).water_energy;
    CHECK(water_capacity(kelvin(t)) == near(rise / (0.1 * K), 3e-5));
  }
  CHECK_THROWS_AS(water_energy(kelvin(273.0)), ModelError);
  CHECK_THROWS_AS(heat_capacity(std::array{MetalMass{&metal("copper"), -1.0 * kg}}), ModelError);
}

TEST_CASE("a bare barrel's loss") {
  // second program: Churchill and Chu, and radiation of emissivity 0.9, 60 mm barrel in air of 15 degC
  const Barrel barrel{.diameter = 60.0 * mm, .surface = 300.0 * cm2, .emissivity = 0.9, .bare_share = 1.0};
  for (const auto& [t, h] : {std::pair{60.0, 12.3}, {100.0, 14.7}, {133.7, 16.5}}) {
    CHECK(barrel_coefficient(barrel, degC(t), degC(15)) == near(h * W_per_m2_K, 8e-3));
    CHECK(outside_loss(barrel, degC(t), degC(15)) == near(h * W_per_m2_K * barrel.surface * ((t - 15.0) * K), 8e-3));
  }
  CHECK(outside_loss(barrel, degC(15), degC(15)) == 0.0 * W);
  CHECK(outside_loss(0.35 * W_per_K, degC(10), degC(15)) == near(-1.75 * W, 1e-12));
  CHECK_THROWS_AS(outside_loss(-0.1 * W_per_K, degC(60), degC(15)), ModelError);
}

TEST_CASE("the gas path sees the same temperatures that the boiler is heated with") {
  const RaiseInput input = example_a();
  const Condition condition{.lit = 0.7, .wanted_by_bed = 122.0 * W, .water = degC(45)};
  const FiredBoiler source(input.fire, input.boiler, condition);
  const GasTemperatures seen = source.after_bed(0.3 * g_per_s, 0.1 * g_per_s);
  const BoilerHeat heat = heat_of(input, input.fire.burn(0.7, 122.0 * W, 0.3 * g_per_s, 0.1 * g_per_s), degC(45));
  CHECK(seen.firebox == heat.firebox.gas);
  CHECK(seen.tube_exit == heat.tubes.exit);
  CHECK(seen.tube_mean > seen.tube_exit);
  CHECK(seen.tube_mean < seen.firebox);
  CHECK(source.bed_mean(0.3 * g_per_s) == seen.bed_mean);
  const GasTemperatures still = source.after_bed(0.0 * g_per_s, 0.0 * g_per_s);
  CHECK(still.tube_exit == degC(45));
}

TEST_CASE("boilers out of range are refused") {
  RaiseInput input = example_a();
  const Burning b = input.fire.burn(1.0, 0.0 * W, 0.3 * g_per_s, 0.1 * g_per_s);
  const auto refuses = [&](auto change) {
    Boiler boiler = input.boiler;
    change(boiler);
    CHECK_THROWS_AS((check(boiler), boiler_heat(boiler, input.fire, b, zones(boiler, b, degC(60)), degC(60))),
                    ModelError);
  };
  refuses([](Boiler& x) { x.water = 0.0 * g; });
  refuses([](Boiler& x) { x.metal = -1.0 * J / K; });
  refuses([](Boiler& x) { x.heat_factor = 0.0; });
  refuses([](Boiler& x) { x.firebox.surface = -1.0 * cm2; });
  refuses([](Boiler& x) { x.firebox.emissivity = 1.2; });
  refuses([](Boiler& x) { x.firebox.convection = std::nan("") * W_per_m2_K; });
  refuses([](Boiler& x) { x.tubes.count = 0; });
  refuses([](Boiler& x) { x.tubes.bore = 0.0 * mm; });
  refuses([](Boiler& x) { x.tubes.length = -5.0 * mm; });
}

TEST_CASE("plates bare and under felt lose what naval trials found, the bare ones with the rise to 1.20") {
  // 16.6 W/m2K naked; 5.98, 3.25, 1.74 and 1.42 under a quarter, a half, one and one and a half inches of hair felt
  // (Scientific American Supplement 520, 1885); bare copper barrel: the loss for each degree falls by 18 % from 120 to
  // 45 K (a workshop's cooling curve, excerpt)
  const Area surface = 0.1 * m2;
  const auto coefficient = [&](const Plates& plates, double rise) {
    return in(outside_loss(plates, degC(15.0 + rise), degC(15)) / (rise * K) / surface, W_per_m2_K);
  };
  Plates plates = plates_that_lose(surface, 16.6 * W_per_m2_K);
  CHECK(coefficient(plates, 120.0) == doctest::Approx(16.6).epsilon(1e-9));
  CHECK(coefficient(plates, 45.0) / coefficient(plates, 120.0) == doctest::Approx(0.82).epsilon(0.01));
  CHECK(coefficient(plates, -45.0) == doctest::Approx(coefficient(plates, 45.0)).epsilon(1e-12));  // a warm room
  const struct { double thickness, measured; } felts[] = {{6.35, 5.98}, {12.7, 3.25}, {25.4, 1.74}, {38.1, 1.42}};
  for (const auto& felt : felts) {
    plates.lagging = lagging_lets_through(felt.thickness * mm);
    CHECK(coefficient(plates, 120.0) == doctest::Approx(felt.measured).epsilon(1e-9));
    CHECK(coefficient(plates, 45.0) / coefficient(plates, 120.0) > 0.92);  // felt cares little for the rise
  }
  plates.lagging = lagging_lets_through(0.75 * inch);  // 2.34, measured there too; no row of the table
  CHECK(coefficient(plates, 120.0) == doctest::Approx(2.34).epsilon(0.04));
  CHECK_FALSE(lagging_lets_through(0.0 * mm));
  CHECK_THROWS_AS(lagging_lets_through(-1.0 * mm), ModelError);
  CHECK(coefficient(plates_that_lose(surface, 8.0 * W_per_m2_K), 120.0) == doctest::Approx(8.0).epsilon(1e-9));
  CHECK(coefficient(plates_that_lose(surface, 20.0 * W_per_m2_K), 120.0) == doctest::Approx(20.0).epsilon(1e-9));
  CHECK(outside_loss(plates, degC(15), degC(15)) == 0.0 * W);
}
