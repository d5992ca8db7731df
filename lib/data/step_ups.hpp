// Small step-up converter boards by type: losses as a data sheet gives them, limits as they are measured.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
struct StepUpRow {
  std::string id;
  Resistance switch_resistance;
  Resistance coil_resistance;
  Voltage diode_drop;                       // zero for a synchronous type
  std::optional<Resistance> second_switch;  // that takes the diode's place in a synchronous type
  Duration switching_time;
  Rotation frequency;
  Current quiescent;
  Inductance coil;
  Current switch_limit;
  std::optional<Current> input_limit;  // continuous, measured
  Voltage real_minimum;                // input below which boards of this type misbehave, whatever the label says
  bool runs_away;                      // below that the output can rise far above its setting
  Voltage input_most;                  // what its parts stand
  Voltage output_most;
  ThermalResistance hot_spot_per_loss;
  Temperature hot_spot_limit;
  Basis basis{};
};
const std::vector<StepUpRow>& step_ups();

/// Throws ModelError that names the id if there is none.
const StepUpRow& step_up(std::string_view id);

/// For a step-up of which only an efficiency is known: the usual drop of its diode when it passes its input through.
struct UnknownStepUp {
  Voltage diode_drop;
  Basis basis{};
};
const UnknownStepUp& unknown_step_up();
}  // namespace lumwright::data
