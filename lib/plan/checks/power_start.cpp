#include "data/limits.hpp"
#include "data/speed_control.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/starting.hpp"
#include "plan/detail/two_limits.hpp"
#include "power/light_ups.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_power_start(const model::Solved& solved) {
  if (!solved.supply) return unsolved(solved.supply);
  const model::SolvedSupply& s = *solved.supply;
  if (solved.fan) {
    Finding volts = judge_start_voltage(solved);
    if (volts.verdict != Verdict::pass) return volts;
  }
  const auto& electrics = data::fan_electrics();
  const Power asked = s.run.end.voltage * s.run.end.current;
  const auto margin =
      power::start_margin(s.run.end.open_circuit, s.pack.resistance_at_once(), asked, electrics.start_current.value);
  if (!margin) return std::nullopt;  // a pack without resistance, such as a power bank
  Finding f;
  static const double ample = data::limit<double>("power.start margin"),
                      least = data::limit<double>("power.start least");
  judge_by(f, measure(solved, *margin), {Bound::at_least, AnyQuantity(ample), AnyQuantity(least)});
  f.why = fmt::format(
      "a starting fan asks for about {} times its running power; the pack, at its lowest, can give {} times that",
      format_number(electrics.start_current.value, 2), format_number(*margin));
  if (f.verdict != Verdict::pass)
    f.action = "cells with less resistance, shorter or thicker leads, or start the fan before the pack is low";
  f.basis = electrics.basis;
  f.formula = "margin = (E^2 / 4R) / (k P)";
  f.terms = {computed(solved, "E", "pack at rest, at its lowest", s.run.end.open_circuit),
             computed(solved, "R", "resistance of pack, leads and fuse within a second", s.pack.resistance_at_once()),
             computed(solved, "P", "power drawn when running", asked),
             computed(solved, "k", "starting over running power", electrics.start_current.value)};
  return f;
}
}  // namespace

Check power_start() {
  return {"power.start", "Can the pack start the fan", "Has the pack power in hand for the starting fan?",
          judge_power_start};
}
}  // namespace lumwright::plan
