// For each cause, and for nothing wrong, what the instruments would show in many samples of the unit.
#pragma once
#include "plan/draws.hpp"
#include "plan/samples.hpp"
#include "prove/detail/predict.hpp"
#include <string>
#include <vector>

namespace lumwright::prove {
/// Columns as data::proofs(); in a sample in which a part of the unit does not work, what hangs on it is not_predicted.
struct Cloud {
  const data::CauseRow* cause;            // null: nothing is wrong
  std::vector<double> u;                  // where in its range the cause lies
  std::vector<std::vector<double>> seen;  // of a sample, reading by reading
  bool predicts(std::size_t reading) const;
};

/// A description as its samples see it.
class SampledUnit {
 public:
  SampledUnit(const description::Build& build, const model::Tuning* tuning, const plan::SamplesAsked& asked,
              std::optional<Area> outlet);
  const model::Solved& planned() const { return planned_; }
  const std::vector<double>& as_planned() const { return as_planned_; }
  std::string why_not(const data::ProofRow& row) const;
  /// Samples of nothing wrong: those of `check`.
  Cloud sound() const;
  /// The first `count` of the same samples, the cause drawn from its range in each. Empty where the cause is no
  /// question. Without the fire, unless it is asked: that is most of the work.
  Cloud with(const data::CauseRow& cause, std::size_t count, model::SampleReach reach) const;
  /// One unit of its own: sample, and where in its range the cause lies.
  std::vector<double> one(const data::CauseRow* cause, std::size_t sample, double u, model::SampleReach reach) const;

 private:
  Cloud sampled(const data::CauseRow* cause, std::size_t count, model::SampleReach reach) const;
  /// Of each move of a cause, in its range: of the first as asked.
  std::vector<double> places(const data::CauseRow& cause, std::size_t sample, double u) const;
  description::Build build_;
  const model::Tuning* tuning_;
  plan::SamplesAsked asked_;
  model::Solved planned_;
  std::optional<Area> outlet_;
  Scales scales_;
  std::vector<double> as_planned_;
  plan::Draws draws_;
};
/// The samples that run: those that show all that the unit as planned shows. What a fire shows, and what a fan that
/// stands or blows back hides, is asked only where any of them shows it.
Cloud that_run(const Cloud& all, const SampledUnit& unit);
/// Nothing wrong first, then the causes that are a question of this unit; those that run.
std::vector<Cloud> clouds_of(const SampledUnit& unit, const Cloud& sound, model::SampleReach reach);
}  // namespace lumwright::prove
