#include "numeric/quasi_random.hpp"
#include "near.hpp"
#include "numeric/statistics.hpp"
#include "quantity/errors.hpp"
#include <cmath>
#include <random>
#include <numbers>
#include <set>
using namespace lumwright;
using namespace lumwright::numeric;

namespace {
template <class F>
std::vector<double> over_points(const QuasiRandom& points, F f) {
  std::vector<double> out;
  for (std::size_t i = 0; i < points.count(); ++i) out.push_back(f(i));
  return out;
}
}  // namespace

TEST_CASE("every dyadic box of the first two co-ordinates holds its one point") {
  // (0,2)-sequence: Sobol 1967; scrambling keeps it: Owen 1995
  for (const std::uint64_t seed : {0U, 1U, 77U}) {
    const QuasiRandom points({256, 2}, seed);
    for (unsigned wide = 0; wide <= 8; ++wide) {
      std::set<std::pair<int, int>> seen;
      for (std::size_t i = 0; i < 256; ++i)
        seen.insert(
            {static_cast<int>(points.at(i, 0) * (1U << wide)), static_cast<int>(points.at(i, 1) * (1U << (8 - wide)))});
      CHECK(seen.size() == 256);
    }
  }
}
TEST_CASE("in each of many dimensions every sixteenth holds its sixteenth of the points") {
  const QuasiRandom points({1024, 60}, 5);
  for (std::size_t d = 0; d < 60; ++d) {
    std::vector<int> heap(16);
    for (std::size_t i = 0; i < 1024; ++i) ++heap[static_cast<std::size_t>(points.at(i, d) * 16.0)];
    for (const int count : heap) CHECK(count == 64);
  }
}
TEST_CASE("no two co-ordinates go together, however many there are") {
  // correlations of independent columns scatter by 1 / sqrt(n) = 0.031; 780 pairs, so up to four times that
  const QuasiRandom points({1000, 40}, 1);
  std::vector<std::vector<double>> columns(40);
  for (std::size_t d = 0; d < 40; ++d)
    for (std::size_t i = 0; i < 1000; ++i) columns[d].push_back(points.at(i, d));
  for (std::size_t a = 0; a < 40; ++a)
    for (std::size_t b = 0; b < a; ++b) {
      double sum = 0.0;
      for (std::size_t i = 0; i < 1000; ++i) sum += (columns[a][i] - 0.5) * (columns[b][i] - 0.5);
      CHECK(std::abs(12.0 * sum / 1000.0) < 0.13);
      CHECK(variance_share({columns[a], columns[b]}) < 0.05);
    }
}
TEST_CASE("same seed, same points; another seed, others; never 0 or 1") {
  const QuasiRandom one({500, 7}, 3), again({500, 7}, 3), other({500, 7}, 4);
  int alike = 0;
  for (std::size_t i = 0; i < 500; ++i)
    for (std::size_t d = 0; d < 7; ++d) {
      CHECK(one.at(i, d) == again.at(i, d));
      CHECK((one.at(i, d) > 0.0 && one.at(i, d) < 1.0));
      alike += one.at(i, d) == other.at(i, d);
    }
  CHECK(alike == 0);
  CHECK_THROWS_AS(QuasiRandom({10, 1001}, 0), ModelError);
}
TEST_CASE("stray co-ordinates are even and go with nothing else") {
  std::vector<double> a, b;
  std::vector<int> heap(32);
  for (std::size_t i = 0; i < 1024; ++i) {
    a.push_back(stray_coordinate(i, "one", 9));
    b.push_back(stray_coordinate(i, "two", 9));
    ++heap[static_cast<std::size_t>(a.back() * 32.0)];
  }
  for (const int count : heap) CHECK(count == 32);
  CHECK(variance_share({a, b}) < 0.05);
}

