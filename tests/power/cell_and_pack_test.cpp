#include "near.hpp"
#include "power/cell.hpp"
#include "power/pack.hpp"
#include "published_packs.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::power;

TEST_CASE("capacity against current") {
  // 1.3 Ah over 20 h, k 1.15, at 0.5 A: 20 h (0.065/0.5)^1.15 = 1.91454 h (Peukert 1897; hand)
  const Rating block{.capacity = 1.3 * Ah, .current = 65.0 * mA, .exponent = 1.15};
  CHECK(time_at(block, 0.5 * A) == near(1.91454 * hour, 3e-6));
  CHECK(capacity_at(block, 10.0 * mA) == near(1.3 * Ah, 1e-12));  // below the rated current the law does not speak
  CHECK(capacity_at({.capacity = 2.0 * Ah, .current = 0.4 * A, .exponent = 1.0}, 5.0 * A) == near(2.0 * Ah, 1e-12));
  CHECK_THROWS_WITH_AS(capacity_at({.capacity = 2.0 * Ah, .current = 0.4 * A, .exponent = 0.9}, 1.0 * A),
                       "rate exponent 0.900 is not between 1 and 2", ModelError);
  for (const data::Row& row : published("power", "rates")) {
    CAPTURE(row.text("id"));
    const std::vector<Current> i = row.list<Current>("currents");
    const std::vector<Charge> q = row.list<Charge>("charges");
    const double k = rate_exponent({i[0], q[0]}, {i[1], q[1]});
    CHECK(k == near(row.number("exponent"), 5e-5));
    CHECK(capacity_at({.capacity = q[0], .current = i[0], .exponent = k}, i[1]) == near(q[1], 1e-9));
    const data::CellRow& cell = data::cell(row.text("id"));  // the program's own value lies by it
    CHECK(cell.rate_exponent.value == near(k, 4e-3));
  }
}

TEST_CASE("resistance from a pulse") {
  // alkaline AA, 5 -> 505 mA, 1.485 -> 1.378 V: 0.214 ohm (a maker's technical bulletin, December 2005)
  CHECK(pulse_resistance({5.0 * mA, 1.485 * V}, {505.0 * mA, 1.378 * V}) == near(0.214 * ohm, 1e-9));
  CHECK_THROWS_AS(pulse_resistance({505.0 * mA, 1.378 * V}, {5.0 * mA, 1.485 * V}), ModelError);
}

TEST_CASE("cold and shelf time") {
  const data::ChemistryRow& nimh = data::cell("NiMH AA").chemistry;
  CHECK(temperature_factors(nimh, degC(20.0)).capacity == 1.0);
  // NiMH keeps 85 to 90 % of its capacity at 0 degC and 70 to 80 % at -10 degC; resistance x1.3 and x2
  // (Linden's Handbook of Batteries, from memory)
  CHECK(temperature_factors(nimh, degC(0.0)).capacity == near(0.875, 0.03));
  CHECK(temperature_factors(nimh, degC(-10.0)).resistance == near(2.0, 1e-12));
  CHECK(temperature_factors(nimh, degC(-5.0)).resistance == near(1.65, 1e-12));
  CHECK_THROWS_WITH_AS(temperature_factors(nimh, degC(75.0)),
                       "temperature 75.0 degC of NiMH cells is not between -20.0 degC and 60.0 degC", ModelError);
  // low-self-discharge NiMH: 85 % left after a year at 1.3 % a month, without the first day's loss (makers, from
  // memory)
  data::ChemistryRow lazy = nimh;
  lazy.loss_on_first_day = 0.0;
  CHECK(charge_kept(lazy, 0.013, 365.25 * 24.0 * hour, degC(20.0)) == near(0.85, 0.01));
  // lead-acid: loss doubles per 10 K, so two weeks at 30 degC are four at 20 degC (from memory)
  const data::ChemistryRow& lead = data::cell("lead-acid 12 V 7 Ah").chemistry;
  const Duration week = 168.0 * hour;
  CHECK(charge_kept(lead, 0.03, 2.0 * week, degC(30.0)) ==
        near(charge_kept(lead, 0.03, 4.0 * week, degC(20.0)), 1e-12));
  for (const data::CellRow& cell : data::cells()) CHECK(charge_kept(cell.chemistry, 0.03, 0.0 * s, degC(20.0)) == 1.0);
}

TEST_CASE("every row of the cell table makes a sane pack") {
  for (const data::CellRow& cell : data::cells()) {
    CAPTURE(cell.id);
    CHECK(cell.soc.front() == 0.0);
    CHECK(cell.soc.back() == 1.0);
    CHECK(cell.chemistry.end < cell.chemistry.nominal);
    const Pack pack = make_pack(plain_pack(cell, 1, cell.capacity.value));
    check(pack.curve);
    CHECK(pack.curve.voltage.front() >= pack.curve.voltage.back());
    if (cell.bank) continue;
    // nominal voltage lies where the curve spends its time
    const Voltage inside = static_cast<double>(cell.cells_inside) * cell.chemistry.nominal;
    CHECK(pack.curve.at(0.5 * cell.capacity.value) == near(inside, 0.14));
    CHECK(temperature_factors(cell.chemistry, degC(-20.0)).capacity <
          temperature_factors(cell.chemistry, degC(0.0)).capacity);
  }
  CHECK_THROWS_WITH_AS(data::cell("NiMH ABC"), "no cell is called `NiMH ABC`", ModelError);
}

