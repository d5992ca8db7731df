#include "power/constant_power.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::power;

TEST_CASE("current and voltage under constant power") {
  // E I - R I^2 = P (circuit theory), solved outside this project
  CHECK(current({.emf = 4.8 * V, .resistance = 0.2 * ohm, .power = 3.0 * W}) == near(0.642183 * A, 8e-7));
  const PowerDraw draw{.emf = 6.0 * V, .resistance = 1.6 * ohm, .power = 3.0 * W};
  CHECK(current(draw) == near(0.594131 * A, 9e-7));
  CHECK(terminal_voltage(draw) == near(5.049390 * V, 1e-7));
  CHECK(current(draw) * terminal_voltage(draw) == near(3.0 * W, 1e-12));
}
TEST_CASE("the most that a source can give") {
  CHECK(most_power(4.8 * V, 0.2 * ohm) == near(28.80 * W, 1e-9));  // maximum power transfer, E^2/4R
  CHECK_THROWS_WITH_AS(current({.emf = 6.0 * V, .resistance = 1.6 * ohm, .power = 5.7 * W}),
                       "load 5.70 W is more than the pack can give: 5.625 W at 6.00 V open", ModelError);
  CHECK(2.0 * collapse_voltage(1.6 * ohm, 3.0 * W) == near(4.38178 * V, 2e-6));  // 2 sqrt(R P), hand
  // at three quarters of that power the terminals hold three quarters of E: identity
  CHECK(terminal_voltage({.emf = 6.0 * V, .resistance = 1.6 * ohm, .power = 0.75 * 5.625 * W}) == near(4.5 * V, 1e-12));
  const Voltage at_the_edge = 2.0 * collapse_voltage(0.7 * ohm, 2.3 * W);
  CHECK(terminal_voltage({.emf = at_the_edge, .resistance = 0.7 * ohm, .power = 2.3 * W}) ==
        near(0.5 * at_the_edge, 1e-6));
}
TEST_CASE("time on one straight piece") {
  for (const data::Row& row : published("power", "pieces")) {
    CAPTURE(row.text("id"));
    const StraightPiece piece{.charge = row.quantity<Charge>("charge"),
                              .from = row.quantity<Voltage>("from"),
                              .to = row.quantity<Voltage>("to")};
    const auto r = row.quantity<Resistance>("resistance");
    const auto p = row.quantity<Power>("power");
    CHECK(current({.emf = piece.from, .resistance = r, .power = p}) == near(row.quantity<Current>("current"), 8e-7));
    CHECK(time_to_draw(piece, r, p) == near(row.quantity<Duration>("time"), 1e-6));
  }
}
TEST_CASE("the formula for a falling piece meets that for a level one") {
  const auto time = [](Voltage fall) {
    return time_to_draw({.charge = 2.0 * Ah, .from = 4.8 * V, .to = 4.8 * V - fall}, 0.2 * ohm, 3.0 * W);
  };
  for (double fall : {1e-9, 1e-7, 4.7e-6, 4.9e-6, 1e-4}) {
    CAPTURE(fall);
    CHECK(time(fall * V) ==
          near(time(0.0 * V), 0.5 * fall));  // the mean is half the fall lower: first order in fall / E
  }
  CHECK_THROWS_AS(time_to_draw({.charge = 2.0 * Ah, .from = 4.8 * V, .to = 5.0 * V}, 0.2 * ohm, 3.0 * W), ModelError);
}
