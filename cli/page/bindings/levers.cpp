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

/// A value that a thing can be set to, and where it lies among the others.
struct Setting {
  double size;
  plan::Change change;
};
/// One thing that can be set, with its other values from the least to the greatest.
struct Lever {
  std::string key;
  std::vector<Setting> less, more;  // than today
  double effect = 0.0;  // by how much the nearest but one of a row's values moves a chief answer, as a share
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
  explicit Bench(const Described& told)
      : told_(told), central_(plan::solved_to_judge(told.build, told.units, told.used())) {}
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
/// The values of one row of moves that lie on its side of today's, the nearest first. What has no size stands in the
/// order of its row.
std::vector<Setting> settings_of(const data::MoveRow& row, std::vector<plan::Change> changes, const std::string& key,
                                 const description::Build& build) {
  const description::KeyValue now = description::value_at(build, key);  // 0 where it is not written
  if (changes.size() > most_values) changes.resize(most_values);
  std::vector<Setting> all;
  for (plan::Change& change : changes) try {
      const auto then = description::value_at(description::with_settings(build, change.settings), key);
      const double next = static_cast<double>(all.size() + 1);
      const double size = then.form != description::KeyValue::Form::words ? then.si - now.si
                          : row.toward < 0                                ? -next
                                                                          : next;
      if (size * row.toward > 0.0 || (row.toward == 0 && size != 0.0)) all.push_back({size, std::move(change)});
    } catch (const input::InputError&) {  // it would contradict another value
    }
  std::stable_sort(all.begin(), all.end(),
                   [](const Setting& a, const Setting& b) { return std::abs(a.size) < std::abs(b.size); });
  return all;
}
/// Every value that any row gives the key, each once and at its place by size: stock tubes among those that are turned
/// down.
void take(Lever& lever, std::vector<Setting> settings) {
  for (Setting& one : settings) {
    auto& side = one.size < 0.0 ? lever.less : lever.more;
    if (std::none_of(side.begin(), side.end(), [&](const Setting& other) { return other.size == one.size; }))
      side.push_back(std::move(one));
  }
  for (auto* side : {&lever.less, &lever.more})
    std::sort(side->begin(), side->end(), [](const Setting& a, const Setting& b) { return a.size < b.size; });
}
Json value_of(const plan::Change& change) {
  Json settings = Json::array();
  for (const description::Setting& one : change.settings) settings.push_back({{"key", one.key}, {"value", one.value}});
  return {{"words", change.words}, {"value", change.settings.front().value}, {"settings", std::move(settings)}};
}
Json told(const Lever& lever) {
  Json values = Json::array();
  for (const Setting& one : lever.less) values.push_back(value_of(one.change));
  const std::size_t now = values.size();
  values.push_back({{"words", "as it is"}, {"value", ""}, {"settings", Json::array()}});
  for (const Setting& one : lever.more) values.push_back(value_of(one.change));
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
    const std::string& key = changes.front().settings.front().key;  // a row of a table has none of its own
    auto lever = std::find_if(all.begin(), all.end(), [&](const Lever& one) { return one.key == key; });
    if (lever == all.end()) lever = all.insert(all.end(), Lever{.key = key, .less = {}, .more = {}});
    std::vector<Setting> settings = settings_of(row, std::move(changes), lever->key, build.build);
    if (settings.empty()) continue;
    lever->effect =
        std::max(lever->effect, bench.effect(settings[std::min<std::size_t>(1, settings.size() - 1)].change));
    take(*lever, std::move(settings));
  }
  std::erase_if(all, [](const Lever& one) { return one.less.empty() && one.more.empty(); });
  std::stable_sort(all.begin(), all.end(), [](const Lever& a, const Lever& b) { return a.effect > b.effect; });
  if (all.size() > most_levers) all.resize(most_levers);
  Json out = Json::array();
  for (const Lever& lever : all) out.push_back(told(lever));
  return {{"levers", std::move(out)}};
}
}  // namespace lumwright::page
