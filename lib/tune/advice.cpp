#include "tune/detail/parts.hpp"
#include <cmath>
#include <fmt/format.h>

namespace lumwright::tune {
namespace {
constexpr double nudge = 0.25;  // prior sigmas
constexpr std::array shares = {0.25, 0.5, 0.75, 1.0};
}  // namespace

double correlation(const numeric::Matrix& c, std::size_t i, std::size_t j) {
  return c[i][j] / std::sqrt(c[i][i] * c[j][j]);
}

numeric::Matrix posterior(const numeric::Matrix& jacobian) {
  numeric::Matrix normal = numeric::normal_matrix(jacobian);
  for (std::size_t i = 0; i < normal.size(); ++i) normal[i][i] += 1.0;
  return numeric::inverse(normal);
}

ReadingAdvice::ReadingAdvice(const LightingUp& model, const std::vector<Factor>& factors, const std::vector<double>& u,
                             const numeric::Matrix& jacobian, Duration until)
    : factors_(factors.size()), known_(numeric::normal_matrix(jacobian)), until_(until) {
  for (std::size_t i = 0; i < factors_; ++i) known_[i][i] += 1.0;
  const Prediction centre = model.predict(tuning_at(factors, u));
  std::vector<double> sigmas;
  for (std::size_t o = 0; o < observables; ++o) {
    const auto observable = static_cast<Observable>(o);
    if (!centre.tells(observable) || observable == Observable::gauge) continue;
    candidates_.push_back({observable, {}});
    for (const double share : shares) sigmas.push_back(usual_sigma(observable, centre.at(observable, share * until_)));
  }
  const auto read = [&](const Prediction& prediction) {
    std::vector<double> out;
    for (const Candidate& c : candidates_)
      for (const double share : shares) out.push_back(prediction.at(c.observable, share * until_) / sigmas[out.size()]);
    return out;
  };
  const numeric::Matrix all =
      numeric::slopes([&](const std::vector<double>& at) { return read(model.predict(tuning_at(factors, at))); }, u,
                      read(centre), std::vector<double>(u.size(), nudge));
  for (std::size_t i = 0; i < all.size(); ++i) candidates_[i / shares.size()].jacobian.push_back(all[i]);
}

std::string ReadingAdvice::settles(const std::vector<std::size_t>& wanted) const {
  for (const Candidate& candidate : candidates_) {
    numeric::Matrix normal = numeric::normal_matrix(candidate.jacobian);
    for (std::size_t i = 0; i < factors_; ++i)
      for (std::size_t j = 0; j < factors_; ++j) normal[i][j] += known_[i][j];
    const numeric::Matrix c = numeric::inverse(normal);
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
}  // namespace lumwright::tune
