// One lighting-up of a season: its readings, and the model about the factors that suit them.
#pragma once
#include "description/season.hpp"
#include "tune/detail/hierarchy.hpp"
#include "tune/detail/parts.hpp"

namespace lumwright::tune {
class Day {
 public:
  /// `factors` are those of the season; this day's own priors are those of its fuel. Throws ModelError where a raise
  /// cannot be solved.
  Day(const description::Build& build, const description::Log& log, Duration probe_lag,
      const std::vector<Factor>& factors, const model::Tuning* usual);
  /// All of them; those that are not used say why.
  const std::vector<TunedReading>& readings() const { return readings_; }
  const std::vector<std::size_t>& used() const { return used_; }
  const LightingUp& model() const { return model_; }
  const std::vector<Factor>& factors() const { return factors_; }

  /// Goes to these factors, or as near to them as the model has an answer, and draws a straight line through the
  /// misfits there. Throws ModelError where it has none at the priors either.
  void draw_line(const Vector& u);
  const Vector& at() const { return at_; }
  const numeric::Matrix& jacobian() const { return jacobian_; }
  /// In sigmas, of the readings used, along that line.
  Vector misfits(const Vector& u) const;
  const Vector& misfits_here() const { return here_; }
  /// What the model said where a way was barred; else empty.
  const std::string& edge() const { return edge_; }
  /// With a weight for each reading used.
  DayEvidence evidence(const Vector& weights, double size, const Vector& counts) const;
  /// What each instrument would have shown there.
  std::optional<Prediction> prediction() const;

 private:
  Vector exact_misfits(const Vector& u) const;
  LightingUp model_;
  std::vector<Factor> factors_;
  std::vector<TunedReading> readings_;
  std::vector<std::size_t> used_;
  Vector at_, here_;
  numeric::Matrix jacobian_;
  std::string edge_;
};
}  // namespace lumwright::tune
