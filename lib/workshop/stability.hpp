// The fan stack on its chimney: how it leans, what would tip it, and what it does to a thin chimney.
#pragma once
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::workshop {
using Force = decltype(Mass() * Acceleration());
using Moment = decltype(Force() * Length());

/// Height over the mouth of the chimney; what hangs inside is negative.
struct StackPart {
  std::string name;
  Mass mass;
  Length centre;
  Length off_axis;  // sideways of the tube's axis, to the side it leans to
};
struct ChimneyTube {
  Length bore;
  std::optional<Length> wall;    // where it is thinnest
  std::optional<Length> height;  // free height, mouth to smokebox
  std::string metal;
};
struct Stack {
  std::vector<StackPart> parts;
  Length engaged;    // tube inside the chimney
  Length clearance;  // diametral, cold, the most that it may be
  Length seat;       // radius on which the flange rests on the mouth; 0 when it hangs on the tube alone
  Length top;        // height over the mouth where a knock strikes
  Force push;        // sideways, of the knock
  ChimneyTube chimney;
};

/// What the chimney feels. Stresses are for the knock at full lean.
struct ChimneyLoad {
  Force at_mouth;                       // of the tube on the bore, two-point contact
  Force at_tube_end;                    // opposite
  Pressure bearing;                     // mean over the bore at the mouth, linear pressure along the tube
  std::optional<Moment> at_foot;        // bending moment where the chimney stands
  std::optional<Pressure> foot_stress;  // cantilever: moment over section modulus
  std::optional<Pressure> ring_stress;  // mouth pressed out of round
  std::optional<Pressure> allowed;      // proof stress left hot over the reserve asked for
  std::optional<double> reserve;        // proof stress left hot over the larger stress
};
struct Stability {
  Mass mass;
  Length centre;                        // of gravity, over the mouth
  double lean;                          // angle: clearance over engaged length
  Length top_offset;                    // sideways at `top`
  Length centre_offset;                 // sideways at the centre of gravity, off-axis parts with it
  Moment at_lean;                       // weight about the mouth, sensitivity, no knock
  Moment knocked;                       // the same with the knock
  Moment holds;                         // weight about the edge it rests on: what brings it back
  std::optional<double> free_reserve;   // holds / at_lean: above 1 it stands on its seat; nothing if nothing tips it
  std::optional<double> knock_reserve;  // holds / knocked: below 1 only the engaged tube keeps it up
  bool leans_too_far;                   // lean over the rule
  ChimneyLoad chimney;
};
/// Statics of a rigid stack in a rigid bore. Sensitivity, the tube touches the mouth on one side and its own end on the
/// other: lean = clearance / engaged, and at height h over the mouth the axis is clearance (1/2 + h / engaged) off,
/// both to first order in the clearance. Reactions: moment about the mouth over engaged length. Bearing: 4 F/L + 6
/// M/L^2 per unit length at the mouth of a rigid bar in a socket of linear pressure. Ring: a thin ring loaded over an
/// arc and held by shear round it, M = P r/pi sum sin(n a)/(n sin a (n^2 - 1)) (curved-bar theory, Timoshenko; 3/(4 pi)
/// P r for a point load), over a length of chimney of one mean radius: an estimate, a factor of 2 either way. Foot: Z
/// of a tube. Masses, engaged, bore above zero; clearance, seat, top and push not negative; the stack as a whole above
/// zero. Throws ModelError otherwise, or for a chimney metal without strength when its wall is given.
Stability stability(const Stack& stack);

/// The push of the "knock" rule: the weight of half a kilogram.
Force usual_knock();

struct RingLoad {
  Force push;
  Length mean_radius;
  double half_angle;  // over which it presses; 0 for a point
};
/// Largest bending moment in a thin ring pressed out of round as above. Half angle 0 to 90 degrees; by superposition of
/// point loads (found by scan, one degree). Throws ModelError outside or for a radius not above zero.
Moment ring_moment(const RingLoad& load);
}  // namespace lumwright::workshop