TEST_CASE("series, parallel, age and resistance add up as a circuit does") {
  PackInput input = plain_pack(data::cell("NiMH AA"), 5, 2.0 * Ah);
  input.parallel = 2;
  input.contacts = 40.0 * mohm;
  input.outside = 0.1 * ohm;
  input.cell_resistance = 30.0 * mohm;
  input.resistance_factor = 2.0;
  input.capacity_factor = 0.7;
  const Pack pack = make_pack(input);
  CHECK(pack.full == near(2.8 * Ah, 1e-12));
  CHECK(pack.resistance() == near(0.290 * ohm, 1e-12));  // 5/2 * 30 * 2 + 40 + 100 mohm
  CHECK(pack.rated_current == near(0.8 * A, 1e-12));     // 0.2 It of the label, two in parallel
  CHECK(pack.curve.voltage.front() == near(5.0 * 1.445 * V, 1e-12));
  input.measured = 0.2 * ohm;  // stands for cells and contacts, not for the leads
  CHECK(make_pack(input).resistance() == near(0.3 * ohm, 1e-12));
  input.temperature = degC(-10.0);
  CHECK(make_pack(input).full == near(0.75 * 2.8 * Ah, 1e-12));
  CHECK(make_pack(input).resistance() == near(0.3 * ohm, 1e-12));  // measured as it is
}

TEST_CASE("a short at the battery") {
  // 4 AA NiMH fresh 5.2 V over 0.2 ohm 26 A; one 18650 4.2 V over 0.06 ohm 70 A: E/R (hand)
  Pack pack = make_pack(plain_pack(data::cell("NiMH AA"), 4, 2.0 * Ah));
  pack.curve.voltage.front() = 5.2 * V;
  pack.inside = 0.2 * ohm;
  CHECK(short_behind_leads(pack) == near(26.0 * A, 1e-12));
  pack.curve.voltage.front() = 4.2 * V;
  pack.inside = 0.06 * ohm;
  CHECK(short_behind_leads(pack) == near(70.0 * A, 1e-12));
}

TEST_CASE("the cut-out that spares the weakest cell") {
  // makers' rule for NiMH packs of 7 to 12 cells: 1.2 V (N - 1); 3.6 V for four, 10.8 V for ten
  CHECK(reversal_voltage(4, 1.2 * V) == near(3.6 * V, 1e-12));
  CHECK(reversal_voltage(10, 1.2 * V) == near(10.8 * V, 1e-12));
}

TEST_CASE("a power bank is 5 V flat with the energy of its label") {
  // 10 Ah on the label give 30 to 33 Wh at the socket, 5.8 to 6.5 Ah at 5 V (labels, from memory)
  const data::CellRow& bank = data::cell("power bank");
  CHECK(bank_energy(bank, 10.0 * Ah) == near(31.5 * Wh, 0.05));
  const Pack pack = make_pack(plain_pack(bank, 1, 10.0 * Ah));
  CHECK(pack.full == near(6.15 * Ah, 0.057));
  // with the small board and a 12 V 0.15 A fan: 0.41 A and 924 min, integrated outside this project
  const Run run = discharge(pack, stepped_up("small 1.2 MHz", 12.0 * V, 0.15 * A), {});
  CHECK(run.start.current == near(0.41 * A, 0.012));
  CHECK(run.runtime == near(924.0 * minute, 1e-3));
  CHECK(run.reason == StopReason::empty);
  PackInput two = plain_pack(bank, 2, 10.0 * Ah);
  CHECK_THROWS_WITH_AS(make_pack(two), "power banks in series 2 are not 1", ModelError);
  CHECK_THROWS_AS(bank_energy(data::cell("NiMH AA"), 2.0 * Ah), ModelError);
  CHECK_THROWS_AS(short_behind_leads(pack), ModelError);
}

TEST_CASE("a pack is refused by name and value") {
  const PackInput good = plain_pack(data::cell("NiMH AA"), 4, 2.0 * Ah);
  PackInput bad = good;
  bad.series = 0;
  CHECK_THROWS_WITH_AS(make_pack(bad), "cells in series 0 are below 1", ModelError);
  bad = good;
  bad.capacity = -1.0 * Ah;
  CHECK_THROWS_WITH_AS(make_pack(bad), "capacity of a cell -1 Ah is not above zero", ModelError);
  bad = good;
  bad.charged = 1.2;
  CHECK_THROWS_WITH_AS(make_pack(bad), "charged share 1.2 is not between 0 and 1", ModelError);
  bad = good;
  bad.weakest = 0.5;
  bad.series = 1;
  CHECK_THROWS_AS(make_pack(bad), ModelError);
}
