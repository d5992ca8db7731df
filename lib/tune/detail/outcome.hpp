// From the search to what is told of it.
#pragma once
#include "tune/detail/season_fit.hpp"

namespace lumwright::tune {
/// Throws ModelError where the readings tell nothing, or contradict each other too much.
TuneFit outcome_of(const SeasonFit& fit, const description::Season& season);

/// The same, rounded as in the file, and what it means for the description.
TuneResult told_by(const SeasonFit& fit, const description::Build& build, const description::Season& season);

/// Minutes to a pressure about some factors, straight in their logarithm.
class Minutes {
 public:
  /// Throws ModelError where the model has no answer there, or the pressure is not reached.
  Minutes(const LightingUp& model, const std::vector<Factor>& factors, const Vector& about, GaugePressure gauge);
  Span band(const Mixture& law) const;
  Functional functional(const Vector& counts, bool scattered) const { return {slope_, counts, scattered}; }
  Duration here() const { return here_; }

 private:
  Vector about_, slope_;
  Duration here_;
};
/// Capacity of the pack; nothing where no charge tells it.
std::optional<PackState> pack_state(const description::Build& build, const description::Season& season);
}  // namespace lumwright::tune
