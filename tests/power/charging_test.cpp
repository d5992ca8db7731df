// Charging by hand values: charge to put back over the current, and the tail.
#include "power/charging.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::power;

TEST_CASE("NiMH by the clock: 14 hours at a tenth of its capacity, lithium in proportion with its tail") {
  // common practice: 14 to 16 h at 0.1 It (IEC 61951-2 asks 16 h, from memory): 1.4 times the charge
  const data::ChargingRow& nimh = data::charging("NiMH");
  CHECK(charging_time(nimh, {.full = 2.0 * Ah, .missing = 1.0, .charger = 0.2 * A}) == near(14.0 * hour, 1e-9));
  CHECK(charging_time(nimh, {.full = 2.0 * Ah, .missing = 0.25, .charger = 0.2 * A}) == near(3.5 * hour, 1e-9));
  // hand: 2.4 Ah x 1.02 / 1.2 A = 2.04 h, and an hour in which the current falls; a quarter of it: 0.51 h and half of
  // that
  const data::ChargingRow& lithium = data::charging("Li-ion");
  CHECK(charging_time(lithium, {.full = 2.4 * Ah, .missing = 1.0, .charger = 1.2 * A}) == near(3.04 * hour, 1e-9));
  CHECK(charging_time(lithium, {.full = 2.4 * Ah, .missing = 0.25, .charger = 1.2 * A}) == near(1.01 * hour, 1e-9));
}
TEST_CASE("what is never charged, and what asks for nonsense") {
  CHECK_THROWS_AS(charging_time(data::charging("alkaline"), {.full = 2.0 * Ah, .missing = 1.0, .charger = 0.2 * A}),
                  ModelError);
  CHECK_THROWS_AS(data::charging("zinc-air"), ModelError);
  const data::ChargingRow& nimh = data::charging("NiMH");
  CHECK_THROWS_AS(charging_time(nimh, {.full = 2.0 * Ah, .missing = 1.1, .charger = 0.2 * A}), ModelError);
  CHECK_THROWS_AS(charging_time(nimh, {.full = 2.0 * Ah, .missing = 1.0, .charger = 0.0 * A}), ModelError);
}
TEST_CASE("limits by hand, and how soon a forgotten step-up empties the pack") {
  CHECK(charging_limit(data::charging("NiMH"), 2.0 * Ah, true) == near(2.0 * A, 1e-12));
  CHECK(charging_limit(data::charging("NiMH"), 2.0 * Ah, false) == near(0.2 * A, 1e-12));
  CHECK(charging_limit(data::charging("Li-ion"), 2.0 * Ah, false) == 0.0 * A);
  CHECK(emptied_in(2.4 * Ah, 4.0 * mA) == near(600.0 * hour, 1e-12));
  CHECK_THROWS_AS(emptied_in(2.4 * Ah, 0.0 * A), ModelError);
}
