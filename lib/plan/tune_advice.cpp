#include "plan/tune_parts.hpp"
#include <cmath>
#include <fmt/format.h>

namespace lumwright {
namespace {
constexpr double step = 0.25;  // prior sigmas
constexpr std::array shares = {0.25, 0.5, 0.75, 1.0};
}  // namespace

double correlation(const Matrix& c, std::size_t i, std::size_t j) { return c[i][j] / std::sqrt(c[i][i] * c[j][j]); }

Matrix posterior(const Matrix& jacobian) {
  Matrix normal = normal_matrix(jacobian);
  for (std::size_t i = 0; i < normal.size(); ++i) normal[i][i] += 1.0;
  return inverse(normal);
}

Advice::Advice(const LightingUp& model, const std::vector<Factor>& factors, const std::vector<double>& u,
               const Matrix& jacobian, Duration until)
    : factors_(factors.size()), known_(normal_matrix(jacobian)), until_(until) {
  for (std::size_t i = 0; i < factors_; ++i) known_[i][i] += 1.0;
  const Foretold centre = model.foretell(tuning_at(factors, u));
  for (std::size_t o = 0; o < observables; ++o)
    if (const auto observable = static_cast<Observable>(o); centre.tells(observable) && observable != Observable::gauge)
      candidates_.push_back({observable, Matrix(shares.size(), std::vector<double>(factors_, 0.0))});
  for (std::size_t k = 0; k < factors_; ++k) {
    std::vector<double> above = u, below = u;
    above[k] += step, below[k] -= step;
    const Foretold high = model.foretell(tuning_at(factors, above)), low = model.foretell(tuning_at(factors, below));
    for (Candidate& c : candidates_)
      for (std::size_t i = 0; i < shares.size(); ++i) {
        const Duration t = shares[i] * until_;
        c.jacobian[i][k] = (high.at(c.observable, t) - low.at(c.observable, t)) / (2.0 * step) /
                           usual_sigma(c.observable, centre.at(c.observable, t));
      }
  }
}

std::string Advice::settles(const std::vector<std::size_t>& wanted) const {
  for (const Candidate& candidate : candidates_) {
    Matrix normal = normal_matrix(candidate.jacobian);
    for (std::size_t i = 0; i < factors_; ++i)
      for (std::size_t j = 0; j < factors_; ++j) normal[i][j] += known_[i][j];
    const Matrix c = inverse(normal);
    bool settled = true;
    for (const std::size_t i : wanted) {
      settled = settled && std::sqrt(c[i][i]) < determined_below;
      for (const std::size_t j : wanted)
        settled = settled && (i == j || std::abs(correlation(c, i, j)) < told_apart_below);
    }
    if (settled) return fmt::format("readings of the {}", name(candidate.observable));
  }
  return "";
}
}  // namespace lumwright
