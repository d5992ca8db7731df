// What stands between the cells and what they feed, from its key to the voltage at the load.
#include "model/solved_supply.hpp"
#include "power_bench.hpp"
#include <algorithm>
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::plan;

namespace {
std::string fed_through(const std::string& what) {
  return "load: { power: 1.8 W, voltage: 12 V }\nsupply:\n  pack: { cell: NiMH AA, series: 5, resistance: 0.5 ohm }\n" +
         board + what;
}
}  // namespace

TEST_CASE("a diode against a pack the wrong way round keeps its voltage, whatever flows") {
  Bench bare(fed_through("")), guarded(fed_through("  polarity: Schottky diode\n  polarity_drop: 0.40 V\n"));
  const power::Run &without = bare.all().supply->run, &with = guarded.all().supply->run;
  CHECK(in(without.start.open_circuit - with.start.open_circuit, V) == doctest::Approx(0.40).epsilon(1e-9));
  // Kirchhoff: what the load sees is the pack at rest less the diode less current times resistance
  const Resistance r = guarded.all().supply->pack.resistance();
  CHECK(in(with.start.voltage, V) ==
        doctest::Approx(in(without.start.open_circuit - 0.40 * V - with.start.current * r, V)).epsilon(1e-6));
  CHECK(with.runtime < without.runtime);  // more current for the same power
}

TEST_CASE("switch, plugs and transistor are resistances in the way") {
  Bench bare(fed_through(""));
  const auto more = [&](const std::string& what) {
    return in(Bench(fed_through(what)).all().supply->pack.outside - bare.all().supply->pack.outside, ohm);
  };
  // data sheets, from memory: as the rows of cells.yaml have them; two contacts a plug
  CHECK(more("  switch: toggle switch\n") == doctest::Approx(0.020).epsilon(1e-9));
  CHECK(more("  plugs: 2\n") == doctest::Approx(4 * 0.015).epsilon(1e-9));
  CHECK(more("  polarity: transistor\n") == doctest::Approx(0.050).epsilon(1e-9));
  CHECK(more("  switch: none\n  plugs: 0\n  polarity: plug that fits one way\n") == doctest::Approx(0.0));
}

TEST_CASE("what is assumed of them is listed") {
  const Assessment a = assess(described(fed_through("  switch: slide switch\n  polarity: diode\n")));
  const auto listed = [&](std::string_view key) {
    return std::any_of(a.assumed.begin(), a.assumed.end(), [&](const auto& one) { return one.key == key; });
  };
  CHECK(listed("supply.switch_resistance"));
  CHECK(listed("supply.polarity_drop"));
}
