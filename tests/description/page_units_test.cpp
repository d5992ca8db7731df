// The unit of a kind on a page: what the description writes most.
#include "description/page_units.hpp"
#include "description/reader.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::description;

namespace {
PageUnits of(std::string text) { return PageUnits(read_build({"test.yaml", std::move(text)})); }
std::string told(const PageUnits& page, AnyQuantity q) { return choose_unit(q, page.of(q), UnitSystem::as_written); }
}  // namespace

TEST_CASE("nothing written: every kind in its usual unit") {
  const PageUnits page = of("name: bare\n");
  CHECK(told(page, 17.2 * mm) == "mm");
  CHECK(told(page, 12.0 * Pa) == "Pa");
  CHECK(told(page, degC(15)) == "degC");
}

TEST_CASE("lengths are told in the system that is written most, small and large ones as a rule is marked") {
  const PageUnits page =
      of("engine: { chimney: { bore: 11/16 in, depth: 1 1/4 in } }\nadapter: { tube: { wall: 0.45 mm } }\n");
  CHECK(told(page, 17.2 * mm) == "in");
  CHECK(told(page, 0.2 * mm) == "thou");
  CHECK(told(page, 4.0 * m) == "ft");
  const PageUnits metric =
      of("engine: { chimney: { bore: 11/16 in, depth: 3.2 cm } }\nadapter: { tube: { wall: 0.45 mm } }\n");
  CHECK(told(metric, 17.2 * mm) == "mm");
  CHECK(told(metric, 0.2 * mm) == "mm");
}

TEST_CASE("of units written equally often the first in the description stands") {
  CHECK(told(of("engine: { chimney: { bore: 11/16 in, depth: 32 mm } }\n"), 5.0 * mm) == "in");
  CHECK(told(of("engine: { chimney: { bore: 17 mm, depth: 1.25 in } }\n"), 5.0 * mm) == "mm");
}

TEST_CASE("the boiler's gauge, the U-tube and the barometer each keep their own unit") {
  const PageUnits page =
      of("place: { barometer: 996 mbar }\n"
         "engine: { boiler: { own_blower_from: 15 psi, working: 45 psi } }\n"
         "fan: { kind: axial, curve: [ [0 l/min, 12 mmH2O], [100 l/min, 0 mmH2O] ] }\n");
  CHECK(told(page, GaugePressure{2.0 * bar}) == "psi");
  CHECK(told(page, 60.0 * Pa) == "mmH2O");
  CHECK(told(page, 0.4 * Pa) == "mmH2O");
  CHECK(told(page, 1.0 * bar) == "mbar");
  CHECK(told(page, 50.0 * litre_per_min) == "l/min");
}

TEST_CASE("a unit in which nobody reads such a thing does not decide") {
  const PageUnits page =
      of("fan: { kind: axial, curve: [ [0 m3/s, 0.0012 bar], [0.002 m3/s, 0 bar] ] }\nplace: { barometer: 1 bar }\n");
  CHECK(told(page, 60.0 * Pa) == "Pa");
  CHECK(told(page, 50.0 * litre_per_min) == "l/min");
}
