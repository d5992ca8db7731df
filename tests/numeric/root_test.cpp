#include "numeric/root.hpp"
#include "near.hpp"
#include <cmath>
#include <limits>
#include <vector>
using namespace lumwright;
using namespace lumwright::numeric;

TEST_CASE("roots of equations whose solution is known") {
  // identity: cos x = x has the root 0.7390851332151607 (OEIS A003957); x^3 - 2x - 5 has 2.0945514815423265 (Wallis's
  // example, OEIS A007493)
  CHECK(bracketed_root([](double x) { return std::cos(x) - x; }, 0, 1) == near(0.7390851332151607, 1e-14));
  CHECK(bracketed_root([](double x) { return x * x * x - 2 * x - 5; }, 2, 3) == near(2.0945514815423265, 1e-14));
  CHECK(bracketed_root([](double x) { return std::exp(x) - 1e-9; }, -100, 0) == near(std::log(1e-9), 1e-13));
}
TEST_CASE("a root at an end is found, and so is one in a very flat place") {
  CHECK(bracketed_root([](double x) { return x - 2; }, 2, 5) == 2.0);
  CHECK(bracketed_root([](double x) { return x - 5; }, 2, 5) == 5.0);
  const double flat = bracketed_root([](double x) { return std::pow(x - 1, 9); }, 0, 3);
  CHECK(std::abs(flat - 1) < 1e-2);
}
TEST_CASE("no sign change, or no number, is a ModelError that names the unknown") {
  const auto square = [](double x) { return x * x + 1; };
  CHECK_THROWS_WITH_AS(bracketed_root(square, 0, 2, "duty point"), "no duty point between 0.000000 and 2.000000",
                       ModelError);
  const double nan = std::numeric_limits<double>::quiet_NaN(), inf = std::numeric_limits<double>::infinity();
  CHECK_THROWS_AS(bracketed_root([&](double x) { return x > 1 ? nan : -1.0; }, 0, 2), ModelError);
  CHECK_THROWS_AS(bracketed_root([&](double x) { return x > 1 ? inf : -1.0; }, 0, 2), ModelError);
}
