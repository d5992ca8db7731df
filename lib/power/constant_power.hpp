// A load of constant power on a voltage behind a resistance: closed forms.
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright::power {
/// A source and the power asked of it.
struct PowerDraw {
  Voltage emf;
  Resistance resistance;
  Power power;
};
/// The smaller current of the two that satisfy E I - R I^2 = P: the stable one. Circuit theory, exact.
/// Throws ModelError unless emf > 0, R >= 0, P > 0, or if P is more than E^2/(4R).
Current current(const PowerDraw& draw);
/// E - I R.
Voltage terminal_voltage(const PowerDraw& draw);
/// E^2/(4R), given at V = E/2 (maximum power transfer). Throws ModelError unless R > 0.
Power most_power(Voltage emf, Resistance resistance);
/// The terminal voltage at which P can be drawn no longer, half of what is open then: sqrt(R P).
Voltage collapse_voltage(Resistance resistance, Power power);

/// Charge drawn while the open-circuit voltage falls along a straight line.
struct StraightPiece {
  Charge charge;
  Voltage from;
  Voltage to;  // to <= from
};
/// The time that takes at constant power; exact, by integrating 1/I = (E + sqrt(E^2 - 4RP))/(2P) over E.
/// Throws ModelError if the power cannot be drawn at `to`.
Duration time_to_draw(const StraightPiece& piece, Resistance resistance, Power power);
}  // namespace lumwright::power
