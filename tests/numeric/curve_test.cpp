#include "numeric/curve.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <cmath>
#include <limits>
#include <random>
using namespace lumwright;
using namespace lumwright::numeric;

TEST_CASE("straight pieces pass through their points and go on beyond them") {
  const LinearCurve curve({0, 1, 3}, {2, 4, 0});
  CHECK(curve(0) == 2.0);
  CHECK(curve(0.5) == 3.0);
  CHECK(curve(2) == 2.0);
  CHECK(curve(3) == 0.0);
  CHECK(curve(4) == -2.0);
  CHECK(curve(-1) == 0.0);
  CHECK(curve.slope(0.5) == 2.0);
  CHECK(curve.slope(10) == -2.0);
  const LinearCurve constant({5}, {7});
  CHECK(constant(-100) == 7.0);
  CHECK(constant.slope(3) == 0.0);
}
TEST_CASE("a curve without order, numbers or points is a ModelError") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_AS(LinearCurve({}, {}), ModelError);
  CHECK_THROWS_AS(LinearCurve({1, 2}, {1}), ModelError);
  CHECK_THROWS_AS(LinearCurve({1, 1}, {1, 2}), ModelError);
  CHECK_THROWS_AS(LinearCurve({2, 1}, {1, 2}), ModelError);
  CHECK_THROWS_AS(LinearCurve({1, 2}, {1, nan}), ModelError);
  CHECK_THROWS_AS(LinearCurve({1, nan}, {1, 2}), ModelError);
  CHECK_THROWS_AS(MonotoneCurve({2, 1, 3, 4}, {1, 2, 3, 4}), ModelError);
}
TEST_CASE("a smooth curve through straight data is straight") {
  const MonotoneCurve curve({0, 1, 2.5, 4, 7}, {1, 3, 6, 9, 15});
  for (double x = -1; x < 9; x += 0.13) CHECK(curve(x) == near(1 + 2 * x, 1e-13));
}
TEST_CASE("a smooth curve keeps the order of its data: no bump between points, the dip of a stall stays a dip") {
  // property, Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238: between two points the interpolant stays between
  // them
  std::mt19937 random(20);
  std::uniform_real_distribution<double> step(0.1, 2.0), height(-5.0, 5.0);
  for (int trial = 0; trial < 200; ++trial) {
    std::vector<double> x{0}, y{height(random)};
    for (int i = 0; i < 7; ++i) {
      x.push_back(x.back() + step(random));
      y.push_back(height(random));
    }
    const MonotoneCurve curve(x, y);
    for (std::size_t i = 0; i + 1 < x.size(); ++i) {
      CHECK(curve(x[i]) == near(y[i], 1e-12));
      for (double share : {0.01, 0.3, 0.5, 0.77, 0.99}) {
        const double value = curve(x[i] + share * (x[i + 1] - x[i]));
        CHECK(value >= std::min(y[i], y[i + 1]) - 1e-12);
        CHECK(value <= std::max(y[i], y[i + 1]) + 1e-12);
      }
    }
  }
}
TEST_CASE("fewer than four points are joined by straight pieces") {
  const MonotoneCurve curve({0, 1, 2}, {0, 1, 0});
  CHECK(curve(0.25) == 0.25);
  CHECK(curve(1.75) == 0.25);
  CHECK(curve(3) == -1.0);
}
