#include "power/fan_supply.hpp"
#include "near.hpp"
#include "published_packs.hpp"
#include <cmath>
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::power;

TEST_CASE("a fan motor on steady and on chopped voltage") {
  for (const data::Row& row : published("power", "motor")) {
    CAPTURE(row.text("id"));
    const auto v = row.quantity<Voltage>("voltage");
    const MotorState state = motor_state(data::motor_shares(), in(v, 12.0 * V), row.number("duty"));
    CHECK(std::abs(state.speed - row.number("speed")) < 5.01e-4);
    CHECK(12.0 * V * 0.20 * A * state.current == near(row.quantity<Power>("supply"), 6.6e-4));
    CHECK(state.speed >= row.number("duty") * in(v, 12.0 * V) * 0.999);  // D. Alfano, AN772 (2004): above the duty
  }
  const MotorState rated = motor_state(data::motor_shares(), 1.0, 1.0);
  CHECK(rated.speed == near(1.0, 1e-12));  // shares are of rated values: identity
  CHECK(rated.current == near(1.0, 1e-12));
  CHECK_THROWS_WITH_AS(motor_state(data::motor_shares(), 1.0, 0.03), "duty 0.0300 leaves the fan standing still",
                       ModelError);
}

TEST_CASE("controls and what they take") {
  FanSupply supply = stepped_up("small 1.2 MHz", 12.0 * V, 0.20 * A);
  const SupplyState full = supply_state(supply, 5.0 * V);
  CHECK(full.fan == near(2.4 * W, 1e-12));
  CHECK(full.step_up->efficiency == near(0.878, 0.005));

  supply.control = {.kind = Control::Kind::chopped_supply, .duty = 0.5, .voltage = 0.0 * V};
  const SupplyState chopped = supply_state(supply, 5.0 * V);
  CHECK(chopped.speed == near(0.8367, 1e-4));
  CHECK(chopped.from_output == near(1.788 * W, 1e-3));
  CHECK(chopped.on_share == 1.0);  // the step-up's capacitor carries the ripple
  CHECK(chopped.drawn < full.drawn);

  // fan laws: two thirds of the voltage, (2/3)^3 of the power (ISO 5801 similarity, current with the square of voltage)
  supply.control = {.kind = Control::Kind::lower_output, .duty = 1.0, .voltage = 8.0 * V};
  const SupplyState lower = supply_state(supply, 5.0 * V);
  CHECK(lower.fan == near(2.4 * W * 8.0 / 27.0, 1e-9));
  CHECK(lower.step_up->output == near(8.0 * V, 1e-12));
  CHECK(lower.from_output == near(lower.fan, 1e-12));

  // a linear regulator carries the fan's current from the full 12 V: efficiency is the ratio of the voltages
  supply.control = {.kind = Control::Kind::series_regulator, .duty = 1.0, .voltage = 8.0 * V};
  const SupplyState linear = supply_state(supply, 5.0 * V);
  CHECK(linear.fan == near(lower.fan, 1e-12));
  CHECK(linear.from_output == near(1.5 * lower.fan, 1e-12));
  CHECK(linear.drawn > lower.drawn);
}

TEST_CASE("controls on the pack itself") {
  FanSupply supply = fan_supply(12.0 * V, 0.15 * A);
  CHECK(supply_state(supply, 14.4 * V).drawn == near(0.216 * A, 1e-12));  // 0.15 * 1.2^2
  supply.control = {.kind = Control::Kind::lower_output, .duty = 1.0, .voltage = 9.0 * V};
  CHECK_THROWS_WITH_AS(supply_state(supply, 14.4 * V), "lowered output 9.00 V needs a step-up to lower", ModelError);
  supply.control = {.kind = Control::Kind::series_regulator, .duty = 1.0, .voltage = 12.0 * V};
  CHECK(supply_state(supply, 14.4 * V).fan_voltage == near(12.0 * V, 1e-12));
  CHECK(supply_state(supply, 11.0 * V).fan_voltage == near(10.5 * V, 1e-12));  // less its dropout of 0.5 V
  supply.control = {.kind = Control::Kind::chopped_supply, .duty = 1.7, .voltage = 0.0 * V};
  CHECK_THROWS_WITH_AS(supply_state(supply, 12.0 * V), "duty 1.7 is not between 0 and 1", ModelError);
}

TEST_CASE("a chopped lead loads the pack's resistance in pulses") {
  // level 12 V behind 2 ohm, duty 1/2: in the on-time the winding of 15 ohm has 2 ohm more. Solved by hand with winding
  // 17 ohm: n = (-D b + sqrt(D^2 b^2 + 4 a R (D V - i0 R)))/(2 a R), b = 9, a = 0.17, i0 = 0.03 -> 0.81449; mean 0.03 +
  // 0.17 n^2
  FanSupply supply = fan_supply(12.0 * V, 0.20 * A);
  supply.control = {.kind = Control::Kind::chopped_supply, .duty = 0.5, .voltage = 0.0 * V};
  const Pack pack{.curve = {.drawn = {0.0 * Ah, 1.0 * Ah}, .voltage = {12.0 * V, 12.0 * V}},
                  .inside = 2.0 * ohm,
                  .outside = 0.0 * ohm,
                  .full = 1.0 * Ah,
                  .drawn = 0.0 * Ah,
                  .rated_current = 0.2 * A,
                  .rate_exponent = 1.0,
                  .weak = {}};
  const double b = 0.5 * 9.0, aR = 0.17 * 17.0;
  const double n = (-b + std::sqrt(b * b + 4.0 * aR * (6.0 - 0.03 * 17.0))) / (2.0 * aR);
  const Current mean = (0.03 + 0.17 * n * n) * A;
  const Run run = discharge(pack, supply, {});
  CHECK(run.start.current == near(mean, 1e-9));
  CHECK(run.runtime == near(1.0 * Ah / mean, 1e-9));
  CHECK(run.start.voltage == near(12.0 * V - 2.0 * mean / 0.5 * ohm, 1e-9));
}

TEST_CASE("three lithium cells behind a step-up: passed through first, boosted later") {
  // 12.56 V open is above 12 V + 0.45 V of diode at first; the pack sinks through that later
  const Pack pack = make_pack([] {
    PackInput in = plain_pack(data::cell("Li-ion 18650"), 3, 2.6 * Ah);
    in.measured = 0.1 * ohm;
    return in;
  }());
  FanSupply supply = stepped_up("small 1.2 MHz", 12.0 * V, 0.15 * A);
  CHECK(supply_state(supply, 12.5 * V).step_up->passes_through);
  CHECK(supply_state(supply, 12.5 * V).fan_voltage == near(12.05 * V, 1e-12));
  const Run run = discharge(pack, supply, 9.0 * V);
  CHECK(run.reason == StopReason::stop_at);
  CHECK(run.end.current > run.start.current);
  // 28 Wh in the cells, 1.8 W at 0.88 to 0.97: between 13 and 15 hours
  CHECK(run.runtime > 13.0 * hour);
  CHECK(run.runtime < 15.5 * hour);
  for (std::size_t i = 1; i < run.series.size(); ++i) CHECK(run.series[i].time > run.series[i - 1].time);
}
