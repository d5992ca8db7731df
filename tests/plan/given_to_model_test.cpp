// What the description says against what the model is given: sizes by hand from the text.
#include "describe.hpp"
#include "model/solved.hpp"
#include "near.hpp"
#include "model/solved_draught.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::model;
using namespace lumwright::plan;

TEST_CASE("the gas sees the tube without its two walls, and the ring around it one side at a time") {
  // tube 17.24 mm with walls of 0.45 mm in a chimney of 17.60 mm. hand: 17.24 - 2 * 0.45 = 16.34 mm;
  // (17.60 - 17.24) / 2 = 0.18 mm; (17.60 + 17.24) / 2 = 17.42 mm
  const Solved solved = solve(example("tarn-beck"));
  REQUIRE(solved.draught);
  REQUIRE(solved.draught->path.adapter);
  CHECK(solved.draught->path.adapter->tube.bore == near(16.34 * mm, 1e-12));
  CHECK(solved.draught->path.adapter->wall->bore == near(16.34 * mm, 1e-12));
  REQUIRE(solved.draught->path.annulus);
  CHECK(solved.draught->path.annulus->radial_gap == near(0.18 * mm, 1e-9));
  CHECK(solved.draught->path.annulus->mean_diameter == near(17.42 * mm, 1e-12));
}

TEST_CASE("the draught is judged with the water as hot as steam at the gauge's reading") {
  // 1.1 bar on the gauge under a barometer of 1008 mbar: 2.108 bar; IF97 (python3-iapws 1.5.3) boils it at 121.8823
  // degC
  const Solved solved = solve(example("tarn-beck"));
  REQUIRE(solved.draught);
  CHECK(in_degC(solved.draught->water) == near(121.8823, 1e-6));
}
