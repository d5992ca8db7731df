#include "workshop/hole_circle.hpp"
#include "data/fan_frames.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include "workshop/edges.hpp"
#include "workshop/off.hpp"
#include <cmath>
#include <numbers>
#include <random>

using namespace lumwright;
using namespace lumwright::workshop;

TEST_CASE("hole circles are the factors that handbooks print") {
  int found = 0;
  for (const data::Row& row : published("workshop", "circles")) {
    CAPTURE(row.text("id"));
    const int count = static_cast<int>(row.number("count"));
    const auto holes =
        hole_circle({.count = count, .pitch_circle = 1.0 * m, .start = 0.0, .datum = Datum::lower_left_tangents});
    const auto places = row.rows_of_numbers("places");
    REQUIRE(holes.size() == places.size());
    for (std::size_t k = 0; k < holes.size(); ++k) {
      CHECK(std::abs(in(holes[k].x, m) - places[k][0]) < 6e-7);
      CHECK(std::abs(in(holes[k].y, m) - places[k][1]) < 6e-7);
    }
    CHECK(std::abs(in(chord({count, 1.0 * m, 1}), m) - row.number("chord")) < 6e-7);
    ++found;
  }
  CHECK(found == 6);
  CHECK(off(chord({5, 32.0 * mm, 1}), 18.809 * mm) < 0.001);  // by hand: 32 x 0.587785
}

TEST_CASE("laws of a circle of holes") {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> any(0.0, 1.0);
  for (int trial = 0; trial < 300; ++trial) {
    const int count = 2 + static_cast<int>(any(random) * 23.0);
    const Length circle_size = (3.0 + 200.0 * any(random)) * mm;
    const double start = (any(random) - 0.5) * 720.0 * degree;
    const auto holes = hole_circle({count, circle_size, start, Datum::centre});
    const auto from_edges = hole_circle({count, circle_size, start, Datum::lower_left_tangents});
    Length x = 0.0 * mm, y = 0.0 * mm;
    for (std::size_t k = 0; k < holes.size(); ++k) {
      x += holes[k].x;
      y += holes[k].y;
      CHECK(off(distance(holes[k], {0.0 * mm, 0.0 * mm}), 0.5 * circle_size) < 1e-10);
      CHECK(off(from_edges[k].x - holes[k].x, 0.5 * circle_size) < 1e-10);
      CHECK(from_edges[k].x >= -1e-10 * mm);
      CHECK(from_edges[k].y >= -1e-10 * mm);
      const int apart = static_cast<int>(k);
      if (apart > 0) CHECK(off(distance(holes[0], holes[k]), chord({count, circle_size, apart})) < 1e-9);
    }
    CHECK(std::abs(in(x, mm)) < 1e-9);
    CHECK(std::abs(in(y, mm)) < 1e-9);
  }
}

TEST_CASE("a hole due north, south, east or west has a zero that is zero") {
  for (const PlanePoint& hole : hole_circle({4, 30.0 * mm, 90.0 * degree, Datum::centre})) {
    const bool on_axis = hole.x == 0.0 * mm || hole.y == 0.0 * mm;
    CHECK(on_axis);
  }
}

TEST_CASE("three holes on a 30 mm circle, the usual flange") {
  // common practice, no source: three 8BA holes on a 30 mm circle; places by hand, 15 sin 30 and 15 cos 30
  const auto holes = hole_circle({3, 30.0 * mm, 90.0 * degree, Datum::centre});
  REQUIRE(holes.size() == 3);
  CHECK(off(holes[0].y, 15.0 * mm) < 1e-9);
  CHECK(off(holes[1].x, -12.9904 * mm) < 1e-4);
  CHECK(off(holes[1].y, -7.5 * mm) < 1e-9);
  CHECK(off(holes[2].x, 12.9904 * mm) < 1e-4);
  CHECK(off(chord({3, 30.0 * mm, 1}), 25.9808 * mm) < 1e-4);
}

TEST_CASE("a square of holes lies on the circle of its diagonal") {
  for (const data::Row& row : published("workshop", "frames")) {
    CAPTURE(row.text("id"));
    for (const data::FanFrame& frame : data::fan_frames()) {
      if (off(frame.frame, row.quantity<Length>("frame")) > 0.1) continue;
      const auto holes = hole_square({frame.pitch, Datum::centre});
      CHECK(off(distance(holes[0], holes[2]), row.quantity<Length>("circle")) < 0.006);
      const Length web = web_to_opening(
          {.from_centre = distance(holes[0], {0.0 * mm, 0.0 * mm}), .opening = frame.opening, .hole = frame.hole});
      CHECK(off(web, row.quantity<Length>("web")) < 0.006);
    }
  }
  CHECK(hole_square({20.0 * mm, Datum::lower_left_tangents}).front().x == 0.0 * mm);
}

TEST_CASE("what no circle can be is refused") {
  CHECK_THROWS_WITH_AS(hole_circle({0, 30.0 * mm, 0.0, Datum::centre}), "number of holes 0 is not 1 or more",
                       ModelError);
  CHECK_THROWS_WITH_AS(hole_circle({3, 0.0 * mm, 0.0, Datum::centre}), "pitch circle 0 mm is not above zero",
                       ModelError);
  CHECK_THROWS_AS(hole_circle({3, 30.0 * mm, std::nan(""), Datum::centre}), ModelError);
  CHECK_THROWS_WITH_AS(chord({3, 30.0 * mm, 3}), "3 holes apart is not between 1 and 2", ModelError);
  CHECK_THROWS_AS(chord({1, 30.0 * mm, 1}), ModelError);
  CHECK_THROWS_AS(hole_square({-1.0 * mm, Datum::centre}), ModelError);
}

TEST_CASE("edges and webs are judged by hole diameters and by millimetres") {
  CHECK(off(edge_to_rim({34.0 * mm, 27.0 * mm}), 3.5 * mm) < 1e-12);
  // by hand: 8BA clears 2.4 mm, 3.5 / 2.4 = 1.46: too little; tapped, 3.5 / 1.8 = 1.94: tight
  CHECK(judge_edge(3.5 * mm, 2.4 * mm).room == Room::too_little);
  CHECK(judge_edge(3.5 * mm, 1.8 * mm).room == Room::tight);
  CHECK(judge_edge(4.8 * mm, 2.4 * mm).room == Room::enough);  // at the very limit
  CHECK(judge_pitch(2.2 * 3.0 * mm, 3.0 * mm).room == Room::tight);
  CHECK(judge_pitch(6.5 * mm, 3.0 * mm).room == Room::too_little);
  CHECK(judge_pitch(9.0 * mm, 3.0 * mm).room == Room::enough);
  CHECK(judge_web(0.96 * mm).room == Room::too_little);  // the 38 mm frame
  CHECK(judge_web(1.87 * mm).room == Room::tight);       // the 30 mm frame
  CHECK(judge_web(2.38 * mm).room == Room::enough);      // the 40 mm frame
  CHECK(judge_web(-1.0 * mm).room == Room::too_little);
  // by hand: 32 / sqrt 2 - 37.755 / 2 - 3.5 / 2 = 2
  CHECK(off(web_to_opening({22.6274 * mm, 37.7548 * mm, 3.5 * mm}), 2.0 * mm) < 1e-4);
  CHECK_THROWS_AS(judge_edge(3.0 * mm, 0.0 * mm), ModelError);
}
