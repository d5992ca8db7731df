#include "near.hpp"
#include "power/fuse.hpp"
#include "power/leads.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <string>
using namespace lumwright;
using namespace lumwright::power;

namespace {
/// Solid annealed copper: 1/58 ohm mm2/m at 20 degC (IACS, IEC 60028).
LineResistance pure_copper(Area section) { return ohm / 58.0 * mm2 / m / section; }
constexpr Area gauge_24 = 0.20473 * mm2, gauge_22 = 0.32553 * mm2;  // ASTM B258: 0.5106 and 0.6438 mm
}  // namespace

TEST_CASE("wire by section") {
  for (const data::Row& row : published("power", "sections")) {
    CAPTURE(row.number("id"));
    CHECK(wire_resistance(row.number("id") * mm2) == near(row.quantity<LineResistance>("resistance"), 1e-12));
    // no conductor beats pure copper of its section by more than its tolerance
    CHECK(wire_resistance(row.number("id") * mm2) > pure_copper(row.number("id") * mm2));
  }
  CHECK(wire_resistance(0.6 * mm2) == near(39.0 * 0.5 / 0.6 * ohm_per_km, 1e-12));  // scaled from 0.5 mm2
  CHECK_THROWS_AS(wire_resistance(0.0 * mm2), ModelError);
}
TEST_CASE("drop in both wires") {
  // gauge 24, 0.5 m away, 0.9 A: 0.07579 V; at 60 degC the loop has 0.09745 ohm (ASTM B258, IEC 60028; hand)
  const LineResistance line = pure_copper(gauge_24);
  CHECK(0.9 * A * loop_resistance(line, 0.5 * m, degC(20.0)) == near(0.07579 * V, 1e-4));
  CHECK(loop_resistance(line, 0.5 * m, degC(60.0)) == near(0.09745 * ohm, 1e-4));
  // 0.5 mm2 class 5, 1 m away, 1 A: 0.0780 V (IEC 60228)
  CHECK(1.0 * A * loop_resistance(wire_resistance(0.5 * mm2), 1.0 * m, degC(20.0)) == near(0.0780 * V, 1e-12));
}
TEST_CASE("what a wire carries") {
  CHECK(wire_carries(0.205 * mm2, false) == near(3.5 * A, 1e-12));  // gauge 24, chassis wiring, from memory
  CHECK(wire_carries(0.205 * mm2, true) == near(1.75 * A, 1e-12));
  CHECK(wire_carries(gauge_22, false) == near(6.0 * A, 5e-3));
  // 2 A on 0.14 mm2 lets 4.2 A through for up to half an hour, which warms it by 90 K (hand): 30 K at 4.2 / sqrt(3) A
  CHECK(wire_carries(0.14 * mm2, false) == near(4.2 / std::sqrt(3.0) * A, 0.02));
  CHECK(wire_carries(0.05 * mm2, false) < 0.65 * wire_carries(0.0804 * mm2, false));  // goes on below the smallest
  CHECK(wire_carries(0.05 * mm2, false) > 0.55 * wire_carries(0.0804 * mm2, false));
  CHECK(wire_carries(2.5 * mm2, false) == near(13.0 * A, 1e-12));  // no more than the largest that is known
  for (double a = 0.02; a < 3.0; a *= 1.1) CHECK(wire_carries(1.1 * a * mm2, false) >= wire_carries(a * mm2, false));
  CHECK_THROWS_AS(wire_carries(0.0 * mm2, false), ModelError);
}
TEST_CASE("fuse for the current at the end of discharge") {
  const data::FuseRule& ul = data::fuse_rules().at(0);
  const data::FuseRule& iec = data::fuse_rules().at(1);
  CHECK(ul.continuous == 0.75);
  // 0.75 A: 0.75/0.75 = 1.0 A exactly; 0.75/0.9 = 0.83, next standard value 1.0 A
  CHECK(fuse_for(0.75 * A, ul) == near(1.0 * A, 1e-12));
  CHECK(fuse_for(0.75 * A, iec) == near(1.0 * A, 1e-12));
  CHECK(fuse_for(0.80 * A, ul) == near(1.25 * A, 1e-12));
  CHECK(fuse_for(0.95 * A, iec) == near(1.25 * A, 1e-12));
  CHECK_THROWS_AS(fuse_for(9.5 * A, iec), ModelError);
}
TEST_CASE("standard ratings and their resistance") {
  // IEC 60127 ratings, R10 series
  const double ratings[] = {0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5};
  for (std::size_t i = 0; i < std::size(ratings); ++i) CHECK(data::fuses().at(i).rating == near(ratings[i] * A, 1e-12));
  for (const data::FuseRow& row : data::fuses()) {
    CHECK(fuse_resistance(row.rating) == near(row.cold.value, 1e-9));
    // 0.03 to 0.3 V at the rating
    CHECK(row.rating * row.cold.value > 0.03 * V);
    CHECK(row.rating * row.cold.value < 0.3 * V);
  }
  CHECK(fuse_resistance(1.5 * A) < fuse_resistance(1.25 * A));
  CHECK_THROWS_AS(fuse_resistance(0.1 * A), ModelError);
}
