// A build with a change made to it: set as the change says, and solved once, whichever checks ask after it.
#pragma once
#include "plan/moves.hpp"
#include <map>
#include <memory>
#include <mutex>

namespace lumwright::plan {
class ChangedBuild {
 public:
  ChangedBuild(description::Build build, UnitSystem units, const model::Tuning* tuning)
      : build_(std::move(build)), units_(units), tuning_(tuning) {}
  const description::Build& build() const { return build_; }
  /// Without the fire's course, which is most of the work.
  const model::Solved& cold();
  const model::Solved& solved();
  const Assessment& judged();

 private:
  description::Build build_;
  UnitSystem units_;
  const model::Tuning* tuning_;
  std::once_flag cold_once_, solved_once_, judged_once_;
  std::optional<model::Solved> cold_, solved_;
  std::optional<Assessment> judged_;
};
/// May be asked from several threads at once.
class ChangedBuilds {
 public:
  ChangedBuilds(const description::Build& build, UnitSystem units, const model::Tuning* tuning)
      : build_(build), units_(units), tuning_(tuning) {}
  /// Nothing where the change is beyond the limits of a key, or against another.
  ChangedBuild* with(const Change& change);

 private:
  const description::Build& build_;
  UnitSystem units_;
  const model::Tuning* tuning_;
  std::mutex guard_;
  std::map<std::string, std::unique_ptr<ChangedBuild>> made_;
};
}  // namespace lumwright::plan
