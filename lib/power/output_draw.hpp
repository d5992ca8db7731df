// What fan and control take at the voltage before them; shared by the supply's state and the discharge.
#pragma once
#include "power/fan_supply.hpp"
#include <optional>

namespace lumwright::power {
struct OutputDraw {
  Current current;  // mean
  Voltage fan_voltage;
  double speed;
  Power fan;
};
/// Throws ModelError if a series regulator has no voltage left or a chopped fan stands still.
OutputDraw output_draw(const FanSupply& supply, Voltage v);

/// The step-up with its output turned down where the control says so.
std::optional<StepUp> step_up_in_use(const FanSupply& supply);

/// Throws ModelError for a field that is out of range.
void check(const FanSupply& supply);
}  // namespace lumwright::power
