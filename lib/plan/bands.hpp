// From many worlds to bands, shares, and what to measure next.
#pragma once
#include "plan/assessment.hpp"
#include "plan/worlds.hpp"

namespace lumwright {
/// Puts what the worlds show into an assessment of the build as it stands. A band runs from the tenth to the ninetieth
/// hundredth of the worlds; where the value as described lies outside (a spread to one side), the band is widened to
/// it. A time that is never reached counts as longer than all others.
void add_bands(Assessment& assessment, const Solved& central, const Worlds& worlds, const WorldsAsked& asked);

/// What one answer hangs on: the inputs by the share of its variance that goes with them, and the measurements of
/// data/measurements.yaml by what they would leave of its band: sqrt(1 - share of its variance that goes with the
/// reading, its error on it), as for a normal answer. Over the worlds in which the answer exists.
Leaning leaning_of(const std::string& answer, const Solved& central, const Worlds& worlds,
                   const std::vector<Result>& results, std::uint64_t seed);
}  // namespace lumwright
