#include "numeric/cube_root.hpp"
#include "near.hpp"
#include <cmath>
#include <limits>
#include <random>
using namespace lumwright::numeric;

TEST_CASE("the cube root is the C library's, over all sizes of number") {
  std::mt19937 random(3);
  std::uniform_real_distribution<double> logarithm(-700.0, 700.0);
  for (int i = 0; i < 20000; ++i) {
    const double x = std::exp(logarithm(random));
    CHECK(cube_root(x) == lumwright::near(std::cbrt(x), 2e-15));
    CHECK(sixth_root(x) == lumwright::near(std::cbrt(std::sqrt(x)), 2e-15));
  }
  for (const double x : {0.0, -8.0, 5e-324, 1e308}) CHECK(cube_root(x) == std::cbrt(x));
  CHECK(std::isnan(cube_root(std::numeric_limits<double>::quiet_NaN())));
}
