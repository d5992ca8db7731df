// Design equations of a step-up's power stage: duty, ripple, what its switch limit lets through.
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright {
/// Equations of the makers' application note SLVA372 (2009, rev. 2022), sections 2 to 4, continuous conduction.
struct PowerStage {
  Voltage input;
  Voltage output;
  double efficiency;
  Inductance coil;
  Rotation frequency;
};
/// D = 1 - Vin eta / Vo. Throws ModelError unless 0 <= D < 1 and every field is positive; so do the others.
double duty(const PowerStage& stage);
/// Peak to peak current in the coil: Vin D / (f L).
Current ripple(const PowerStage& stage);
/// The output current at which the peak reaches the switch's limit: (Ilim - ripple/2)(1 - D). Throws ModelError if the
/// ripple alone exceeds the limit.
Current most_output(const PowerStage& stage, Current switch_limit);
/// ripple/2 + Io/(1 - D).
Current peak_switch_current(const PowerStage& stage, Current output);
/// The output current above which the coil current never falls to zero: Vin D (1 - D)/(2 f L).
Current continuous_above(const PowerStage& stage);
}  // namespace lumwright
