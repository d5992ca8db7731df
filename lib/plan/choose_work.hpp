// The work of choosing, one engine after another. Only the files of choosing include it.
#pragma once
#include "plan/choose_parts.hpp"
#include "plan/choose_rank.hpp"
#include <vector>

namespace lumwright {
/// Counts what is done for the caller's progress.
class Tally {
 public:
  Tally(const ChooseAsked& asked, std::size_t of) : asked_(asked), of_(of) {}
  void add(std::size_t more) {
    done_ = std::min(done_ + more, of_);
    if (asked_.progress) asked_.progress(done_, of_);
  }
  void finish() { add(of_ - done_); }

 private:
  const ChooseAsked& asked_;
  std::size_t of_, done_ = 0;
};

/// Supplies, drives, fits and bounds of one engine.
Yard open_yard(Stall stall, const Stock& stock, const ChooseAsked& asked, ChooseEffort& effort, Tally& tally);
/// Follows what is not hopeless. Without places, front, losses and items, which `sum_up` adds.
struct Judging {
  std::vector<Judged> judged;  // by unit, then tube
  Ranking ranking;
};
Judging judge_yard(Yard& yard, const Stock& stock, const ChooseAsked& asked, double told_apart, ChooseEffort& effort,
                   Tally& tally);
EngineChoice sum_up(const Yard& yard, const Stock& stock, Judging judging);
/// The units that serve all engines, best first.
std::vector<UnitChoice> units_for_all(std::vector<Yard>& yards, const Stock& stock, const ChooseAsked& asked,
                                      ChooseEffort& effort);

/// Tasks that are not solved yet, all at once.
void solve_tasks(Yard& yard, const Stock& stock, const std::vector<std::size_t>& tasks, unsigned threads,
                 ChooseEffort& effort);
}  // namespace lumwright
