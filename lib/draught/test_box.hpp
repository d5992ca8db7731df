// The box, the plates and the U-tube for a shop-made fan test, from the fan's size and what is expected of it.
#pragma once
#include "draught/fan.hpp"
#include "draught/lid_meter.hpp"
#include <vector>

namespace lumwright::draught {
/// What is known beforehand; the fan's label tells it roughly (fan_estimate.hpp).
struct ExpectedFan {
  data::FanKind kind;
  Length frame;
  Length thickness;
  Pressure shut_off;
  VolumeFlow free_air;
};
struct PlannedPlate {
  Length hole;
  int holes;        // equal ones, their middles three diameters apart
  VolumeFlow flow;  // where the expected curve meets it
  Pressure depression;
  double reading;  // uncertainty of the depression over it, two standard deviations
};
struct TestBox {
  Length side;                       // of the square cross-section, inside
  Length length;                     // from the lid to the fan
  Length screen;                     // from the lid to the settling screen
  std::vector<PlannedPlate> plates;  // smallest first; a blank one goes with them
  Length thickest_plate;             // for the edge of the smallest hole to be sharp
  Length u_tube;                     // height that the water must have to move, with something to spare
  UTube tube;                        // as it is advised to stand or lie
  double covered;                    // largest flow over the expected free air
};
/// Side by data::fan_test_rule("box over fan face"), up to the next 10 mm; length by "length over hole". Holes of
/// data::usual_holes() that meet the expected curve between 8 and 80 % of free air, none wider than "hole over box"
/// allows: two to four together where more is needed, and less covered where that is not enough. The U-tube is laid
/// down, 1 in 10, where an upright one tells the middle plate's depression to no better than a tenth. Sizes, pressure
/// and flow above zero, else ModelError.
TestBox test_box_for(const ExpectedFan& fan);
}  // namespace lumwright::draught
