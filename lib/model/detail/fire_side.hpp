// The fire and the boiler of a description, with usual values where it is silent.
#pragma once
#include "boiler/boiler.hpp"
#include "description/build.hpp"
#include "fire/fire.hpp"
#include "model/inputs.hpp"

namespace lumwright::model {
/// The fire on a grate of this area. Throws ModelError as Fire does.
fire::Fire fire_of(const description::Build& build, Inputs& inputs, Area grate);
/// The boiler round it. A description without water gets a litre: an instant does not depend on it, and a raise is not
/// tried without. Throws ModelError as check(Boiler) does.
boiler::Boiler boiler_of(const description::Build& build, Inputs& inputs, Area grate);
/// Gauge pressure at which the fan comes off: own-blower pressure, else working pressure, else nothing.
std::optional<GaugePressure> take_over(const description::Build& build, Inputs& inputs);
}  // namespace lumwright::model
