// Tuning: the few factors of the model that one measured lighting-up determines, with what is left of their
// uncertainty.
#pragma once
#include "description/log.hpp"
#include "description/tuned_file.hpp"
#include "model/tuning.hpp"
#include "tune/lighting_up.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::tune {
/// SI numbers of the kind; sigmas are single standard deviations.
struct TunedFactor {
  std::string key, name;
  Kind kind;
  std::string unit;
  double prior, prior_sigma;
  double value, sigma;  // after; the prior's sigma where it is not determined
  bool determined;
  std::string settled_by;  // readings that would determine it, if it is not and any would
};
struct TunedReading {
  std::size_t item;  // in the log, from 1
  Duration time;
  Observable observable;
  AnyQuantity measured;
  double sigma;                  // SI
  std::optional<double> before;  // SI: what the model says, untuned
  std::optional<double> after;
  std::string unit;      // as written
  std::string left_out;  // why it was not used, or empty
  double misfit() const { return after ? (measured.si - *after) / sigma : 0.0; }
};
struct TuneFit {
  std::vector<TunedFactor> factors;
  std::vector<TunedReading> readings;
  double misfit;                                // sum of squared misfits of the readings that factors move
  double freedom;                               // what it should be
  double widened;                               // factor on the sigmas where the misfit is too large for chance; else 1
  double cover;                                 // sigmas that hold all determined factors together with 95 %
  std::vector<std::vector<double>> covariance;  // of the determined factors, over their prior sigmas
  int evaluations;                              // of the model
};
struct SteamTime {
  std::optional<Duration> before, after;              // nothing: the pressure is not reached
  std::optional<Duration> sigma_before, sigma_after;  // from the factors alone
};
struct TuneResult {
  TuneFit fit;
  model::Tuning tuning;  // values rounded as in the file; spreads that hold all of them together with 95 %
  std::optional<SteamTime> own_blower, working;
};

/// Weighted least squares of log against model, with the usual bands (two sigma; the author's own spreads where
/// written) as prior readings of the factors. A factor counts as determined when what is left of its sigma is below 0.7
/// of the prior's; the others stay as they were, and what is not known of them counts in the uncertainty of those that
/// are determined. Throws ModelError with a sentence for the user where the description cannot be solved, no reading
/// can be used, the readings determine nothing, two factors cannot be told apart (correlation above 0.98, or each
/// determined only if the other were known), or the fit runs against an edge of the physics.
TuneFit fit_log(const description::Build& build, const description::Log& log);
/// The same, and what it means for the description.
TuneResult tune(const description::Build& build, const description::Log& log);

/// To and from the file beside the description.
model::Tuning tuning_of(const description::TunedFile& file);
description::TunedFile file_of(const TuneResult& result, const description::Log& log);
}  // namespace lumwright::tune
