// Packs, boards and wires for the tests of the checks of the supply at their limits.
#pragma once
#include "limits.hpp"
#include <cmath>

namespace lumwright {
inline std::string nimh(const std::string& more) {
  return "load: { power: 1.8 W, voltage: 12 V }\nplace: { air: 20 degC }\nsupply:\n"
         "  pack: { cell: NiMH AA, series: 4, capacity: 2000 mAh, condition: good }\n" +
         more;
}
inline const std::string board = "  step_up: { module: small 1.2 MHz, output: 12 V }\n";
inline const std::string wired = "  leads: { section: 0.25 mm2, length: 300 mm }\n  fuse: 1.25 A\n";
inline const std::string fan =
    "fan: { kind: axial, frame: 60 mm, thickness: 25 mm, rated: { voltage: 12 V, current: 0.15 A, speed: 4000 rpm } "
    "}\n";
inline const std::string lead_acid = "supply:\n  pack: { cell: lead-acid 12 V 7 Ah }\n" + wired;

inline Current& most_current(Bench& b) { return b.supply().run.most_current; }
}  // namespace lumwright
