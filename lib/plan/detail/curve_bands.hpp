// Between which curves eight samples of ten lie.
#pragma once
#include "plan/curves.hpp"
#include "plan/samples.hpp"

namespace lumwright::plan {
/// Adds the bands of the hot fan curve and of the hot gas path to the curves of a build as it stands, from the first 64
/// of the samples asked for: the tenth and ninetieth of a hundred at each flow. Samples in which the draught has no
/// answer are left out; nothing is added with fewer than 16 samples, or without a fan.
void add_curve_bands(DraughtCurves& curves, const description::Build& build, const model::Tuning* tuning,
                     const SamplesAsked& asked);
}  // namespace lumwright::plan
