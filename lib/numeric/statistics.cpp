#include "numeric/statistics.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <numbers>
#include <numeric>

namespace lumwright::numeric {
double quantile(std::vector<double> values, double p) {
  if (values.empty() || !(p >= 0.0 && p <= 1.0)) throw ModelError("no quantile of nothing, or beyond 0 and 1");
  const double place = p * static_cast<double>(values.size() - 1);
  const auto below = static_cast<std::ptrdiff_t>(place);
  std::nth_element(values.begin(), values.begin() + below, values.end());
  const double low = values[static_cast<std::size_t>(below)], part = place - static_cast<double>(below);
  if (part == 0.0) return low;
  const double high = *std::min_element(values.begin() + below + 1, values.end());
  return std::isfinite(high) ? low + part * (high - low) : high;
}

double normal_score(double share) { return -std::numbers::sqrt2 * boost::math::erfc_inv(2.0 * share); }
double normal_share(double score) { return 0.5 * std::erfc(-score / std::numbers::sqrt2); }

namespace {
std::size_t slices_of(std::size_t samples) {
  return static_cast<std::size_t>(std::clamp(std::cbrt(static_cast<double>(samples)) * 1.5, 5.0, 40.0));
}
}  // namespace
double share_of_nothing(std::size_t samples) {
  return std::sqrt(2.0 * static_cast<double>(slices_of(samples) - 1)) / static_cast<double>(samples);
}
double variance_share(Scatter scatter) {
  const std::size_t n = scatter.effect.size();
  if (n != scatter.cause.size()) throw ModelError("cause and effect are not of the same samples");
  if (n < 40) return 0.0;
  const auto number = static_cast<double>(n);
  const double mean = std::accumulate(scatter.effect.begin(), scatter.effect.end(), 0.0) / number;
  double whole = 0.0;
  for (const double y : scatter.effect) whole += (y - mean) * (y - mean);
  if (!(whole > 1e-24 * number * mean * mean)) return 0.0;  // rounding alone
  std::vector<std::size_t> order(n);
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return scatter.cause[a] < scatter.cause[b]; });
  const std::size_t slices = slices_of(n);
  double between = 0.0;
  for (std::size_t k = 0; k < slices; ++k) {
    const std::size_t from = k * n / slices, to = (k + 1) * n / slices;
    double sum = 0.0;
    for (std::size_t i = from; i < to; ++i) sum += scatter.effect[order[i]] - mean;
    between += sum * sum / static_cast<double>(to - from);
  }
  const double left = (whole - between) / whole * (number - 1.0) / (number - static_cast<double>(slices));
  return std::clamp(1.0 - left, 0.0, 1.0);
}
}  // namespace lumwright::numeric
