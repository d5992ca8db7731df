#include "choose/detail/work.hpp"
#include "plan/workers.hpp"
#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>
#include <utility>

namespace lumwright::choose {
namespace {
// So many raises are decided on at once. Decisions are made between portions only, so they do not depend on the number
// of threads.
constexpr std::size_t drives_at_once = 32;

void find_drives(Yard& yard, const Stock& stock) {
  std::map<DriveKey, std::size_t> known;
  yard.drive_of.assign(stock.units.size(), no_drive);
  for (std::size_t i = 0; i < stock.units.size(); ++i) {
    const SupplyFact& supply = yard.supplies[i];
    if (supply.loss != Loss::none) continue;
    const Unit& unit = stock.units[i];
    const DriveKey key{.fan = unit.fan,
                       .pairing = unit.pairing,
                       .held = supply.held ? supply.fan_voltage : -1.0 * V,
                       .lowered = unit.lowered ? supply.lowered : -1.0 * V,
                       .unit = i};
    const auto [found, is_new] = known.emplace(key, yard.drives.size());
    if (is_new) yard.drives.push_back({key, supply.most, {}});
    Drive& drive = yard.drives[found->second];
    drive.most = std::max(drive.most, supply.most);
    drive.units.push_back(i);
    yard.drive_of[i] = found->second;
  }
}

double widest_spread(const Stock& stock) {
  return stock.time_spread.empty() ? 0.0 : *std::max_element(stock.time_spread.begin(), stock.time_spread.end());
}

void add_tasks(Yard& yard) {
  for (std::size_t drive = 0; drive < yard.drives.size(); ++drive)
    for (std::size_t tube = 0; tube < yard.stall.tubes.size(); ++tube) {
      Task task{.drive = drive, .tube = tube};
      task.loss = yard.tube_loss[tube];
      task.hopeless = task.loss != Loss::none;
      yard.tasks.push_back(task);
    }
}

// Tasks of one fan with one tube share their gas path.
void bound_tasks(Yard& yard, const Stock& stock, unsigned threads) {
  std::map<std::tuple<std::size_t, draught::FanPairing, std::size_t>, std::vector<std::size_t>> groups;
  for (std::size_t i = 0; i < yard.tasks.size(); ++i) {
    const DriveKey& key = yard.drives[yard.tasks[i].drive].key;
    if (!yard.tasks[i].hopeless) groups[{key.fan, key.pairing, yard.tasks[i].tube}].push_back(i);
  }
  std::vector<const std::vector<std::size_t>*> work;
  work.reserve(groups.size());
  for (const auto& [key, tasks] : groups) work.push_back(&tasks);
  plan::share_out(work.size(), threads, [&](std::size_t i) { bound(yard, stock, *work[i]); });
}

/// The engine's combinations as they are judged, one task after another.
class Judge {
 public:
  Judge(Yard& yard, const Stock& stock, const ChooseAsked& asked)
      : yard_(yard), stock_(stock), asked_(asked), out_{{}, Ranking(asked.places, widest_spread(stock))} {
    out_.judged.assign(stock.units.size() * tubes(), {0.0 * s, 0, Loss::none});
    for (std::size_t unit = 0; unit < stock.units.size(); ++unit)
      if (yard.supplies[unit].loss != Loss::none)
        for (std::size_t tube = 0; tube < tubes(); ++tube) at(unit, tube).loss = yard.supplies[unit].loss;
  }
  /// False when none of its units could come to anything.
  bool worth_it(const Task& task) const {
    if (task.hopeless) return false;
    if (asked_.every) return true;
    const auto& units = yard_.drives[task.drive].units;
    return std::any_of(units.begin(), units.end(),
                       [&](std::size_t unit) { return !out_.ranking.hopeless(hope(task.least, unit)); });
  }
  void pass_over(const Task& task) {
    for (const std::size_t unit : yard_.drives[task.drive].units) {
      const Hope h = hope(task.least, unit);
      at(unit, task.tube).loss = task.loss != Loss::none ? task.loss
                                 : !h.in_time            ? Loss::too_slow
                                 : !h.enough             ? Loss::too_few_light_ups
                                                         : Loss::outdone;
    }
  }
  void take(const Task& task) {
    for (const std::size_t unit : yard_.drives[task.drive].units) {
      Tried tried = candidate_of(yard_, stock_, task, unit);
      Judged& judged = at(unit, task.tube);
      judged.loss = tried.loss;
      if (!tried.candidate) continue;
      const Candidate& c = *tried.candidate;
      judged = {c.to_steam, c.light_ups,
                !c.in_time  ? Loss::too_slow
                : !c.enough ? Loss::too_few_light_ups
                            : Loss::outdone};
      const Hope exact{c.to_steam, c.light_ups, c.mass, c.in_time, c.enough, c.time_spread};
      if (asked_.every || !out_.ranking.hopeless(exact)) out_.ranking.add(std::move(*tried.candidate));
    }
  }
  Judging finish() { return std::move(out_); }

