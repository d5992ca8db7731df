// What days of readings say together: an engine with its own factors, drifts and scatters, and each day a little apart.
#pragma once
#include "numeric/least_squares.hpp"
#include <cstddef>
#include <vector>

namespace lumwright::tune {
using Vector = std::vector<double>;

/// Of independent normal laws with weights that add up to one: what is left where the scatter is not known for sure.
struct Mixture {
  struct Part {
    double weight, mean, sigma;
  };
  std::vector<Part> parts;
  double mean() const;
  double sigma() const;
  double share_below(double x) const;
  /// 0 < share < 1.
  double quantile(double share) const;
};

/// One day, linear about its best factors: the log of its likelihood is pull'u - u'information u / 2.
struct DayEvidence {
  numeric::Matrix information;
  Vector pull;
  Vector counts;  // of each drift, lighting-ups since it began anew
};
/// A number that hangs linearly on the engine, and where `scattered` on a day's own deviation as well.
struct Functional {
  Vector of_day;  // of the factors of that day
  Vector counts;
  bool scattered;
};

/// The law, for factors u (distances from their priors in prior sigmas):
///   day = engine + drift x count + scatter,   engine ~ N(0, 1),   drift ~ N(0, drift_sigma2),
///   scatter ~ N(0, s2),   ln s ~ N(ln usual, spread2) for each factor that scatters.
/// All but s is integrated exactly (Gaussian), s over even nodes.
/// Gelman and others, Bayesian Data Analysis, 3rd ed., ch. 5, from memory.
struct Law {
  std::size_t factors;
  std::vector<std::size_t> scattering;  // which factors
  Vector usual_scatter;                 // of each of them, in prior sigmas
  double scatter_spread;
  std::vector<std::size_t> drifting;  // which factors
  Vector drift_sigma;                 // of each, in prior sigmas a lighting-up
};

class Posterior {
 public:
  /// Of the first `count` days.
  Posterior(const Law& law, const std::vector<DayEvidence>& days, std::size_t count);
  Mixture of(const Functional& number) const;
  /// Of what one lighting-up adds by a drift, in prior sigmas of its factor.
  Mixture drift(std::size_t which) const;
  /// Of the logarithm of a scatter, in prior sigmas: parts as wide as the nodes stand apart.
  Mixture log_scatter(std::size_t which) const;
  /// Scatters at their means, to weigh readings with.
  Vector scatters() const;
  /// Of the engine, and of each drift in its own sigmas behind it.
  Vector mean() const;
  numeric::Matrix covariance() const;
  std::size_t size() const { return law_.factors + law_.drifting.size(); }

 private:
  struct Node {
    double weight;
    Vector scatter;
    Vector mean;
    numeric::Matrix covariance;
  };
  Vector row_of(const Functional& number) const;
  Law law_;
  std::vector<Node> nodes_;
};

/// The engine's numbers, the drifts behind them, at given scatters.
Vector engine_mean(const Law& law, const std::vector<DayEvidence>& days, const Vector& scatter);
/// The most likely factors of a day, given scatters and the engine's mean.
Vector day_factors(const Law& law, const DayEvidence& day, const Vector& scatter, const Vector& mean);
}  // namespace lumwright::tune
