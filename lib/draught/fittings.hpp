// Loss factors of inlets, steps, cones, bends, screens and of things that stand in the way of the gas.
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright::draught {
// Every factor is in velocity heads of the section with the smaller bore, unless it says otherwise, and for Reynolds
// numbers above about 1e4. Ours are 1e3 to 1e4: bends lose 1.2 to 2 times as much there. Geometry that cannot be cut
// (a bore of zero, a step that narrows where it should widen) throws ModelError.

enum class Inlet { square, projecting, rounded };

/// Whose equation or chart. Idelchik's inlets are one family (square = rounded of no radius = projecting by nothing)
/// and smooth, so they are the default. Each function names the handbooks it knows and throws ModelError for the
/// others.
enum class Handbook { idelchik, rennels, crane, miller, harris };

struct InletShape {
  Inlet kind;
  Length bore;
  Length wall;        // thickness of the edge; only `projecting` reads it
  Length projection;  // how far the mouth stands out of the wall; only `projecting` reads it
  Length radius;      // of the rounding; only `rounded` reads it
};
/// Loss at a tube's mouth, after Idelchik, diagrams 3-1 to 3-4.
double inlet_loss(const InletShape& inlet);

/// Sharp edge, flush with a wall: idelchik, crane, rennels, miller.
double square_inlet(Handbook handbook = Handbook::idelchik);

struct ProjectingInlet {
  Length bore;
  Length wall;
  Length projection;  // only idelchik reads it; the others mean half a bore or more
};
/// Tube end that stands out into the box it draws from: all five handbooks. 1 for a knife edge (Borda), 0.5 for a thick
/// one.
double projecting_inlet(const ProjectingInlet& inlet, Handbook handbook = Handbook::idelchik);

struct RoundedInlet {
  Length bore;
  Length radius;
};
/// Flush mouth with a rounded edge: idelchik (a curve that falls smoothly to radius = 0.2 bore), crane (straight
/// lines), rennels.
double rounded_inlet(const RoundedInlet& inlet, Handbook handbook = Handbook::idelchik);

struct Step {
  Length small;  // bore of the narrow side, to which the factor refers
  Length large;
};
/// Sudden widening, Borda-Carnot: (1 - A1/A2)^2. Theory, +-5 %.
double sudden_expansion(const Step& step);
/// Sudden narrowing with a sharp edge: idelchik (diagram 3-9), crane, rennels.
double sudden_contraction(const Step& step, Handbook handbook = Handbook::idelchik);
/// Loss where a tube opens into still gas: one head with a flat profile (and with friction_short_tube).
inline constexpr double free_exit = 1.0;

// Plates and screens across the gas, on the velocity of approach. `open_share` is hole area over whole area.

/// Thin plate with sharp-edged holes: (0.707 sqrt(1-s) + 1 - s)^2 / s^2, Idelchik ch. 8. 0 < open_share <= 1.
double perforated_plate(double open_share);

/// Screen of round wire or of rings: 1.3 (1-s) + (1/s - 1)^2, Idelchik ch. 8 (from memory), for wires above Re 1e3 or
/// so; thin wires in slow gas lose up to twice as much. 0 < open_share <= 1.
double wire_screen(double open_share);

// Things in the way. Estimates of the area that is left for the gas, (D / 4h)^2; trend as Idelchik's diagram 3-8; x2.

struct MouthGap {
  Length tube_bore;
  Length gap;  // from the tip of the blast pipe to the tube's mouth
};
/// Blast pipe or superheater that ends below the tube's mouth, on the tube's velocity head.
double blast_pipe_obstruction(const MouthGap& mouth);

struct BoxDepth {
  Length fan_opening;  // diameter of the hole in front of the fan
  Length distance;     // from the tube's end wall to the fan
};
/// Shadow of the box's floor on the fan, on the velocity head in the fan's opening.
double box_shadow(const BoxDepth& box);
}  // namespace lumwright::draught
