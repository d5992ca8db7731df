// What two keys of one description say that cannot both be true of one object.
#pragma once
#include "description/build.hpp"
#include <vector>

namespace lumwright::description {
/// Faults of what was read; a key that is not given contradicts nothing. Only what no object can be: a build that
/// merely will not work is a matter for the checks.
std::vector<input::Fault> contradictions(const Build& build);
}  // namespace lumwright::description
