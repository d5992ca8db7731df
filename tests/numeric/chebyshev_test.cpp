#include "numeric/chebyshev.hpp"
#include "near.hpp"
#include <array>
#include <cmath>
using namespace lumwright::numeric;

TEST_CASE("polynomials through Chebyshev's points close in on smooth functions as fast as theory says") {
  // Runge's function, whose poles at +-i/5 set the rate: the error of degree n falls as (1/5 + sqrt(1 + 1/25))^-n
  // (Trefethen, Approximation Theory and Approximation Practice, 2013, theorem 8.2); from memory
  const auto runge = [](double x) { return std::array{1.0 / (1.0 + 25.0 * x * x)}; };
  const ChebyshevPieces<1, 8> coarse({-1.0, 1.0}, runge);
  const ChebyshevPieces<1, 24> fine({-1.0, 1.0}, runge);
  double worst_coarse = 0.0, worst_fine = 0.0;
  for (double x = -1.0; x <= 1.0; x += 1e-3) {
    worst_coarse = std::max(worst_coarse, std::abs(coarse(x)[0] - runge(x)[0]));
    worst_fine = std::max(worst_fine, std::abs(fine(x)[0] - runge(x)[0]));
  }
  const double rate = std::pow(worst_coarse / worst_fine, 1.0 / 16.0);
  CHECK(rate == lumwright::near(0.2 + std::sqrt(1.04), 0.02));
}

TEST_CASE("several functions on pieces of unlike widths: right in every piece, its ends and the joints") {
  const auto f = [](double x) { return std::array{std::exp(x), std::abs(x - 1.0), std::sin(3.0 * x)}; };
  const ChebyshevPieces<3, 12> chart({0.0, 0.1, 1.0, 1.2, 2.0, 3.0}, f);
  for (double x = 0.0; x <= 3.0; x += 1.0 / 128.0) {
    CAPTURE(x);
    for (std::size_t n = 0; n < 3; ++n) CHECK(chart(x)[n] == doctest::Approx(f(x)[n]).epsilon(1e-9));
  }
  for (const double x : {0.0, 0.1, 1.0, 1.2, 3.0}) CHECK(chart(x)[0] == lumwright::near(std::exp(x), 1e-9));
}
