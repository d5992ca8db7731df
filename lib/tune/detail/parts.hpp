// The parts that tuning is made of. Only the files of tuning include it.
#pragma once
#include "data/tuning.hpp"
#include "numeric/least_squares.hpp"
#include "tune/tune.hpp"
#include <cmath>

namespace lumwright::tune {
/// One factor with its prior, a normal law of the logarithm: all of them are above zero. `u` is its distance from the
/// prior in prior sigmas.
struct Factor {
  std::string key, name, unit;
  Kind kind;
  double prior, sigma;  // SI
  double least, most;   // SI
  double day_to_day, drift;  // over the value; 0: none
  std::string anew;
  double usual_log_sigma;  // without what a club knows
  double log_sigma() const { return sigma / prior; }
  double at(double u) const { return prior * std::exp(u * log_sigma()); }
};
/// Their priors from the tables and what is written, or from `usual` where that has them.
std::vector<Factor> factors_of(const LightingUp& model, const model::Tuning* usual = nullptr);
/// Throws ModelError for a value beyond the physics.
model::Tuning tuning_at(const std::vector<Factor>& factors, const std::vector<double>& u);

/// Every reading of the log; those that cannot be used say why.
std::vector<TunedReading> readings_of(const description::Log& log, const description::Build& build,
                                      const Prediction& untuned);
/// Single standard deviation of a reading without its own, at this value.
double usual_sigma(Observable observable, double si);
/// "water temperature of reading 3, at 2.2 min: 95 degC was read, the model has 61 degC".
std::string missed(const TunedReading& reading, double misfit);

/// Covariance of u with a prior of one for each.
numeric::Matrix posterior(const numeric::Matrix& jacobian);

/// Which further readings would help: "readings of the fuel burnt".
class ReadingAdvice {
 public:
  ReadingAdvice(const LightingUp& model, const std::vector<Factor>& factors, const std::vector<double>& u,
                const numeric::Matrix& jacobian, Duration until);
  /// The kind of reading after which every one of these factors is determined and no two of them go together; empty if
  /// none does it alone.
  std::string settles(const std::vector<std::size_t>& wanted) const;

 private:
  std::size_t factors_;
  numeric::Matrix known_;  // normal matrix, prior in it
  struct Candidate {
    Observable observable;
    numeric::Matrix jacobian;
  };
  std::vector<Candidate> candidates_;
  Duration until_;
};

inline constexpr double determined_below = 0.7;   // of the prior's sigma
inline constexpr double told_apart_below = 0.98;  // correlation
double correlation(const numeric::Matrix& covariance, std::size_t i, std::size_t j);
}  // namespace lumwright::tune
