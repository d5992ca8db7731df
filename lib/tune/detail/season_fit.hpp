// The search for the factors of an engine and of each of its days, with every reading believed as far as it deserves.
#pragma once
#include "tune/detail/day.hpp"
#include "tune/detail/hierarchy.hpp"

namespace lumwright::tune {
/// Lighting-ups since each drift began anew, at each lighting-up of a season and at the next one behind them.
std::vector<Vector> counts_of(const description::Season& season, const std::vector<Factor>& drifting);

class SeasonFit {
 public:
  /// Throws ModelError where the description cannot be solved, or no reading of any day can be used.
  /// `usual`, if any, has priors in place of those of the tables.
  SeasonFit(const description::Build& build, const description::Season& season, const model::Tuning* usual);
  /// Gauss and Newton on straight lines through the misfits, readings weighed anew (EM) until nothing moves.
  void search();

  const std::vector<Factor>& factors() const { return factors_; }
  const Law& law() const { return law_; }
  const std::vector<Day>& days() const { return days_; }
  /// Which lighting-up of the season that day is.
  std::size_t log_of(std::size_t day) const { return logs_[day]; }
  /// Lighting-ups that are not used, and why.
  const std::vector<std::pair<std::size_t, std::string>>& left_out() const { return left_out_; }
  const std::vector<DayEvidence>& evidence() const { return evidence_; }
  const Posterior& posterior() const { return *posterior_; }
  const Vector& next_counts() const { return counts_.back(); }
  /// Chance that a reading used is a wrong one.
  double wrong(std::size_t day, std::size_t reading) const { return wrong_[day][reading]; }
  /// The factors take hold of it; one that none does tells nothing of them.
  bool held(std::size_t day, std::size_t reading) const;
  /// Factor on the uncertainty of the readings where they scatter more than chance allows; else 1.
  double size() const { return size_; }
  int evaluations() const { return evaluations_; }

 private:
  Vector all_misfits() const;
  void weigh();
  void settle();
  bool moved(std::size_t day) const;
  std::vector<Factor> factors_;
  Law law_;
  std::vector<Day> days_;
  std::vector<std::size_t> logs_;
  std::vector<std::pair<std::size_t, std::string>> left_out_;
  std::vector<Vector> counts_, at_, weights_, wrong_;
  std::vector<DayEvidence> evidence_;
  std::optional<Posterior> posterior_;
  Vector scatter_;
  double size_ = 1.0;
  bool settling_ = true;
  int evaluations_ = 0;
};
}  // namespace lumwright::tune
