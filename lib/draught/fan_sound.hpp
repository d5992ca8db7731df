// How loud a small fan is.
#pragma once
#include "data/fans.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"

namespace lumwright::draught {
struct SoundingFan {
  data::FanKind kind;
  Length frame, thickness;
  Rotation rated;    // speed at its rated voltage
  Rotation running;  // now
};
/// dB(A) at 1 m, in free air and alone: a line through what makers print of axial fans (data/fan_sound.yaml), blowers
/// by their body above it; from the rated speed to the running one by what one and the same fan does. A box round it
/// and gas that it has to pull make it sound otherwise. Ten of a hundred fans lie below the band, ten above. Throws
/// ModelError for sizes or speeds that are not above zero.
Band<double> sound_level(const SoundingFan& fan);
}  // namespace lumwright::draught
