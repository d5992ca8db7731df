#include "power/power_stage.hpp"
#include "power/require.hpp"

namespace lumwright {
double duty(const PowerStage& stage) {
  require_positive(stage.input, "V", "step-up input");
  require_positive(stage.output, "V", "step-up output");
  require_share(stage.efficiency, "step-up efficiency");
  const double d = 1.0 - in(stage.input, stage.output) * stage.efficiency;
  if (!(d >= 0.0)) throw ModelError("step-up input " + format(stage.input, "V") + " is above its output");
  return d;
}
Current ripple(const PowerStage& stage) {
  require_positive(stage.coil, "uH", "coil");
  require_positive(stage.frequency, "kHz", "switching frequency");
  return stage.input * duty(stage) / (stage.frequency * stage.coil);
}
Current most_output(const PowerStage& stage, Current switch_limit) {
  const Current middle = switch_limit - 0.5 * ripple(stage);
  require_positive(middle, "A", "switch limit less half the ripple");
  return middle * (1.0 - duty(stage));
}
Current peak_switch_current(const PowerStage& stage, Current output) {
  require_not_negative(output, "A", "step-up output current");
  return 0.5 * ripple(stage) + output / (1.0 - duty(stage));
}
Current continuous_above(const PowerStage& stage) { return 0.5 * ripple(stage) * (1.0 - duty(stage)); }
}  // namespace lumwright
