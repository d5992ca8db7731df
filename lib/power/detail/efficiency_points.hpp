// The parts of the step-up that a discharge evaluates thousands of times: its losses, and efficiency between points.
#pragma once
#include "numeric/curve.hpp"
#include "power/step_up.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <vector>

namespace lumwright::power {
/// The input current of a boosting step-up, or nothing when its losses leave no answer. `boosted` in step_up.hpp says
/// more.
std::optional<Current> input_current(const StepUpLosses& losses, Voltage output, StepUpDuty duty);

/// Efficiency against input voltage at one output power: straight along output power among the points of each input
/// voltage, then straight between input voltages; level beyond the ends. Throws ModelError for no points, a share that
/// is not between 0 and 1, or two points at the same place.
class EfficiencyAtInput {
 public:
  EfficiencyAtInput(const std::vector<EfficiencyPoint>& points, Power output);
  double operator()(Voltage input) const;
  bool beyond(Voltage input) const;  // carried on level past the points, in input or output
  std::vector<Voltage> inputs() const;

 private:
  std::vector<double> volts_;
  numeric::LinearCurve share_;
  bool beyond_power_ = false;
};
}  // namespace lumwright::power