TEST_CASE("quantiles against definition 7 of Hyndman and Fan 1996") {
  CHECK(quantile({1, 2, 3, 4, 5, 6, 7, 8, 9, 10}, 0.1) == near(1.9, 1e-12));  // 1 + 0.1 * 9
  CHECK(quantile({10, 2, 3, 4, 5, 6, 7, 8, 9, 1}, 0.9) == near(9.1, 1e-12));
  CHECK(quantile({3.0}, 0.4) == 3.0);
  const double never = std::numeric_limits<double>::infinity();
  CHECK(quantile({1, 2, never, never}, 0.25) == near(1.75, 1e-12));
  CHECK(std::isinf(quantile({1, 2, never, never}, 0.9)));
  CHECK_THROWS_AS(quantile({}, 0.5), ModelError);
}
TEST_CASE("bands of a product of two uniforms and of a sum, against closed forms, to 1 %") {
  const QuasiRandom points({2048, 3}, 1);
  // X, Y on (0, 1): P(XY < z) = z - z ln z, so that the tenth lies at 0.0186 .. from the root of that
  const auto product = over_points(points, [&](std::size_t i) { return points.at(i, 0) * points.at(i, 1); });
  for (const double p : {0.1, 0.5, 0.9}) {
    const double z = quantile(product, p);
    CHECK(z - z * std::log(z) == near(p, 0.01));
  }
  // X + Y: triangle, P(X + Y < z) = z^2 / 2 below 1
  const auto sum = over_points(points, [&](std::size_t i) { return points.at(i, 0) + points.at(i, 1); });
  CHECK(quantile(sum, 0.1) == near(std::sqrt(0.2), 0.01));
  CHECK(quantile(sum, 0.9) == near(2.0 - std::sqrt(0.2), 0.01));
}
TEST_CASE("variance shares of the Ishigami function and of a sum") {
  // Ishigami and Homma 1990 with a = 7, b = 0.1: first-order shares 0.3139, 0.4424, 0 (Saltelli et al., Global
  // Sensitivity Analysis: The Primer, 2008, from memory; they follow from the closed form as well)
  const QuasiRandom points({4096, 3}, 2);
  const auto angle = [&](std::size_t i, std::size_t d) { return std::numbers::pi * (2.0 * points.at(i, d) - 1.0); };
  const auto y = over_points(points, [&](std::size_t i) {
    return std::sin(angle(i, 0)) + 7.0 * std::pow(std::sin(angle(i, 1)), 2) +
           0.1 * std::pow(angle(i, 2), 4) * std::sin(angle(i, 0));
  });
  const double expected[] = {0.3139, 0.4424, 0.0};
  for (std::size_t d = 0; d < 3; ++d) {
    const auto x = over_points(points, [&](std::size_t i) { return points.at(i, d); });
    CHECK(std::abs(variance_share({x, y}) - expected[d]) < 0.02);
  }
  // 3 X + 4 Y + 0 Z: shares 9/25, 16/25, 0, by algebra
  const auto linear = over_points(points, [&](std::size_t i) { return 3.0 * points.at(i, 0) + 4.0 * points.at(i, 1); });
  const double shares[] = {0.36, 0.64, 0.0};
  for (std::size_t d = 0; d < 3; ++d) {
    const auto x = over_points(points, [&](std::size_t i) { return points.at(i, d); });
    CHECK(std::abs(variance_share({x, linear}) - shares[d]) < 0.01);
  }
  CHECK(variance_share({y, std::vector<double>(y.size(), 5.0)}) == 0.0);
}
TEST_CASE("the share of what has nothing to do with it scatters as the F-ratio says") {  // library: std::mt19937_64
  std::mt19937_64 random(11);
  std::uniform_real_distribution<double> any(0.0, 1.0);
  for (const std::size_t n : {std::size_t{100}, std::size_t{1000}}) {
    std::vector<double> shares;
    for (int trial = 0; trial < 600; ++trial) {
      std::vector<double> x(n), y(n);
      for (std::size_t i = 0; i < n; ++i) x[i] = any(random), y[i] = any(random);
      shares.push_back(variance_share({x, y}));
    }
    // clamped at nought, the upper half alone tells: 84 in 100 of a normal scatter lie under one deviation
    CHECK(quantile(shares, 0.84) == doctest::Approx(share_of_nothing(n)).epsilon(0.25));
    CHECK(quantile(shares, 0.995) < 4.0 * share_of_nothing(n));
  }
}
