#include "power/light_ups.hpp"
#include "power/constant_power.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <cmath>

namespace lumwright::power {
int light_ups(Duration runtime, Duration each) {
  require_not_negative("runtime", runtime, "min");
  require_above_zero("time of a light-up", each, "min");
  const double whole =
      std::floor(in(runtime, each) * (1.0 + 1e-12));  // 60 min hold six of 10 min, whatever the rounding
  if (whole > 1e9) throw ModelError("time of a light-up " + format(each, "s") + " is too short to count with");
  return static_cast<int>(whole);
}

std::optional<double> start_margin(Voltage open_circuit, Resistance resistance, Power running, double start_factor) {
  require_not_negative("pack resistance", resistance, "ohm");
  require_above_zero("running power", running, "W");
  require_above_zero("start factor", start_factor);
  if (!(resistance > Resistance())) return std::nullopt;
  return in(most_power(open_circuit, resistance), start_factor * running);
}

bool sinks_to_minimum(const FanSupply& supply, const Run& run) {
  return supply.step_up && (run.reason == StopReason::step_up_minimum || run.reason == StopReason::collapse);
}
}  // namespace lumwright::power
