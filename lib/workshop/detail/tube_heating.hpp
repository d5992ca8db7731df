// How hot a thin tube gets in a chimney that is cold when the fire is lit: wall, gap and chimney along the length
// inside.
#pragma once
#include "quantity/quantity.hpp"
#include <vector>

namespace lumwright::workshop {
/// A wall as heat sees it: how much a square metre holds, and how well it leads along.
struct HeatWall {
  Length thickness;
  Density density;
  SpecificHeat specific_heat;
  Conductivity conductivity;
};
struct TubeInChimney {
  HeatWall tube;
  HeatWall chimney;
  Length outside;         // of the tube
  Length gap;             // all round, half the clearance; below `roughness` it leads no better than at that
  Length engaged;         // inside the chimney
  Length free;            // above it, in the open
  HeatTransfer gas_side;  // gas to tube
  double gap_factor;      // heat through the gap over that through still air when the tube stands in the middle
  HeatTransfer air_side;  // chimney and free tube to the air about them
  Temperature gas, air;
};
/// The least that parts a tube from a bore that it touches: what files, reamers and soot leave.
inline constexpr Length roughness = 10.0 * um;

/// Tube and chimney at one place; the places run from the lower end of the tube to the chimney's mouth.
struct WallPair {
  Temperature tube, chimney;
};
struct HeatingMoment {
  Duration time;
  std::vector<WallPair> places;
};
struct HeatingCourse {
  std::vector<HeatingMoment> moments;  // from the first second to `until`, each 1.15 times as late as the one before
  HeatingMoment settled;               // when nothing changes any more; its time is not set
};
/// Gas of one temperature from the first moment. Tube: C dT/dt = k w T'' + h_gas (T_gas - T) - h_gap (T - T_chimney),
/// above the mouth with the air in place of the chimney; both ends let nothing through. Chimney: C dT/dt = h_gap (T -
/// T_chimney) - h_air (outside over inside) (T_chimney - T_air), without conduction along it. h_gap = factor times
/// air's conductivity over the gap. Backward Euler on cells of a thirtieth of the engaged length; 2 % of the rise
/// against steps and cells of half the size. `chimney_first` is what the chimney begins at: the air, or what an earlier
/// course left. Sizes and coefficients above zero, `free` not below, else ModelError.
HeatingCourse heat_tube(const TubeInChimney& input, const std::vector<Temperature>& chimney_first, Duration until);
/// The same from a chimney as cold as the air.
HeatingCourse heat_tube(const TubeInChimney& input, Duration until);
}  // namespace lumwright::workshop
