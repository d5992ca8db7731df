#include "draught/fan_sound.hpp"
#include "data/fan_sound.hpp"
#include "draught/fan_label.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::draught {
namespace {
double above_the_line(const SoundingFan& fan) {
  if (fan.kind == data::FanKind::axial) return 0.0;
  const auto apart = [&](const data::BlowerSound& body) {
    return 2.0 * std::abs(std::log2(in(body.frame, fan.frame))) +
           std::abs(std::log2(in(body.thickness, fan.thickness)));
  };
  const auto& all = data::blower_sounds();
  return std::min_element(all.begin(), all.end(), [&](const auto& x, const auto& y) { return apart(x) < apart(y); })
      ->above;
}
}  // namespace

Band<double> sound_level(const SoundingFan& fan) {
  require_above_zero("fan frame", fan.frame);
  require_above_zero("fan thickness", fan.thickness);
  require_above_zero("rated speed of the fan", fan.rated);
  require_above_zero("speed of the fan", fan.running);
  const data::FanSoundLaw& law = data::fan_sound_law(fan.kind);
  const Length across = data::fan_wheel_share(fan.kind) * fan.frame;
  const double level = law.base + law.speed * std::log10(in(wheel(fan.kind, fan.frame, fan.rated).tip_speed, m_per_s)) +
                       law.size * std::log10(in(across, m)) + above_the_line(fan) +
                       law.slower * std::log10(in(fan.running, fan.rated));
  return {level, level + law.spread.low, level + law.spread.high};
}
}  // namespace lumwright::draught
