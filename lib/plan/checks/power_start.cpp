#include "data/speed_control.hpp"
#include "plan/check.hpp"
#include <fmt/format.h>

namespace lumwright {
namespace {
std::optional<Finding> judge_power_start(const Solved& solved) {
  if (!solved.supply) return unsolved(solved.supply);
  const SolvedSupply& s = *solved.supply;
  const auto& electrics = data::fan_electrics();
  const Power asked = s.run.end.voltage * s.run.end.current;
  const auto margin = start_margin(s.run.end.open_circuit, s.pack.resistance(), asked, electrics.start_current.value);
  if (!margin) return std::nullopt;  // a pack without resistance, such as a power bank
  Finding f;
  f.value = measure(solved, *margin);
  f.limit = Measure{AnyQuantity(1.0), ""};
  f.bound = Bound::at_least;
  f.verdict = *margin >= 1.5 ? Verdict::pass : *margin >= 1.0 ? Verdict::watch : Verdict::fail;
  f.why = fmt::format(
      "a starting fan asks for about {} times its running power; the pack, at its lowest, can give {} times that",
      format_number(electrics.start_current.value, 2), format_number(*margin, 2));
  if (f.verdict != Verdict::pass)
    f.action = "cells with less resistance, shorter or thicker leads, or start the fan before the pack is low";
  f.source = electrics.source;
  f.standing = electrics.standing;
  f.formula = "margin = (E^2 / 4R) / (k P)";
  f.terms = {computed(solved, "E", "pack at rest, at its lowest", s.run.end.open_circuit),
             computed(solved, "R", "resistance of pack, leads and fuse", s.pack.resistance()),
             computed(solved, "P", "power drawn when running", asked),
             computed(solved, "k", "starting over running power", electrics.start_current.value)};
  return f;
}
}  // namespace

Check power_start() {
  return {"power.start", "Can the pack start the fan", "Has the pack power in hand for the starting fan?", 360,
          judge_power_start};
}
}  // namespace lumwright
