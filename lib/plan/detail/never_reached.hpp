// What to do where the fan alone never brings a pressure: for both checks of the minutes.
#pragma once
#include "boiler/raise.hpp"
#include <string>

namespace lumwright::plan {
/// Advice of a raise that ended before the pressure asked for; it never lowers the water.
inline std::string never_reached_advice(const boiler::Raise& raise) {
  return raise.end == boiler::RaiseEnd::pack_stopped
             ? "the pack gives up first: look at what ends the run; fill the boiler as you always do"
             : "a fan that draws more air; fill the boiler as you always do";
}
}  // namespace lumwright::plan
