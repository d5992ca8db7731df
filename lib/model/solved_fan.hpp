// The fan of the build: its label, its curve at rated speed, its motor.
#pragma once
#include "description/build.hpp"
#include "draught/fan_estimate.hpp"
#include "draught/fan_sound.hpp"
#include "draught/fan_speed.hpp"
#include "model/inputs.hpp"
#include "model/outcome.hpp"

namespace lumwright::model {
struct SolvedFan {
  draught::FanLabel label;          // as printed
  std::optional<Length> thickness;  // as printed, or taken where something asks for it
  draught::FanCurve curve;
  std::optional<draught::MotorLaw> motor;  // nothing without a rated voltage and speed
  std::optional<Current> current;  // rated
  Temperature gas_limit;
  bool inside;  // the box, in the gas
  std::optional<draught::SoundingFan> sounds{};  // at its rated speed; where its size and speed are known
  double sound_power = 1.0;                      // this fan's over that of others like it
};

Outcome<SolvedFan> solve_fan(const description::Build& build, Inputs& inputs);
}  // namespace lumwright::model
