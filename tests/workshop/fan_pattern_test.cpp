#include "workshop/fan_pattern.hpp"
#include "data/fan_frames.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include "workshop/off.hpp"
#include "workshop/thread.hpp"
#include <algorithm>
#include <cmath>

using namespace lumwright;
using namespace lumwright::workshop;

namespace {
FanInHand axial(Length frame) {
  return {.kind = data::FanKind::axial,
          .frame = frame,
          .thickness = std::nullopt,
          .measured = false,
          .hole_pitch = std::nullopt,
          .lugs = {},
          .hole = std::nullopt,
          .opening = std::nullopt};
}
FanInHand blower(Length frame, Length thickness) {
  FanInHand fan = axial(frame);
  fan.kind = data::FanKind::centrifugal;
  fan.thickness = thickness;
  return fan;
}
}  // namespace

TEST_CASE("hole pitches are those that other open tables print") {
  for (const data::Row& row : published("workshop", "pitches")) {
    CAPTURE(row.text("id"));
    const FanDrawing drawing = fan_drawing(axial(row.quantity<Length>("frame")));
    REQUIRE(drawing.pattern);
    const auto& holes = drawing.pattern->holes;
    REQUIRE(holes.size() == 4);
    CHECK(off(distance(holes[0], holes[1]), row.quantity<Length>("pitch")) < 0.501);  // some are printed rounded
    CHECK(drawing.measure_first.empty());
    // the pattern sits in the middle of the frame
    CHECK(off(holes[0].x + holes[2].x, drawing.pattern->width) < 1e-9);
    CHECK(off(holes[0].y + holes[2].y, drawing.pattern->height) < 1e-9);
  }
}

TEST_CASE("a 60 mm fan takes a 57 mm cut-out and M3") {
  // common practice, no source; the parts library has the same bore and puts M4 through
  const auto pattern = fan_drawing(axial(60.0 * mm)).pattern;
  REQUIRE(pattern);
  CHECK(off(*pattern->opening, 57.0 * mm) < 1e-9);
  CHECK(std::find(pattern->screws.begin(), pattern->screws.end(), "M3") != pattern->screws.end());
}

TEST_CASE("frames that only one source gives are measured before they are drawn") {
  const FanDrawing small = fan_drawing(axial(25.4 * mm));
  CHECK_FALSE(small.pattern);
  REQUIRE(small.expected);
  CHECK(small.measure_first.starts_with("measure the hole pitch along one side (expected 20 mm)"));
  FanInHand measured = axial(25.4 * mm);
  measured.measured = true;
  CHECK(fan_drawing(measured).pattern);

  FanInHand seventy = axial(70.0 * mm);  // two tables disagree: a nod is not enough, a number is
  seventy.measured = true;
  CHECK_FALSE(fan_drawing(seventy).pattern);
  seventy.hole_pitch = 61.4 * mm;
  const FanDrawing drawn = fan_drawing(seventy);
  REQUIRE(drawn.pattern);
  CHECK(off(distance(drawn.pattern->holes[0], drawn.pattern->holes[1]), 61.4 * mm) < 1e-9);
  CHECK(drawn.measure_first.empty());

  FanInHand odd = axial(55.0 * mm);
  CHECK(fan_drawing(odd).measure_first == "no table has a frame of 55 mm: measure hole pitch, hole and air passage");
  odd.hole_pitch = 45.0 * mm;
  CHECK_FALSE(fan_drawing(odd).pattern);  // holes without a size
  odd.hole = 3.4 * mm;
  odd.opening = 52.0 * mm;
  const FanDrawing whole = fan_drawing(odd);
  REQUIRE(whole.pattern);
  CHECK(whole.pattern->basis.standing == data::Standing::measured);
}

TEST_CASE("every blower is measured first") {
  const FanDrawing first = fan_drawing(blower(50.0 * mm, 15.0 * mm));
  CHECK_FALSE(first.pattern);
  REQUIRE(first.expected);
  // distance of the lugs by hand from an open parts library's co-ordinates
  CHECK(off(distance(first.expected->holes[0], first.expected->holes[1]), 57.385 * mm) < 0.001);
  CHECK(off(*first.expected->outlet_width, 21.0 * mm) < 1e-9);  // 20 and 0.5 all round
  FanInHand nod = blower(51.3 * mm, 15.0 * mm);
  nod.measured = true;
  CHECK(fan_drawing(nod).pattern);
  CHECK_FALSE(fan_drawing(blower(75.0 * mm, 30.0 * mm)).expected);
  nod = blower(75.0 * mm, 30.0 * mm);
  nod.measured = true;
  CHECK_FALSE(fan_drawing(nod).pattern);  // there is nothing to agree with
  nod.lugs = {{4.0 * mm, 70.0 * mm}, {70.0 * mm, 6.0 * mm}};
  nod.hole = 3.3 * mm;
  nod.opening = 45.0 * mm;
  CHECK(fan_drawing(nod).pattern);
  CHECK_FALSE(fan_drawing(blower(50.0 * mm, 30.0 * mm)).expected);  // another thickness is another blower
  for (const data::BlowerFrame& row : data::blower_frames())
    CHECK_FALSE(fan_drawing(blower(row.width, row.thickness)).pattern);
}

TEST_CASE("fan screws are threads, pass their holes, and holes stay on the frame") {
  for (const data::FanFrame& row : data::fan_frames()) {
    CAPTURE(in(row.frame, mm));
    CHECK(row.pitch + row.hole < row.frame);
    CHECK(row.opening < row.frame);
    for (const std::string& screw : row.screws) CHECK(thread(screw).major < row.hole);
  }
  for (const data::BlowerFrame& row : data::blower_frames()) {
    if (row.hole) CHECK(thread(row.screw).major < *row.hole);
    for (const data::LugHole& hole : row.holes) CHECK(hole.x < row.width);
  }
}

TEST_CASE("sizes that no fan has are refused") {
  CHECK_THROWS_WITH_AS(fan_drawing(axial(0.0 * mm)), "frame of the fan 0 mm is not above zero", ModelError);
  FanInHand wide = axial(40.0 * mm);
  wide.hole_pitch = 40.0 * mm;
  CHECK_THROWS_WITH_AS(fan_drawing(wide), "hole pitch of the fan 40 mm is not shorter than its frame", ModelError);
}
