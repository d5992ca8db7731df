#include "workshop/brazing.hpp"
#include "data/joints.hpp"
#include "matter/metal.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include "workshop/off.hpp"
#include <cmath>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::workshop;

namespace {
BrazedJoint joint(const char* tube, const char* plate, Length hole) {
  return {.tube = exactly(20.0 * mm),
          .hole = exactly(hole),
          .tube_metal = metal(tube),
          .plate_metal = metal(plate),
          .filler = data::filler("Ag 155")};
}
}  // namespace

TEST_CASE("brass in steel closes, brass in brass does not") {
  // by hand: (20.5 - 11.7) 1e-6 x 640 x 20 = 0.113 mm from 20 degC to where Ag 155 runs, 660 degC; coefficients of
  // Callister, table B.6
  CHECK(off(braze_gap(joint("free-cutting brass", "steel", 20.0 * mm)).closes, 0.1126 * mm) < 0.0005);
  CHECK(off(braze_gap(joint("brass", "brass", 20.0 * mm)).closes, 0.0 * mm) < 1e-12);
  CHECK(braze_gap(joint("steel", "brass", 20.0 * mm)).closes < 0.0 * mm);
  const BrazeGap gap = braze_gap(joint("free-cutting brass", "steel", 20.3 * mm));
  CHECK(off(gap.cold.value, 0.15 * mm) < 1e-9);
  CHECK(off(gap.closes, 2.0 * (gap.cold.value - gap.hot.value)) < 1e-12);
  CHECK(gap.hot.low <= gap.hot.value);
  CHECK(gap.hot.value <= gap.hot.high);
}

TEST_CASE("the gap at brazing heat is judged, and the hole asked for gives it") {
  CHECK(braze_gap(joint("brass", "brass", 20.2 * mm)).gap == Gap::right);
  CHECK(braze_gap(joint("brass", "brass", 20.05 * mm)).gap == Gap::too_tight);
  CHECK(braze_gap(joint("brass", "brass", 20.4 * mm)).gap == Gap::too_wide);
  CHECK(braze_gap(joint("brass", "steel", 20.05 * mm)).gap == Gap::interference);
  for (const char* plate : {"brass", "steel", "copper", "gunmetal"}) {
    CAPTURE(std::string(plate));
    const Band<Length> hole = braze_gap(joint("brass", plate, 20.2 * mm)).hole_to_bore;
    // 0.002 to 0.005 in per side, AWS A5.8 in Machinery's Handbook
    CHECK(off(braze_gap(joint("brass", plate, hole.low)).hot.value, 0.05 * mm) < 1e-9);
    CHECK(off(braze_gap(joint("brass", plate, hole.high)).hot.value, 0.13 * mm) < 1e-9);
    CHECK(hole.low < hole.value);
    CHECK(hole.value < hole.high);
  }
  BrazedJoint wide = joint("brass", "brass", 20.2 * mm);
  wide.tube = {20.0 * mm, 19.8 * mm, 20.0 * mm};
  CHECK(braze_gap(wide).gap == Gap::too_wide);  // the worst of its spread counts
  wide.tube = {20.0 * mm, 20.1 * mm, 20.0 * mm};
  CHECK_THROWS_AS(braze_gap(wide), ModelError);
  BrazedJoint melts = joint("aluminium", "steel", 20.2 * mm);
  CHECK_THROWS_AS(braze_gap(melts), ModelError);  // aluminium is gone before the filler runs
}

TEST_CASE("the joints of the build agree with the fillers") {
  CHECK(in_degC(data::filler("Ag 155").solidus) == near(in_degC(*data::joint("silver braze").melts), 1e-9));
  CHECK(in_degC(data::filler("Sn60Pb40").solidus) == near(in_degC(*data::joint("soft solder").melts), 1e-9));
  for (const data::FillerRow& row : data::fillers()) {
    CAPTURE(row.name);
    CHECK(row.solidus <= row.liquidus);
    CHECK((row.solidus > degC(450)) == (row.kind == data::FillerKind::silver));  // ISO 857-2: brazing above 450 degC
    CHECK(row.composition.find("Cd") == std::string::npos);
    for (const std::string& word : row.also) CHECK(data::filler(word).name == row.name);
  }
  CHECK(data::filler("ag 155").name == "Ag 155");
  CHECK_THROWS_AS(data::filler("chewing gum"), ModelError);
}

TEST_CASE("AWS ranges of the like fillers are near") {
  // AWS A5.8 BAg-7 618 to 652, BAg-5 677 to 743, BAg-8 779 degC, as handbooks quote them
  CHECK(std::abs(in_degC(data::filler("BAg-7").liquidus) - 652.0) < 5.0);
  CHECK(std::abs(in_degC(data::filler("BAg-7").solidus) - 618.0) < 5.0);
  CHECK(std::abs(in_degC(data::filler("BAg-5").liquidus) - 743.0) < 5.0);
  CHECK(std::abs(in_degC(data::filler("BAg-5").solidus) - 677.0) < 15.0);
  CHECK(std::abs(in_degC(data::filler("BAg-8").liquidus) - 779.0) < 5.0);
}
