// Whether a fan starts from rest on the voltage that it gets: one rule for every check that asks.
#pragma once
#include "plan/check.hpp"

namespace lumwright::plan {
/// Of fan and supply, both solved: passes from the voltage at which the fan starts; below the least at which such fans
/// start, or below what was stated, it fails.
Finding judge_start_voltage(const model::Solved& solved);
}  // namespace lumwright::plan
