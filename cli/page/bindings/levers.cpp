#include "asked.hpp"
#include "data/moves.hpp"
#include "described.hpp"
#include "description/key_value.hpp"
#include "model/solved.hpp"
#include "plan/moves.hpp"
#include "plan/results.hpp"
#include <algorithm>
#include <cmath>
#include <map>

namespace lumwright::page {
namespace {
constexpr std::size_t most_levers = 6, most_values = 24;

/// One thing that can be set, with all its values from the least to the greatest, the one of today among them.
struct Lever {
  std::string key;
  std::vector<plan::Change> less, more;  // the nearest first
  double effect = 0.0;             // how much its nearest changes move the chief answers, as a share
};
double number_of(const model::Solved& solved, std::string_view key) {
  for (const model::Result& result : plan::results_of(solved))
    if (result.key == key)
      if (const auto* measure = std::get_if<model::Measure>(&result.value)) return measure->quantity.si;
  return std::nan("");
}
/// How far two answers are apart: all of it where one of them is never reached.
double apart(double before, double after) {
  if (std::isnan(before) && std::isnan(after)) return 0.0;
  if (std::isnan(before) || std::isnan(after)) return 1.0;
  return std::abs(after - before) / std::max(std::abs(before), 1e-12);
}
class Bench {
 public:
  explicit Bench(const Described& told) : told_(told), central_(plan::solved_to_judge(told.build, told.units, told.used())) {}
  const model::Solved& central() const { return central_; }
  /// By how much a change moves time to steam, running time and gap; nothing where the build then contradicts itself.
  double effect(const plan::Change& change) const {
    try {
      const description::Build changed = description::with_settings(told_.build, change.settings);
      const model::Solved solved = plan::solved_to_judge(changed, told_.units, told_.used());
      double most = 0.0;
      for (const char* key : {"raise.to_own_blower", "power.runtime", "fit.clearance_hot"})
        most = std::max(most, apart(number_of(central_, key), number_of(solved, key)));
      return most;
    } catch (const input::InputError&) {
      return 0.0;
    }
  }

 private:
  const Described& told_;
  model::Solved central_;
};
void take(std::vector<Lever>& levers, const data::MoveRow& row, std::vector<plan::Change> changes, double effect) {
  const std::string& key = changes.front().settings.front().key;  // a row of a table has none of its own
  auto lever = std::find_if(levers.begin(), levers.end(), [&](const Lever& one) { return one.key == key; });
  if (lever == levers.end()) lever = levers.insert(levers.end(), Lever{.key = key, .less = {}, .more = {}});
  auto& side = row.toward < 0 ? lever->less : lever->more;
  if (!side.empty()) return;
  if (changes.size() > most_values) changes.resize(most_values);
  side = std::move(changes);
  lever->effect = std::max(lever->effect, effect);
}
Json value_of(const plan::Change& change) {
  Json settings = Json::array();
  for (const description::Setting& one : change.settings) settings.push_back({{"key", one.key}, {"value", one.value}});
  return {{"words", change.words}, {"value", change.settings.front().value}, {"settings", std::move(settings)}};
}
Json told(const Lever& lever) {
  Json values = Json::array();
  for (auto one = lever.less.rbegin(); one != lever.less.rend(); ++one) values.push_back(value_of(*one));
  const std::size_t now = values.size();
  values.push_back({{"words", "as it is"}, {"value", ""}, {"settings", Json::array()}});
  for (const plan::Change& one : lever.more) values.push_back(value_of(one));
  return {{"key", lever.key}, {"now", now}, {"effect", lever.effect}, {"values", std::move(values)}};
}
}  // namespace

Json levers(const Json& question) {
  const Described build(question);
  const Bench bench(build);
  std::vector<Lever> all;
  for (const data::MoveRow& row : data::moves()) {
    std::vector<plan::Change> changes = plan::changes_of(row, build.build, bench.central());
    if (changes.empty()) continue;
    const double effect = bench.effect(changes[std::min<std::size_t>(1, changes.size() - 1)]);
    take(all, row, std::move(changes), effect);
  }
  std::stable_sort(all.begin(), all.end(), [](const Lever& a, const Lever& b) { return a.effect > b.effect; });
  if (all.size() > most_levers) all.resize(most_levers);
  Json out = Json::array();
  for (const Lever& lever : all) out.push_back(told(lever));
  return {{"levers", std::move(out)}};
}
}  // namespace lumwright::page
