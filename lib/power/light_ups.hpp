// What a run is worth at the engine: light-ups per charge, the margin for starting the fan, danger to the fan.
#pragma once
#include "power/discharge.hpp"
#include "quantity/quantity.hpp"
#include <optional>

namespace lumwright::power {
/// Whole light-ups in one run. No credit for the recovery of a rested pack (10 to 30 % for alkaline cells).
/// Throws ModelError unless `each` > 0.
int light_ups(Duration runtime, Duration each);

/// The most that the pack can give, over what a starting fan asks: (E^2/4R) / (start_factor * running power). Below 1
/// the fan may not start. Nothing when the pack has no resistance. Throws ModelError unless all are positive.
std::optional<double> start_margin(Voltage open_circuit, Resistance resistance, Power running, double start_factor);

/// True when the pack sinks to the step-up's least input before anything else stops the run.
bool sinks_to_minimum(const FanSupply& supply, const Run& run);
}  // namespace lumwright::power
