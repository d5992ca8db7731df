// When ours counts as inside what was measured, reached by our spread, or missed: by the meaning of an interval.
#include "data/held.hpp"
#include <doctest/doctest.h>

using namespace lumwright::data;

namespace {
HeldRow row(std::optional<double> low, std::optional<double> high, lumwright::Band<double> ours,
            double read_within = 0.0) {
  return {.id = "",
          .part = "",
          .what = "",
          .where = "",
          .unit = "",
          .low = low,
          .high = high,
          .read_within = read_within,
          .ours = ours,
          .made_of = false,
          .why = "",
          .seen = ""};
}
}  // namespace

TEST_CASE("inside what was measured, as finely as it could be read") {
  CHECK(held(row(2.0, 3.0, {2.5, 1.0, 4.0})) == Held::inside);
  CHECK(held(row(2.0, 2.0, {2.08, 2.08, 2.08}, 0.05)) == Held::inside);
  CHECK(held(row(2.0, 2.0, {2.12, 2.12, 2.12}, 0.05)) == Held::missed);
  CHECK(held(row(-3.0, -1.0, {-2.0, -2.0, -2.0})) == Held::inside);
  CHECK(held(row(2.0, std::nullopt, {9.0, 9.0, 9.0})) == Held::inside);
  CHECK(held(row(std::nullopt, 2.0, {-9.0, -9.0, -9.0})) == Held::inside);
}
TEST_CASE("our spread reaches it from either side, or jumps over it, or does not") {
  CHECK(held(row(2.0, 3.0, {1.0, 0.5, 2.1})) == Held::reached);
  CHECK(held(row(2.0, 3.0, {4.0, 2.9, 5.0})) == Held::reached);
  CHECK(held(row(2.0, 2.0, {1.0, 0.5, 9.0})) == Held::reached);
  CHECK(held(row(2.0, 2.0, {9.0, 1.0, 9.5})) == Held::reached);
  CHECK(held(row(2.0, 3.0, {1.0, 0.5, 1.9})) == Held::missed);
  CHECK(held(row(2.0, 3.0, {4.0, 3.1, 5.0})) == Held::missed);
}
TEST_CASE("how far apart, from the nearest end") {
  CHECK_FALSE(apart(row(2.0, 3.0, {2.5, 2.5, 2.5})));
  CHECK(*apart(row(2.0, 3.0, {1.0, 1.0, 1.0})) == doctest::Approx(-0.5));
  CHECK(*apart(row(2.0, 3.0, {4.5, 4.5, 4.5})) == doctest::Approx(0.5));
  CHECK(*apart(row(-3.0, -2.0, {-1.0, -1.0, -1.0})) == doctest::Approx(0.5));  // upwards is more
  CHECK_FALSE(apart(row(-1.0, 0.0, {1.0, 1.0, 1.0})));                         // no share of nought
}
