#include "choose/detail/rank.hpp"
#include "choose/detail/work.hpp"
#include "model/fan_unit.hpp"
#include "plan/workers.hpp"
#include <algorithm>
#include <limits>
#include <map>
#include <tuple>

namespace lumwright::choose {
namespace {
/// Combinations as check sees them, each worked out once.
class CheckedOnce {
 public:
  CheckedOnce(const std::vector<Yard>& yards, const Stock& stock, ChooseEffort& effort)
      : yards_(yards), stock_(stock), effort_(effort) {}
  const Checked& of(std::size_t yard, std::size_t unit, std::size_t tube, std::size_t samples) {
    const auto [found, is_new] = known_.try_emplace({yard, unit, tube, samples});
    if (is_new) {
      found->second = check_combination(yards_[yard], stock_, unit, tube, samples);
      ++effort_.assessed;
    }
    return found->second;
  }

 private:
  const std::vector<Yard>& yards_;
  const Stock& stock_;
  ChooseEffort& effort_;
  std::map<std::tuple<std::size_t, std::size_t, std::size_t, std::size_t>, Checked> known_;
};

/// One unit on all engines, in as many samples as are asked so far.
struct OneUnit {
  UnitChoice choice;
  std::size_t unit, samples;
};

class UnitChecking {
 public:
  UnitChecking(const std::vector<Yard>& yards, const Stock& stock, const ChooseAsked& asked, ChooseEffort& effort)
      : yards_(yards), stock_(stock), asked_(asked), checked_(yards, stock, effort) {}
  void run(std::vector<UnitChoice>& found) {
    std::vector<OneUnit> units;
    for (UnitChoice& choice : found) {
      if (choice.unit.lowered) continue;  // a description says its full output
      const Unit& u = choice.unit;
      const std::size_t unit = unit_of(stock_, {0, u.fan, u.pack, u.step_up, 0, u.pairing, false});
      units.push_back({std::move(choice), unit, 0});
      judge(units.back());
    }
    order(units);
    if (asked_.samples > 0) {
      deepen(units, asked_.places, std::min(asked_.samples, place_samples));
      deepen(units, 1, asked_.samples);
    }
    found.clear();
    for (OneUnit& one : units)
      if (one.choice.served > 0 && found.size() < asked_.places) found.push_back(std::move(one.choice));
  }

 private:
  // Until the first so many stand in at least so many samples.
  void deepen(std::vector<OneUnit>& units, std::size_t first, std::size_t samples) {
    for (bool again = true; again;) {
      again = false;
      for (std::size_t i = 0; i < units.size() && i < first; ++i) {
        if (units[i].samples >= samples) continue;
        units[i].samples = samples;
        judge(units[i]);
        again = true;
      }
      order(units);
    }
  }
  void judge(OneUnit& one) {
    UnitChoice& choice = one.choice;
    choice.served = choice.contented = choice.watches = 0;
    choice.slowest = 0.0;
    choice.fewest = std::numeric_limits<int>::max();
    for (std::size_t y = 0; y < yards_.size(); ++y) {
      Serving serving = serve(choice.engines[y], y, one);
      if (serving.with) {
        ++choice.served;
        choice.contented += serving.with->in_time && serving.with->enough ? 1 : 0;
        choice.watches += serving.watches.size();
        choice.slowest = std::max(choice.slowest, in(serving.with->to_steam, yards_[y].stall.within));
        choice.fewest = std::min(choice.fewest, serving.with->light_ups);
      }
      choice.engines[y] = std::move(serving);
    }
    if (choice.served == 0) choice.fewest = 0;
  }
  /// The tube that does best among those of which nothing fails.
  Serving serve(const Serving& before, std::size_t y, const OneUnit& one) {
    const Yard& yard = yards_[y];
    Serving best{before.engine, std::nullopt, before.loss};
    if (!yard.lacking.empty() || yard.drive_of[one.unit] == no_drive) return best;
    const auto key = [](const Serving& s) {
      return std::tuple(grade(s.with->in_time, s.with->enough), s.watches.size(), in(s.with->to_steam, s_unit),
                        s.with->tube);
    };
    for (std::size_t tube = 0; tube < yard.stall.tubes.size(); ++tube) {
      const Task& task = yard.tasks[yard.drive_of[one.unit] * yard.stall.tubes.size() + tube];
      Tried tried = candidate_of(yard, stock_, task, one.unit);
      if (!tried.candidate || !task.solved) continue;
      const Checked& checked = checked_.of(y, one.unit, tube, one.samples);
      if (!checked.fails.empty() || !checked.to_steam) {
        if (!best.with) {
          best.loss = Loss::fails_check;
          best.fails = checked.fails;
        }
        continue;
      }
      Serving next{before.engine,       *tried.candidate, Loss::none,
                   checked.wants,       checked.watches,  words(yard.stall.sized[one.unit]),
                   checked.description, checked.cautions};
      take_over(*next.with, checked);
      if (!best.with || key(next) < key(best)) best = std::move(next);
    }
    return best;
  }
  static void order(std::vector<OneUnit>& units) {
    const auto key = [](const OneUnit& o) {
      const UnitChoice& c = o.choice;
      return std::tuple(-static_cast<double>(c.served), -static_cast<double>(c.contented), c.watches, c.slowest,
                        -c.fewest, c.unit.mass ? in(*c.unit.mass, kg) : 1e9, o.unit);
    };
    std::sort(units.begin(), units.end(), [&](const OneUnit& a, const OneUnit& b) { return key(a) < key(b); });
  }

  static constexpr Duration s_unit = 1.0 * s;
  const std::vector<Yard>& yards_;
  const Stock& stock_;
  const ChooseAsked& asked_;
  CheckedOnce checked_;
};
}  // namespace

void check_units(std::vector<UnitChoice>& found, const std::vector<Yard>& yards, const Stock& stock,
                 const ChooseAsked& asked, ChooseEffort& effort) {
  UnitChecking(yards, stock, asked, effort).run(found);
}
}  // namespace lumwright::choose
