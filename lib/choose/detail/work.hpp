// The work of choosing, one engine after another. Only the files of choosing include it.
#pragma once
#include "choose/detail/parts.hpp"
#include "choose/detail/rank.hpp"
#include <vector>

namespace lumwright::choose {
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
Judging judge_yard(Yard& yard, const Stock& stock, const ChooseAsked& asked, ChooseEffort& effort, Tally& tally);
EngineChoice start_choice(const Yard& yard, Judging& judging);
/// Losses and fates, once the places stand.
void sum_up(EngineChoice& out, const Stock& stock);

/// A combination as `check` sees it, from a description that was written and read again.
struct Checked {
  std::string description;
  std::vector<std::string> fails, wants, watches;  // titles; `wants`: of time and light-ups
  std::optional<Duration> to_steam;
  Duration runtime{};
  int light_ups = 0;
  bool in_time = true, enough = true;
  std::set<std::string> cautions;  // ids
};
Checked check_combination(const Yard& yard, const Stock& stock, std::size_t unit, std::size_t tube,
                          std::size_t samples);
/// The numbers that check found.
void take_over(Candidate& candidate, const Checked& checked);
std::size_t unit_of(const Stock& stock, const Combination& at);
/// Puts the places in their order of what check says of them, in groups, and leaves out what fails. False where too few
/// are left and a longer ranking might bring more.
bool check_engine(EngineChoice& choice, const Yard& yard, const Stock& stock, const ChooseAsked& asked,
                  std::size_t pool, ChooseEffort& effort);
/// Likewise the units for all engines, each with the tubes that pass.
void check_units(std::vector<UnitChoice>& found, const std::vector<Yard>& yards, const Stock& stock,
                 const ChooseAsked& asked, ChooseEffort& effort);
/// What a shop sells, or a skim, or a sleeve, for an engine on which none of the tubes fits.
std::string tubes_to_buy(const Yard& yard, const Stock& stock);
/// The units that serve all engines, best first.
std::vector<UnitChoice> units_for_all(std::vector<Yard>& yards, const Stock& stock, const ChooseAsked& asked,
                                      ChooseEffort& effort);

/// Tasks that are not solved yet, all at once.
void solve_tasks(Yard& yard, const Stock& stock, const std::vector<std::size_t>& tasks, unsigned threads,
                 ChooseEffort& effort);
}  // namespace lumwright::choose
