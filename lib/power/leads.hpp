// Leads: copper's resistance by gauge or section, and the drop in both wires.
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright::power {
/// Flexible wire by its nominal section: the standard's greatest value where the section is listed, else that of the
/// nearest listed section scaled by area. Throws ModelError unless section > 0.
LineResistance wire_resistance(Area section);
/// Copper at another temperature: 1 + 0.00393/K (t - 20 degC) (IEC 60028). -60 to 200 degC, else ModelError.
double copper_factor(Temperature t);
/// Out and back.
Resistance loop_resistance(LineResistance line, Length run, Temperature t);

/// The current that a single wire carries in free air for 30 K rise; in a bundle or a hot cab the lower value of the
/// band. Between the listed sections, and below the smallest, on a power of the section; above the largest that of the
/// largest. Throws ModelError unless section > 0.
Current wire_carries(Area section, bool in_a_bundle);
}  // namespace lumwright::power
