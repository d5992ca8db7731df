// Tuning: the few factors of the model that measured lighting-ups determine, with what is left of their uncertainty,
// how they scatter from day to day, and how they drift.
#pragma once
#include "description/season.hpp"
#include "description/tuned_file.hpp"
#include "model/tuning.hpp"
#include "tune/lighting_up.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::tune {
/// A number and the ends between which it lies with 80 %.
struct Span {
  double value, low, high;
};
/// What one lighting-up adds to a factor, over its value (-0.01: one per cent less).
struct Drift {
  Span each;
  double sure;       // chance that it goes the way that it seems to
  std::string anew;  // the key of `done` that begins it again
};
/// SI numbers of the kind; sigmas are single standard deviations.
struct TunedFactor {
  std::string key, name;
  Kind kind;
  std::string unit;
  double prior, prior_sigma;
  double value, sigma;  // at the next lighting-up, its own scatter in it; the prior's where it is not determined
  Span engine{};        // of the engine as it is now, days apart
  std::optional<Span> scatter{};  // standard deviation from day to day, over the value
  std::optional<Drift> drift{};
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
  double wrong = 0.0;    // chance that it was misread or written in the wrong place
  double misfit() const { return after ? (measured.si - *after) / sigma : 0.0; }
  bool believed() const { return left_out.empty() && wrong < 0.5; }
};
/// One lighting-up of a season.
struct LitDay {
  std::size_t log;       // which of the season, from 0
  std::string left_out;  // why nothing is learnt from it, or empty
  std::vector<TunedReading> readings{};
  std::vector<double> factors{};  // on that day, SI, in the order of those of the engine
};
struct TuneFit {
  std::vector<TunedFactor> factors;
  std::vector<LitDay> days;  // all lighting-ups, in their order
  double widened;   // factor on the uncertainty of the readings where they scatter more than chance allows; else 1
  double cover;     // sigmas that hold all determined factors together with 95 %
  int evaluations;  // of the model
};
struct SteamTime {
  std::optional<Duration> before, after;                                 // nothing: the pressure is not reached
  std::optional<std::pair<Duration, Duration>> band_before, band_after;  // 80 %, from the factors alone
};
/// Capacity of the pack by the charges put back after it had run flat, since it last got new cells.
struct PackState {
  std::size_t charges;               // that tell it
  Span capacity;                     // A s of one string, now
  Span share_of_new;                 // of what it was with new cells
  Span each_month;                   // what a month adds, over the value
  double sure;                       // chance that it goes the way that it seems to
  std::vector<std::size_t> wrong{};  // lighting-ups whose charge is not believed
};
struct TuneResult {
  TuneFit fit;
  model::Tuning tuning;  // values rounded as in the file; spreads that hold all of them together with 95 %
  std::optional<SteamTime> own_blower, working;  // at the next lighting-up, as described
  std::optional<PackState> pack;
};

/// Fits all lighting-ups of a season at once; a single log is the case of one. Each day has the engine's factors, a
/// drift with every lighting-up, and a scatter of its own; the usual bands (two sigma; the author's own spreads where
/// written) are their priors. Readings follow a contaminated normal law, so that a wrong one is named and has no say. A
/// factor counts as determined when what is left of its sigma is below 0.7 of the usual one; the others stay as they
/// were, and what is not known of them counts in the uncertainty of those that are. Throws ModelError with a sentence
/// for the user where the description cannot be solved, no reading can be used, the readings determine nothing, or no
/// factors bring the model near most of the readings.
/// `usual`, if any, has priors of the factors in place of those of the tables (tune/priors.hpp).
TuneResult tune(const description::Build& build, const description::Season& season,
                const model::Tuning* usual = nullptr);

/// To and from the file beside the description.
model::Tuning tuning_of(const description::TunedFile& file);
description::TunedFile file_of_values(const model::Tuning& tuning);
description::TunedFile file_of(const TuneResult& result, const description::Season& season);
}  // namespace lumwright::tune
