// What a part of the model is called to its owner.
#pragma once
#include "model/outcome.hpp"
#include <string_view>

namespace lumwright::model {
/// What a part is called to its owner; the check that says so where it cannot be worked out, and what to do then.
struct PartName {
  std::string_view words, told_by, action;
};
constexpr std::string_view look_for_a_slip = "look for a slipped decimal point or unit in what is named here";
inline PartName part_name(const Outcome<SolvedFan>&) { return {"the fan", "fan.curve", look_for_a_slip}; }
inline PartName part_name(const Outcome<SolvedSupply>&) {
  return {"the supply", "power.light_ups", "more or better cells, or a fan that asks less"};
}
inline PartName part_name(const Outcome<SolvedDraught>&) {
  return {"the draught", "draught.flow",
          "look for a slipped decimal point or unit along the way of the gas; else shorten or widen it, or take a fan "
          "with more pressure"};
}
inline PartName part_name(const Outcome<SolvedFit>&) { return {"the fit in the chimney", "fit.cold", look_for_a_slip}; }
inline PartName part_name(const Outcome<SolvedRaise>&) { return {"steam raising", "raise.time", look_for_a_slip}; }
inline PartName part_name(const Outcome<FanUnit>&) { return {"the unit", "make.lid", look_for_a_slip}; }
}  // namespace lumwright::model
