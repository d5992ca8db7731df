// From many samples to bands, shares, and what to measure next.
#pragma once
#include "data/measurements.hpp"
#include "plan/assessment.hpp"
#include "plan/samples.hpp"

namespace lumwright::plan {
/// Puts what else the samples show into an assessment of the build as it stands.
void add_bands(Assessment& assessment, const model::Solved& central, const Samples& samples, const SamplesAsked& asked);

/// What a measurement would read in each sample, an error of its own on it.
struct SampleReadings {
  const data::MeasurementRow& row;
  std::string within;  // how well, as the page says it
  std::vector<double> si;
};
/// Of the measurements of data/measurements.yaml, those of which the samples know the quantity.
std::vector<SampleReadings> readings_in(const Samples& samples, const model::Solved& central,
                                        const std::vector<model::Result>& results, std::uint64_t seed);

/// What one answer hangs on: the inputs by the share of its variance that goes with them, and the measurements by what
/// they would leave of its band: sqrt(1 - share of its variance that goes with the reading), as for a normal answer.
/// Over the samples in which the answer exists. A share that so many samples cannot tell from nothing is left out.
Sensitivity sensitivity_of(const std::string& answer, const model::Solved& central, const Samples& samples,
                           const std::vector<SampleReadings>& readings);
}  // namespace lumwright::plan
