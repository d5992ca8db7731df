// From many worlds to bands, shares, and what to measure next.
#pragma once
#include "data/measurements.hpp"
#include "plan/assessment.hpp"
#include "plan/worlds.hpp"

namespace lumwright {
/// Gives results their bands. A band runs from the tenth to the ninetieth hundredth of the worlds; where the value as
/// described lies outside (a spread to one side), the band is widened to it. A time that is never reached counts as
/// longer than all others.
void add_result_bands(std::vector<Result>& results, const Worlds& worlds);
/// Puts what else the worlds show into an assessment of the build as it stands.
void add_bands(Assessment& assessment, const Solved& central, const Worlds& worlds, const WorldsAsked& asked);

/// What a measurement would read in each world, an error of its own on it.
struct WorldReadings {
  const data::MeasurementRow& row;
  std::string within;  // how well, as the page says it
  std::vector<double> si;
};
/// Of the measurements of data/measurements.yaml, those of which the worlds know the quantity.
std::vector<WorldReadings> readings_in(const Worlds& worlds, const Solved& central, const std::vector<Result>& results,
                                       std::uint64_t seed);

/// What one answer hangs on: the inputs by the share of its variance that goes with them, and the measurements by what
/// they would leave of its band: sqrt(1 - share of its variance that goes with the reading), as for a normal answer.
/// Over the worlds in which the answer exists. A share that the number of worlds cannot tell from nothing is left out.
Leaning leaning_of(const std::string& answer, const Solved& central, const Worlds& worlds,
                   const std::vector<WorldReadings>& readings);
}  // namespace lumwright
