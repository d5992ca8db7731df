// Splits a load into the laws it follows at falling voltage.
#pragma once
#include "power/load_curve.hpp"

namespace lumwright::power {
/// Falling, without gaps, from `highest` down to the voltage at which the load has no answer left. Where a step-up
/// passes its input through, and where a series regulator holds, are regimes of their own. Throws ModelError for a load
/// out of range.
std::vector<LoadRegime> regimes(const Load& load, Voltage highest);
}  // namespace lumwright::power
