// Between which curves eight worlds of ten lie.
#pragma once
#include "plan/curves.hpp"
#include "plan/worlds.hpp"

namespace lumwright {
/// Adds the bands of the hot fan curve and of the hot gas path to the curves of a build as it stands, from the first 64
/// of the worlds asked for: the tenth and ninetieth of a hundred at each flow. Worlds in which the draught has no
/// answer are left out; nothing is added with fewer than 16 worlds, or without a fan.
void add_curve_bands(DraughtCurves& curves, const Build& build, const Tuning* tuning, const WorldsAsked& asked);
}  // namespace lumwright
