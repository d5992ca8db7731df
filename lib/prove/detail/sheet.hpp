// The sheet of readings, of samples that are there already.
#pragma once
#include "prove/detail/weigh.hpp"
#include "prove/prove.hpp"

namespace lumwright::prove {
/// The share of sound units that would be read below a value with that instrument.
double share_below(const Cloud& sound, std::size_t reading, const Instrument& instrument, double at);
/// Without samples: no bands.
std::vector<Expected> expected(const SampledUnit& unit, const Cloud& sound);
Sheet sheet_with(const SampledUnit& unit, const Cloud& sound, const description::Build& build);
}  // namespace lumwright::prove
