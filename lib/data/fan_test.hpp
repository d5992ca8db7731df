// What a shop-made fan test is worth: discharge of its plates, its tube, the rules for its box, the sizes of its holes.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
/// A sharp plate between large spaces; spreads in this file are two standard deviations.
struct PlateDischarge {
  double reynolds;  // of the hole
  Band<double> value;
  Basis basis{};
};
/// In rising order of Reynolds number.
const std::vector<PlateDischarge>& plate_discharges();

/// Mean speed over the speed on the axis of a straight tube: "short", "middling", "long", "laminar".
struct TubeShare {
  std::string id;
  double shortest;  // length over bore
  Band<double> value;
  Basis basis{};
};
const TubeShare& tube_share(const std::string& id);

struct FanTestRule {
  std::string id;
  double value;
  Basis basis{};
};
/// A bound by its id. Throws std::logic_error for an id that the table lacks, as tube_share does.
const FanTestRule& fan_test_rule(const std::string& id);

/// A U-tube laid down: no reading is better than `least`, however flat it lies; its slope is known to `slope`.
struct LaidDown {
  Pressure least;
  double slope;  // two standard deviations
  Basis basis{};
};
const LaidDown& laid_down_u_tube();

/// Diameters that common tools leave, rising.
const std::vector<Length>& usual_holes();
}  // namespace lumwright::data
