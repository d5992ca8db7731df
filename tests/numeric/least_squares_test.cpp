#include "numeric/least_squares.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <cmath>
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::numeric;

// NIST Statistical Reference Datasets, nonlinear regression, Misra1a: data, certified parameters and standard
// deviations (public domain; from memory).
TEST_CASE("certified parameters of a published nonlinear fit") {
  const std::vector<double> y = {10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02,
                                 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78},
                            x = {77.6,  114.9, 141.1, 190.8, 239.9, 289.0, 332.8,
                                 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0};
  const auto residuals = [&](const std::vector<double>& b) {
    std::vector<double> r;
    for (std::size_t i = 0; i < x.size(); ++i) r.push_back(b[0] * (1.0 - std::exp(-b[1] * x[i])) - y[i]);
    return r;
  };
  for (const std::vector<double>& start :
       {std::vector<double>{500.0, 1e-4}, {250.0, 5e-4}}) {  // the two that NIST gives
    const LeastSquaresFit fit =
        least_squares({.residuals = residuals, .start = start, .step = {1e-2, 1e-8}, .jacobian = {}});
    CHECK(fit.edge.empty());
    CHECK(fit.x[0] == near(2.3894212918e+02, 1e-6));
    CHECK(fit.x[1] == near(5.5015643181e-04, 1e-6));
    double sum = 0.0;
    for (const double r : fit.residuals) sum += r * r;
    CHECK(sum == near(1.2455138894e-01, 1e-6));
    const Matrix c = inverse(normal_matrix(fit.jacobian));
    const double variance = sum / 12.0;
    CHECK(std::sqrt(variance * c[0][0]) == near(2.7070075241, 1e-4));
    CHECK(std::sqrt(variance * c[1][1]) == near(7.2668688436e-06, 1e-4));
  }
}
TEST_CASE("a minimum behind an edge is told, not taken for one") {
  const auto residuals = [](const std::vector<double>& x) -> std::vector<double> {
    if (x[0] < 1.0) throw ModelError("x is below 1");
    return {x[0] + 3.0};
  };
  const LeastSquaresFit fit = least_squares({.residuals = residuals, .start = {2.0}, .step = {0.01}, .jacobian = {}});
  CHECK(fit.edge == "x is below 1");
  CHECK_THROWS_WITH_AS(least_squares({.residuals = residuals, .start = {0.0}, .step = {0.01}, .jacobian = {}}),
                       "x is below 1", ModelError);
}
TEST_CASE("a parameter that nothing holds is refused") {
  const auto residuals = [](const std::vector<double>& x) { return std::vector<double>{x[0] - 1.0, x[0] + 1.0}; };
  CHECK_THROWS_AS(least_squares({.residuals = residuals, .start = {0.0, 0.0}, .step = {0.1, 0.1}, .jacobian = {}}),
                  ModelError);
}
