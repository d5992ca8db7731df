#include "choose/detail/work.hpp"
#include <algorithm>
#include <limits>
#include <numeric>
#include <tuple>
#include <utility>

namespace lumwright::choose {
namespace {
constexpr std::size_t units_at_once = 16;

// What is known of a unit on all engines: as it is, or at its best.
struct Worth {
  std::size_t served = 0, contented = 0;
  double slowest = 0.0;
  int fewest = std::numeric_limits<int>::max();
  double mass = std::numeric_limits<double>::infinity();  // kg; stays inside
  auto key() const {
    return std::tuple(-static_cast<double>(served), -static_cast<double>(contented), slowest,
                      -static_cast<double>(fewest), mass);
  }
};

class UnitSearch {
 public:
  UnitSearch(std::vector<Yard>& yards, const Stock& stock, const ChooseAsked& asked, ChooseEffort& effort)
      : yards_(yards), stock_(stock), asked_(asked), effort_(effort) {}

  /// Units in the order of their hopes; each hope is no worse in any member of the key than what the unit turns out to
  /// be, and so not in the key as a whole. Once as many units are known as there are places, and the next hope lies
  /// behind the last of them, nothing that follows can come before it.
  std::vector<UnitChoice> search() {
    std::vector<std::size_t> order(stock_.units.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::vector<Worth> hopes;
    hopes.reserve(order.size());
    for (const std::size_t unit : order) hopes.push_back(hope(unit));
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return hopes[a].key() < hopes[b].key(); });
    for (std::size_t from = 0; from < order.size(); from += units_at_once) {
      if (found_.size() >= asked_.places && !asked_.every &&
          found_[asked_.places - 1].first.key() < hopes[order[from]].key())
        break;
      const std::size_t to = std::min(from + units_at_once, order.size());
      follow(order, from, to);
      for (std::size_t i = from; i < to; ++i) keep(order[i]);
    }
    std::vector<UnitChoice> out;
    for (std::size_t i = 0; i < found_.size() && i < asked_.places; ++i)
      if (found_[i].first.served > 0) out.push_back(choice(found_[i].second));
    return out;
  }

 private:
  Worth hope(std::size_t unit) const {
    Worth worth;
    if (stock_.units[unit].mass) worth.mass = in(*stock_.units[unit].mass, kg);
    for (const Yard& yard : yards_) {
      const Duration least = least_of(yard, unit);
      if (!(least < never)) continue;
      const int most = most_light_ups(yard.supplies[unit], least);
      ++worth.served;
      if (least <= yard.stall.within && most >= yard.stall.wanted) ++worth.contented;
      worth.slowest = std::max(worth.slowest, in(least, yard.stall.within));
      worth.fewest = std::min(worth.fewest, most);
    }
    // one that serves fewer engines than hoped is behind by that alone
    return worth;
  }
  Duration least_of(const Yard& yard, std::size_t unit) const {
    Duration least = never;
    if (!yard.lacking.empty() || yard.drive_of[unit] == no_drive) return least;
    for (std::size_t tube = 0; tube < yard.stall.tubes.size(); ++tube) {
      const Task& task = yard.tasks[yard.drive_of[unit] * yard.stall.tubes.size() + tube];
      if (!task.hopeless) least = std::min(least, task.least);
    }
    return least;
  }
  void follow(const std::vector<std::size_t>& order, std::size_t from, std::size_t to) {
    for (Yard& yard : yards_) {
      std::vector<std::size_t> open;
      for (std::size_t i = from; i < to; ++i) {
        if (!yard.lacking.empty() || yard.drive_of[order[i]] == no_drive) continue;
        for (std::size_t tube = 0; tube < yard.stall.tubes.size(); ++tube) {
          const std::size_t t = yard.drive_of[order[i]] * yard.stall.tubes.size() + tube;
          if (!yard.tasks[t].solved && !yard.tasks[t].hopeless) open.push_back(t);
        }
      }
      std::sort(open.begin(), open.end());
      open.erase(std::unique(open.begin(), open.end()), open.end());
      solve_tasks(yard, stock_, open, asked_.threads, effort_);
    }
  }
  /// The tube that does best: by grade, then time, then name.
  Serving serve(const Yard& yard, std::size_t unit) const {
    Serving best{yard.stall.base.name ? *yard.stall.base.name : "", std::nullopt, Loss::lacking};
    if (!yard.lacking.empty()) return best;
    best.loss = yard.supplies[unit].loss;
    if (yard.drive_of[unit] == no_drive) return best;
    best.loss = Loss::none;
    for (std::size_t tube = 0; tube < yard.stall.tubes.size(); ++tube) {
      const Task& task = yard.tasks[yard.drive_of[unit] * yard.stall.tubes.size() + tube];
      Tried tried = candidate_of(yard, stock_, task, unit);
      if (!tried.candidate) {
        best.loss = std::max(best.loss, tried.loss);  // how far the best of the tubes got
        continue;
      }
      const auto key = [](const Candidate& c) {
        return std::tuple(grade(c.in_time, c.enough), in(c.to_steam, s), c.tube);
      };
      if (!best.with || key(*tried.candidate) < key(*best.with)) best.with = std::move(tried.candidate);
    }
    if (best.with) best.loss = Loss::none;
    return best;
  }
  void keep(std::size_t unit) {
    Worth worth;
    if (stock_.units[unit].mass) worth.mass = in(*stock_.units[unit].mass, kg);
    for (const Yard& yard : yards_) {
      const Serving serving = serve(yard, unit);
      if (!serving.with) continue;
      ++worth.served;
      if (serving.with->in_time && serving.with->enough) ++worth.contented;
      worth.slowest = std::max(worth.slowest, in(serving.with->to_steam, yard.stall.within));
      worth.fewest = std::min(worth.fewest, serving.with->light_ups);
    }
    const auto order = [](const std::pair<Worth, std::size_t>& a, const std::pair<Worth, std::size_t>& b) {
      return a.first.key() != b.first.key() ? a.first.key() < b.first.key() : a.second < b.second;  // units are by name
    };
    const std::pair<Worth, std::size_t> one{worth, unit};
    found_.insert(std::upper_bound(found_.begin(), found_.end(), one, order), one);
  }
  UnitChoice choice(std::size_t unit) const {
    UnitChoice out{stock_.units[unit], {}, 0, 0, 0.0, std::numeric_limits<int>::max()};
    for (const Yard& yard : yards_) {
      Serving serving = serve(yard, unit);
      if (serving.with) {
        ++out.served;
        out.contented += serving.with->in_time && serving.with->enough ? 1 : 0;
        out.slowest = std::max(out.slowest, in(serving.with->to_steam, yard.stall.within));
        out.fewest = std::min(out.fewest, serving.with->light_ups);
      }
      out.engines.push_back(std::move(serving));
    }
    return out;
  }

  static constexpr Duration never = 1e9 * s;
  std::vector<Yard>& yards_;
  const Stock& stock_;
  const ChooseAsked& asked_;
  ChooseEffort& effort_;
  std::vector<std::pair<Worth, std::size_t>> found_;
};
}  // namespace

std::vector<UnitChoice> units_for_all(std::vector<Yard>& yards, const Stock& stock, const ChooseAsked& asked,
                                      ChooseEffort& effort) {
  return UnitSearch(yards, stock, asked, effort).search();
}
}  // namespace lumwright::choose
