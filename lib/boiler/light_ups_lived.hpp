// Light-ups one after the other on one charge: each begins with what the last one left.
#pragma once
#include "boiler/raise.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <vector>

namespace lumwright::boiler {
struct LivedLightUp {
  Duration time;  // from cold to the goal
  Charge used;    // counted at the rated current
};
enum class LightUpsEnd {
  pack_stops,  // before the next one is done
  too_slow,    // the next one takes longer than the owner will wait
  never        // not even the first one comes to pressure
};
struct LightUpsLived {
  std::vector<LivedLightUp> each;
  LightUpsEnd end;
};

/// Lives through them. `first` is the raise from the charge that the battery starts with; `goal` the event at which the
/// fan comes off. No credit for rest in between.
///
/// How long one takes and what it uses hang on the pack's open-circuit voltage half-way through it, smoothly: two more
/// raises, late and in between, carry a parabola of their logarithms, within 0.5 % of a raise for every one of them;
/// the late one alone, and a straight line, where the last takes hardly longer than the first. Few light-ups are raised
/// one by one. Throws ModelError as raise() does, or without a battery.
LightUpsLived live_through(const RaiseInput& input, const Raise& first, RaiseEventKind goal,
                           std::optional<Duration> within);
}  // namespace lumwright::boiler
