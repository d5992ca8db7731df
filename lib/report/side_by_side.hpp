// Builds beside each other: a sweep along a key or two, and builds that were written apart.
#pragma once
#include "description/build.hpp"
#include "plan/sweep.hpp"
#include "report/page.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
/// A row for each point with the chief answers; for one key with a bar of characters for the minutes to steam.
std::string sweep_report(const std::string& name, const std::vector<plan::SweepAxis>& axes,
                         const std::vector<plan::SweepPoint>& points, const TextStyle& style);
/// The same as a table for a spreadsheet, in SI or in the system that is asked for, with the unit in the heading; the
/// swept values as written.
std::string sweep_csv(const std::vector<plan::SweepAxis>& axes, const std::vector<plan::SweepPoint>& points,
                      UnitSystem units = UnitSystem::as_written);

struct Compared {
  const description::Build& build;
  plan::Assessment assessment;
};
/// What differs in the builds, key by key, and what differs in the answers; of each answer whether the difference is
/// larger than what is not known for sure: the bands then do not meet. Two builds at least.
std::string compare_report(const std::vector<Compared>& all, const TextStyle& style);
}  // namespace lumwright::report
