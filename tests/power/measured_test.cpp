// Predictions against measured discharges. The lithium iron phosphate records lie in tests/published/ with their
// licence.
#include "near.hpp"
#include "published_packs.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <fstream>
#include <sstream>
#include <string>
using namespace lumwright;
using namespace lumwright::power;

namespace {
struct Record {
  std::vector<Charge> out;
  std::vector<Voltage> voltage;
};
Record record(const std::string& name) {
  std::ifstream file(std::string(SOURCE_DIR) + "/tests/published/discharge_18650_lfp_2Ah_" + name + ".csv");
  REQUIRE(file);
  Record out;
  std::string line;
  while (std::getline(file, line)) {
    if (line.empty() || line[0] == '#' || line[0] == 't') continue;
    std::istringstream in(line);
    double time = 0, current = 0, volts = 0, ah = 0;
    char comma = 0;
    in >> time >> comma >> current >> comma >> volts >> comma >> ah;
    out.out.push_back(ah * Ah);
    out.voltage.push_back(volts * V);
  }
  return out;
}
/// The charge given until the voltage first reads `end`.
Charge charge_to(const Record& r, Voltage end) {
  for (std::size_t i = 0; i < r.out.size(); ++i)
    if (r.voltage[i] <= end) return r.out[i];
  return r.out.back();
}
/// A series regulator without dropout, set below any voltage of the run, draws one current.
FanSupply one_current(Current i) {
  FanSupply supply = fan_supply(0.1 * V, i);
  supply.control = {.kind = Control::Kind::series_regulator, .duty = 1.0, .voltage = 0.1 * V};
  supply.regulator_dropout = 0.0 * V;
  return supply;
}
struct Rate {
  std::string name;
  Current current;
};
const Rate rates[] = {{"Co2", 1.0 * A}, {"1C", 2.0 * A}, {"2C", 4.0 * A}};

/// The slowest record as the open-circuit curve; 3 mV of noise taken out by never letting it rise.
Pack pack_from_slowest(double exponent) {
  const Record slow = record("Co20");
  Pack pack{.curve = {},
            .inside = 0.06 * ohm,
            .outside = 0.0 * ohm,
            .full = slow.out.back(),
            .drawn = 0.0 * Ah,
            .rated_current = 0.1004 * A,
            .rate_exponent = exponent,
            .weak = {}};
  for (std::size_t i = 0; i < slow.out.size(); ++i) {
    if (i > 0 && !(slow.out[i] > pack.curve.drawn.back())) continue;
    pack.curve.drawn.push_back(slow.out[i]);
    pack.curve.voltage.push_back(i == 0 ? slow.voltage[i] : std::min(slow.voltage[i], pack.curve.voltage.back()));
  }
  return pack;
}
}  // namespace

TEST_CASE("one resistance behind the cell's own slow curve promises too much, by a known amount") {
  // About-Energy BPX parameterisation data, 18650 LiFePO4 2 Ah, 25 degC, to 2.0 V. Over-prediction found outside this
  // project with 0.06 ohm: +3.4, +6.7, +9.4 % at 1, 2 and 4 A
  const double promised[] = {1.034, 1.067, 1.094};
  for (std::size_t i = 0; i < 3; ++i) {
    CAPTURE(rates[i].name);
    const Charge measured = charge_to(record(rates[i].name), 2.0 * V);
    const Run run = discharge(pack_from_slowest(1.0), one_current(rates[i].current), 2.0 * V);
    CHECK(run.runtime * rates[i].current == near(promised[i] * measured, 0.005));
  }
}
TEST_CASE("with the rate exponent applied it comes out within three per cent") {
  for (const Rate& rate : rates) {
    CAPTURE(rate.name);
    const Charge measured = charge_to(record(rate.name), 2.0 * V);
    const Run run = discharge(pack_from_slowest(1.025), one_current(rate.current), 2.0 * V);
    CHECK(run.runtime * rate.current == near(measured, 0.03));
  }
}
TEST_CASE("the cell table predicts the measured cell inside the stated band") {
  // curve of another maker's 1.2 Ah cell, label 2.0 Ah, 0.06 ohm, exponent 1.025: -15/+5 % is what is promised for a
  // new cell
  const data::CellRow& cell = data::cell("LiFePO4 18650");
  PackInput input = plain_pack(cell, 1, 2.0 * Ah);
  input.rate_exponent = cell.rate_exponent.value;
  for (const Rate& rate : rates) {
    CAPTURE(rate.name);
    const Charge measured = charge_to(record(rate.name), 2.0 * V);
    const double ratio =
        in(discharge(make_pack(input), one_current(rate.current), 2.0 * V).runtime * rate.current, measured);
    CAPTURE(ratio);
    CHECK(ratio > 1.0 / 1.15);
    CHECK(ratio < 1.05);
  }
}
TEST_CASE("a 9 V alkaline block at 0.6 W") {
  const data::Row row = published("power", "block").front();
  const Power mean = row.quantity<Energy>("energy") / row.quantity<Duration>("time");
  CHECK(mean == near(row.quantity<Power>("mean_power"), 1e-3));
  // The block's capacity and resistance were set on this record: this holds rate law, curve and resistance together
  const data::CellRow& cell = data::cell("alkaline 6LR61");
  PackInput input = plain_pack(cell, 1, cell.capacity.value);
  input.rate_exponent = cell.rate_exponent.value;
  const Run run = discharge(make_pack(input), mean, row.quantity<Voltage>("end"));
  CHECK(run.runtime == near(row.quantity<Duration>("time"), 0.10));
  CHECK(run.reason == StopReason::stop_at);
}
TEST_CASE("alkaline AA at 0.5 A gives what testers found") {
  // 1.17 to 1.31 Ah to 0.1 V (independent laboratory page); to 0.9 V about 0.85 to 0.9 of that (from memory): 0.99
  // to 1.18 Ah
  const data::CellRow& cell = data::cell("alkaline AA");
  PackInput input = plain_pack(cell, 1, cell.capacity.value);
  input.rate_exponent = cell.rate_exponent.value;
  const Charge given = discharge(make_pack(input), one_current(0.5 * A), 0.9 * V).runtime * 0.5 * A;
  CHECK(given == near(1.08 * Ah, 0.10));
}
