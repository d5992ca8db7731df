// How long fires take to light, and how much monoxide they make, against what is known of real ones.
#include "fire/habits.hpp"
#include "data/fuels.hpp"
#include "data/monoxide.hpp"
#include "fire/combustion.hpp"
#include "fire/heating_value.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::fire;

namespace {
/// CO / (CO + CO2) of the fuel's carbon that goes with a share of the heat lost.
double of_the_carbon(const std::string& fuel, double loss) {
  const data::FuelAnalysis& a = data::fuel(fuel).analysis;
  return static_cast<double>(loss * net_heat(a) / (a.carbon * carbon_as_monoxide_heat()));
}
/// With the usual leak past the bed.
Band<double> usual_share(double lumps) { return monoxide_share({.lumps = lumps, .leak = 0.21}); }
}  // namespace

TEST_CASE("a fire of 5 inch gauge takes twice as long to light as one of 22 cm2, coal longer than charcoal") {
  // common practice, no source: 150 s with charcoal on a small grate, about 300 s on one of 5 inch gauge
  const data::KindlingRow& charcoal = data::kindling("lump charcoal");
  CHECK(kindling_time(charcoal, 22.0 * cm2).value == near(150.0 * s, 1e-12));
  CHECK(kindling_time(charcoal, 180.0 * cm2).value == near(300.0 * s, 0.03));
  for (const data::FuelRow& fuel : data::fuels()) {
    CAPTURE(fuel.name);
    const Band<Duration> usual = kindling_time(data::kindling(fuel.name), 22.0 * cm2);
    // fines about halve or double it: forced char gasifier, 5 min with fines, 10 without (forum, excerpt)
    CHECK(usual.high / usual.value >= 1.7);
    CHECK(usual.value / usual.low >= 1.7);
    const bool coal =
        fuel.name == "steam coal" || fuel.name == "house coal" || fuel.name == "anthracite" || fuel.name == "coke";
    CHECK(data::needs_bright_charcoal(fuel.name) == coal);
    if (coal) CHECK(usual.value >= 2.0 * kindling_time(charcoal, 22.0 * cm2).value);
  }
  // a start the table does not know is the usual one
  CHECK(data::kindling("coke", "soaked charcoal").on == "bright charcoal");
  CHECK_THROWS_AS(data::kindling("peat"), ModelError);
  CHECK_THROWS_AS(kindling_time(charcoal, 0.0 * cm2), ModelError);
}

TEST_CASE("monoxide: even to four lumps, then climbing, with a band that holds what was measured") {
  for (const double lumps : {0.5, 2.0, 3.5, 4.0}) CHECK(usual_share(lumps).value == near(0.12, 1e-12));
  double before = usual_share(4.0).value;
  for (double lumps = 4.5; lumps <= 16.0; lumps += 0.5) {
    CAPTURE(lumps);
    const Band<double> share = usual_share(lumps);
    CHECK(share.value > before);
    CHECK(share.low < share.value);
    CHECK(share.value < share.high);
    before = share.value;
  }
  CHECK(usual_share(6.5).value > 1.4 * usual_share(4.0).value);
  CHECK(usual_share(40.0).value == usual_share(16.0).value);
  CHECK_THROWS_AS(usual_share(0.0), ModelError);
  // of the carbon: thin hand-fired beds 0.00 to 0.04 (table 59 of Steam Its Generation and Use, 35th ed., full text);
  // cooking stove 0.037 to 0.050 (Industrial Health 49 (2011) 393, abstract); bucket stove 0.15 (Zhang et al. 1999,
  // abstract); small stoves, open to throttled, 0.13 to 0.49 (a tester's statement)
  const Band<double> thin = usual_share(3.5);
  CHECK(of_the_carbon("lump charcoal", thin.low) < 0.04);
  for (const double measured : {0.037, 0.050, 0.13, 0.15, 0.49}) {
    CHECK(of_the_carbon("lump charcoal", thin.low) < measured);
    CHECK(of_the_carbon("lump charcoal", thin.high) > measured);
  }
  // over a deep hot bed of char 0.60 to 0.85 (Yucel and Hastaoglu 2016, abstract), with no air over it
  CHECK(of_the_carbon("lump charcoal", usual_share(30.0).value) > 0.60);
  CHECK(of_the_carbon("lump charcoal", usual_share(30.0).high) > 0.85);
  for (const data::FuelRow& fuel : data::fuels()) CHECK(of_the_carbon(fuel.name, usual_share(30.0).high) <= 1.0);
}

TEST_CASE("advised depths are in order, and the best lies where monoxide does not yet climb") {
  const data::DepthInLumps& d = data::depth_in_lumps();
  CHECK(d.thin < d.least);
  CHECK(d.least < d.good);
  CHECK(d.good < d.most);
  CHECK(d.most < d.deep);
  CHECK(usual_share(d.good).value == usual_share(1.0).value);
}

TEST_CASE(
    "air over the fire burns monoxide: the share falls as the leak past the bed grows, and a leak never gains heat") {
  for (const double lumps : {3.0, 8.0, 20.0}) {
    double before = 1.0, heat_before = 1e9;
    for (const double leak : {0.0, 0.05, 0.1, 0.21, 0.3, 0.4, 0.6}) {
      CAPTURE(lumps);
      CAPTURE(leak);
      const Band<double> share = monoxide_share({.lumps = lumps, .leak = leak});
      CHECK((share.value < before || share.value == near(0.58, 1e-12)));  // the most there can be
      CHECK(share.low < share.high);
      // hand: heat of a kilogram of all the air, charcoal of 29.546 MJ/kg, carbon 0.80, 9.8038 of air to burn it
      const double y = share.value * 29.546 / (0.80 * 23.560);
      const double heat = (1.0 - leak) * (1.0 - share.value) * 29.546 / (9.8038 - y * 0.80 * 1.33210 / 0.23145);
      CHECK(heat < heat_before);
      // no pure loss: more is left than if the leak burnt nothing
      if (leak > 0.21) CHECK(share.value < usual_share(lumps).value);
      before = share.value;
      heat_before = heat;
    }
  }
  CHECK(monoxide_share({.lumps = 3.0, .leak = 0.21}).value == near(0.12, 1e-12));
  CHECK(monoxide_share({.lumps = 3.0, .leak = 1.0}).value == 0.0);
  CHECK_THROWS_AS(monoxide_share({.lumps = 3.0, .leak = 1.1}), ModelError);
}
