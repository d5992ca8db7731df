// How loud small fans are, by what makers print.
#pragma once
#include "data/basis.hpp"
#include "data/fans.hpp"
#include "quantity/band.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
/// dB(A) at 1 m in free air.
struct FanSoundLaw {
  double base, speed, size;  // of axial fans: base + speed lg(tip speed, m/s) + size lg(wheel, m)
  Band<double> spread;
  double slower;  // for each ten times of speed of one fan
  Basis basis{};
};
/// `base`, `speed` and `size` are the axial ones for both: blowers lie above that line.
const FanSoundLaw& fan_sound_law(FanKind kind);

struct BlowerSound {
  std::string id;
  Length frame, thickness;
  double above;  // the line of axial fans
  Basis basis{};
};
const std::vector<BlowerSound>& blower_sounds();
}  // namespace lumwright::data
