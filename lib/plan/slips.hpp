// What in a description looks like a decimal point or a unit that has slipped. A remark, never a refusal.
#pragma once
#include "description/build.hpp"
#include "plan/assessment.hpp"

namespace lumwright::plan {
/// One remark for each key that lies far from what is usual beside the others, or by itself; in the order of the table
/// data/slips.yaml.
std::vector<Remark> likely_slips(const description::Build& build);
/// One remark for each older name in a file.
std::vector<Remark> older_names(const std::vector<description::Renamed>& renamed);
}  // namespace lumwright::plan
