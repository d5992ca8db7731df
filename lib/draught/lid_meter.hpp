// The meters of a shop-made fan test: sharp plates in the lid of the box that the fan empties, and a straight inlet
// tube with a pitot tube or an anemometer on its axis.
#pragma once
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <optional>

namespace lumwright::draught {
/// The air of the room, which stands still before it enters.
struct RoomAir {
  Density density;
  Viscosity viscosity;
};

/// One plate in the lid. Several equal holes stand at least three diameters apart.
struct LidPlate {
  Length hole;
  int holes;
  Length thickness;
};

struct MeteredFlow {
  MassFlow flow;
  double reynolds;           // of one hole, or of the tube
  Band<double> coefficient;  // discharge, or mean speed over that on the axis; two standard deviations either way
};

/// Discharge coefficient of a hole between large spaces (data::plate_discharges: Johansen 1930, ISO 5801, all from
/// memory): +-3 to 7 %. From a tenth of the hole in thickness it grows towards that of a thick edge, with a spread that
/// holds both. Reynolds number 200 or more and thickness up to 1.5 holes, else ModelError. No factor for the speed of
/// approach: the room's air stands still, unlike that before the plate of a pipe (ISO 5167).
Band<double> plate_coefficient(double hole_reynolds, double thickness_over_hole);

/// Flow through the plate at the box's depression, m = Cd n (pi/4) d^2 sqrt(2 rho drop), solved with the Cd of its own
/// Reynolds number unless `discharge` states one. Depression, hole and thickness above zero. Throws ModelError, also
/// where plate_coefficient does.
MeteredFlow plate_flow(const LidPlate& plate, Pressure depression, const RoomAir& air,
                       const std::optional<Band<double>>& discharge = std::nullopt);

/// How much more may pass than plate_flow says, as a share, if the U-tube's tap sits where the jet has given back its
/// pressure to the box (Borda and Carnot's expansion): Cd A / A_box, about 3 % for a hole of a quarter of the box.
double jet_recovery(const LidPlate& plate, double discharge, Area box);

struct StraightTube {
  Length bore;
  Length length;  // from its mouth to the place of measuring
};
/// v = sqrt(2 head / rho) (ISO 3966, coefficient 1 for a square-cut tube facing the stream). Head zero or more.
Velocity pitot_velocity(Pressure velocity_head, Density density);
/// Flow from the speed on the axis. The share of the mean speed comes from data::tube_share by length and Reynolds
/// number unless it is stated: 5 to 23 % uncertain. All sizes above zero, else ModelError.
MeteredFlow tube_flow(const StraightTube& tube, Velocity on_axis, const RoomAir& air,
                      const std::optional<Band<double>>& share = std::nullopt);

/// A U-tube of water.
struct UTube {
  Pressure reads_to;  // the truth lies no further than this from what is read
  double incline;     // millimetres along the tube for each of height; 1 is upright
};
/// Standard deviation of a depression: that of an even chance within `reads_to` (GUM, type B), over the incline, but no
/// less than data::laid_down_u_tube() allows a tube that is not upright. Incline 1 or more, else ModelError.
Pressure u_tube_sigma(const UTube& tube);
}  // namespace lumwright::draught
