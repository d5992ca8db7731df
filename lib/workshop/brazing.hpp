// Silver brazing and soft soldering: the gap at brazing heat, and whether filler and work stand the heat.
#pragma once
#include "data/fillers.hpp"
#include "data/metals.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <optional>

namespace lumwright::workshop {
/// A tube in the hole of a plate, sizes at 20 degC.
struct BrazedJoint {
  Band<Length> tube;
  Band<Length> hole;
  data::MetalRow tube_metal;
  data::MetalRow plate_metal;
  data::FillerRow filler;
};
enum class Gap { interference, too_tight, right, too_wide };
struct BrazeGap {
  Band<Length> cold;  // per side, parts centred
  Band<Length> hot;   // per side, at the filler's liquidus
  Length closes;      // on diameter, from cold to hot; negative when it opens
  Length least;       // per side, at brazing heat
  Length most;
  Band<Length> hole_to_bore;  // at 20 degC for the middle of the tube: value gives the middle of the range
  Gap gap;                    // worst case over both spreads
};
/// Gap of hot parts: hole (1 + plate strain) - tube (1 + tube strain), linear expansion by the mean coefficients;
/// `hot.low` and `hot.high` also hold the other forms of matter/metal.hpp. Limits of AWS A5.8 as Machinery's Handbook
/// prints them, 0.05 to 0.13 mm per side. Coefficients to 650 degC are good to about 10 %. Throws ModelError for sizes
/// not above zero or out of order, or a liquidus beyond one of the metals.
BrazeGap braze_gap(const BrazedJoint& joint);
}  // namespace lumwright::workshop
