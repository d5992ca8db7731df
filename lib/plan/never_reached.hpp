// What to do where the fan alone never brings a pressure: for both checks of the minutes.
#pragma once
#include "boiler/raise.hpp"
#include <string>

namespace lumwright {
/// Advice of a raise that ended before the pressure asked for; it never lowers the water.
inline std::string never_reached_advice(const Raise& raise) {
  return raise.end == RaiseEnd::pack_stopped
             ? "see what ends the run (`power.stop`): the pack gives up first; the water stays where it is"
             : "a fan that draws more air; the water stays where it is";
}
}  // namespace lumwright