 private:
  std::size_t tubes() const { return yard_.stall.tubes.size(); }
  Judged& at(std::size_t unit, std::size_t tube) { return out_.judged[unit * tubes() + tube]; }
  double spread(std::size_t unit) const {
    const Unit& u = stock_.units[unit];
    return stock_.time_spread[Stock::index(u.fan, u.pairing)];
  }
  Hope hope(Duration least, std::size_t unit) const {
    const int most = most_light_ups(yard_.supplies[unit], least);
    return {least, most, stock_.units[unit].mass, least <= yard_.stall.within, most >= yard_.stall.wanted, spread(unit)};
  }

  Yard& yard_;
  const Stock& stock_;
  const ChooseAsked& asked_;
  Judging out_;
};

std::vector<std::size_t> by_bound(const Yard& yard) {
  std::vector<std::size_t> order(yard.tasks.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return yard.tasks[a].least < yard.tasks[b].least; });
  return order;
}
}  // namespace

Yard open_yard(Stall stall, const Stock& stock, const ChooseAsked& asked, ChooseEffort& effort, Tally& tally) {
  Yard yard;
  yard.stall = std::move(stall);
  yard.lacking = lacking_keys(yard.stall, stock);
  const std::size_t units = stock.units.size();
  if (!yard.lacking.empty()) {
    tally.add(2 * units);
    return yard;
  }
  yard.supplies.resize(units);
  const Stall plain = yard.stall;
  yard.stall.sized.resize(units);
  constexpr std::size_t at_once = 256;
  for (std::size_t from = 0; from < units; from += at_once) {
    const std::size_t more = std::min(at_once, units - from);
    plan::share_out(more, asked.threads, [&](std::size_t i) {
      yard.stall.sized[from + i] = size_for(plain, stock, from + i);
      yard.supplies[from + i] = supply_fact(yard.stall, stock, from + i);
    });
    tally.add(more);
  }
  effort.supplies += units;
  for (std::size_t tube = 0; tube < yard.stall.tubes.size(); ++tube)
    yard.tube_loss.push_back(cold_fit(yard.stall, stock, tube));
  find_drives(yard, stock);
  add_tasks(yard);
  bound_tasks(yard, stock, asked.threads);
  effort.bounds += yard.tasks.size();
  tally.add(units);
  return yard;
}

void solve_tasks(Yard& yard, const Stock& stock, const std::vector<std::size_t>& tasks, unsigned threads,
                 ChooseEffort& effort) {
  std::vector<std::size_t> open;
  for (const std::size_t i : tasks)
    if (!yard.tasks[i].solved) open.push_back(i);
  plan::share_out(open.size(), threads, [&](std::size_t i) { solve_task(yard, stock, yard.tasks[open[i]]); });
  effort.raises += open.size();
}

Judging judge_yard(Yard& yard, const Stock& stock, const ChooseAsked& asked, ChooseEffort& effort,
                   Tally& tally) {
  if (!yard.lacking.empty()) return {{}, Ranking(asked.places, widest_spread(stock))};
  Judge judge(yard, stock, asked);
  const std::vector<std::size_t> order = by_bound(yard);
  std::vector<std::size_t> now;
  std::size_t passed = 0;
  const auto work_off = [&] {
    solve_tasks(yard, stock, now, asked.threads, effort);
    for (const std::size_t i : now) {
      judge.take(yard.tasks[i]);
      passed += yard.drives[yard.tasks[i].drive].units.size();
    }
    now.clear();
    tally.add(std::exchange(passed, 0));
  };
  for (const std::size_t i : order) {
    const Task& task = yard.tasks[i];
    if (judge.worth_it(task)) {
      now.push_back(i);
    } else {
      judge.pass_over(task);
      passed += yard.drives[task.drive].units.size();
    }
    if (now.size() == drives_at_once) work_off();
  }
  work_off();
  return judge.finish();
}
}  // namespace lumwright::choose
