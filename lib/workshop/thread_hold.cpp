#include "workshop/thread_hold.hpp"
#include "data/shop_rules.hpp"
#include "quantity/require.hpp"
#include "workshop/thread.hpp"
#include <algorithm>
#include <cmath>
#include <numbers>

namespace lumwright::workshop {
ThreadHold thread_hold(const TappedPlate& plate) {
  require_above_zero("thickness of the tapped plate", plate.plate, "mm");
  require_above_zero("strength of screw over plate", plate.screw_over_metal);
  const data::EngagementRow& rule = data::engagement_rule(plate.metal);
  const data::ThreadRow& thread = plate.thread;
  const ThreadSizes sizes = thread_sizes(thread);
  ThreadHold found{
      .hold = Hold::enough,
      .full_threads = plate.plate / thread.pitch,
      .over_major = plate.plate / thread.major,
      .least = std::max(rule.least * thread.major, data::shop_number("full threads least").value.value * thread.pitch),
      .prefer =
          std::max(rule.prefer * thread.major, data::shop_number("full threads preferred").value.value * thread.pitch),
      .strip_safe = std::max(1.0, plate.screw_over_metal) * 2.0 * sizes.stress_area /
                    (0.5 * std::numbers::pi * sizes.pitch_diameter),
      .basis = rule.basis};
  // a plate cut to the very size must not fail by the last bit
  const auto below = [&](Length limit) { return plate.plate < limit * (1.0 - 1e-9); };
  if (rule.never)
    found.hold = Hold::never;
  else if (below(found.least))
    found.hold = Hold::too_thin;
  else if (below(found.prefer))
    found.hold = Hold::short_of_wish;
  return found;
}
}  // namespace lumwright::workshop
