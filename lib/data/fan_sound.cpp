#include "data/fan_sound.hpp"
#include "data/table.hpp"

namespace lumwright::data {
namespace {
FanSoundLaw read_sound_law(const char* kind) {
  const Row line = section("fan_sound", "axial"), row = section("fan_sound", kind);
  return {.base = line.number("base"),
          .speed = line.number("speed"),
          .size = line.number("size"),
          .spread = row.triple<double>("spread"),
          .slower = row.number("slower"),
          .basis = row.basis()};
}
}  // namespace

const FanSoundLaw& fan_sound_law(FanKind kind) {
  static const FanSoundLaw axial = read_sound_law("axial"), blower = read_sound_law("blower");
  return kind == FanKind::axial ? axial : blower;
}

const std::vector<BlowerSound>& blower_sounds() {
  static const std::vector<BlowerSound> all = read_all("fan_sound", "bodies", [](const Row& row) {
    return BlowerSound{.id = row.text("id"),
                       .frame = row.quantity<Length>("frame"),
                       .thickness = row.quantity<Length>("thickness"),
                       .above = row.number("above"),
                       .basis = row.basis()};
  });
  return all;
}
}  // namespace lumwright::data
