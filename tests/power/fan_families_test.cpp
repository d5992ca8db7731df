#include "data/speed_control.hpp"
#include "near.hpp"
#include "power/fan_supply.hpp"
#include "published.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::power;

TEST_CASE("two published fans take power with the 2.1th power of voltage") {
  const double exponent = data::fan_electrics().current_exponent.value;
  for (const data::Row& row : published("fan_families", "power")) {
    CAPTURE(row.text("id"));
    const auto volts = row.list<Voltage>("voltage");
    const auto powers = row.list<Power>("power");
    const FanLaw fan{.rated_voltage = volts[1], .rated_current = powers[1] / volts[1], .current_exponent = exponent};
    for (std::size_t i = 0; i < 3; ++i) {
      const Power power = volts[i] * fan_current(fan, volts[i]);
      CHECK(power == near(powers[i], row.number("tolerance")));
    }
  }
}
