// How loud the fan is, and how slowly it may turn before steam comes too late.
#pragma once
#include "model/solved.hpp"
#include <optional>

namespace lumwright::plan {
/// dB(A) at 1 m, the fan alone in free air, at the speed at which it runs on the engine, else at its rated one. Nothing
/// where its size or speed is not known.
std::optional<double> sound_of(const model::Solved& solved);

/// The fan held at a lower voltage, from cold to its own blower's pressure (else to the working pressure).
struct QuietRun {
  Voltage voltage;
  Duration takes;
  double sound;  // as sound_of
};
/// The least voltage, to a hundredth of the rated one, at which steam still comes within the time that is wanted; no
/// lower than a fan starts at. Nothing where the time is not kept as it is, where no fan makes the draught, or where
/// its size is not known. Solves the raise about ten times.
std::optional<QuietRun> quietest(const model::Solved& solved);
}  // namespace lumwright::plan
