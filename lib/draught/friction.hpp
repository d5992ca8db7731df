// Friction of a gas in a tube: Darcy factors from developing laminar to rough turbulent, and the drop they make.
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright::draught {
// All factors are Darcy's: drop = f (length / bore) velocity head. Reynolds numbers above zero, relative roughness
// (roughness over bore) 0 to 0.1, length over bore above zero; ModelError outside.

/// Apparent factor of laminar flow that enters with a flat profile: Shah, J. Fluids Eng. 100 (1978) 177-179; +-2 %.
/// Contains the change of momentum, so the loss at the far end is 1 velocity head, not 2.
double friction_developing(double re, double length_over_bore);

/// Short tubes at every Reynolds number: Churchill's combination with its laminar term replaced by Shah's. Smooth, and
/// the drop always rises with the flow. Laminar limit: Shah; long-tube limit: Churchill. +-10 % laminar, +-20 % from
/// 2000 to 4000, where nobody knows better.
double friction_short_tube(double re, double length_over_bore, double relative_roughness);

/// 4 m / (pi bore viscosity).
double reynolds_tube(MassFlow flow, Length bore, Viscosity viscosity);

struct Tube {
  Length bore;
  Length length;
  Length roughness;  // data::roughness
};

/// f length / bore: a friction factor in velocity heads of the whole tube.
double friction_heads(double friction, const Tube& tube);

/// Loss by friction along a tube, from friction_short_tube. Zero flow gives zero. Throws ModelError for a flow below
/// zero, a bore or length that is not above zero, a roughness outside 0 to bore / 10, a density or viscosity of zero.
Pressure tube_friction(MassFlow flow, const Tube& tube, Density density, Viscosity viscosity);

/// Mean velocity, and the pressure rho v^2 / 2 that belongs to it. Flow not below zero, area and density above zero.
Velocity mean_velocity(MassFlow flow, Area area, Density density);
Pressure velocity_head(MassFlow flow, Area area, Density density);

/// k velocity heads. `k` is finite and not below zero.
Pressure loss(double k, MassFlow flow, Area area, Density density);
}  // namespace lumwright::draught
