#include "plan/detail/changed_builds.hpp"
#include "input/source.hpp"

namespace lumwright::plan {
const model::Solved& ChangedBuild::cold() {
  std::call_once(cold_once_, [this] { cold_.emplace(model::solve_cold(build_, tuning_)); });
  return *cold_;
}
const model::Solved& ChangedBuild::solved() {
  std::call_once(solved_once_, [this] { solved_.emplace(solved_to_judge(build_, units_, tuning_)); });
  return *solved_;
}
const Assessment& ChangedBuild::judged() {
  std::call_once(judged_once_, [this] { judged_.emplace(plan::judged(solved(), tuning_)); });
  return *judged_;
}
ChangedBuild* ChangedBuilds::with(const Change& change) {
  std::string key;
  for (const description::Setting& one : change.settings) key += one.key + "=" + one.value + "\n";
  const std::lock_guard lock(guard_);
  const auto known = made_.find(key);
  if (known != made_.end()) return known->second.get();
  std::unique_ptr<ChangedBuild>& made = made_[key];
  try {
    made =
        std::make_unique<ChangedBuild>(description::with_settings(build_, change.settings, "change"), units_, tuning_);
  } catch (const input::InputError&) {  // stays empty
  }
  return made.get();
}
}  // namespace lumwright::plan
