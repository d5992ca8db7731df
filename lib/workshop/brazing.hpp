// Silver brazing and soft soldering: the gap at brazing heat, and whether filler and work stand the heat.
#pragma once
#include "data/fillers.hpp"
#include "data/metals.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <optional>

namespace lumwright {
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

/// Diameter lost or won between a tube and its hole when both are heated: D (tube strain - plate strain).
struct SharedHeat {
  Length diameter;
  data::MetalRow tube_metal;
  data::MetalRow plate_metal;
  Temperature at;
};
/// Throws ModelError for a temperature beyond the metals.
Length gap_closed_by_heat(const SharedHeat& heat);

struct JointHeat {
  data::FillerRow filler;
  data::MetalRow tube_metal;
  data::MetalRow plate_metal;
  Temperature in_use;           // hottest that the joint gets
  bool sulphurous_gas = false;  // that of coal
};
struct JointVerdict {
  TemperatureRise melt_reserve;  // lower solidus of the work less liquidus of the filler
  TemperatureRise melt_reserve_needed;
  Temperature limit;            // hottest in use: solidus of the filler less its reserve
  TemperatureRise use_reserve;  // limit less `in_use`; negative: too hot
  bool melts_the_work;          // reserve not kept
  bool eaten_by_sulphur;        // phosphorus in the filler and sulphur in the gas
  bool brittle_on_iron;         // phosphorus in the filler and iron in the work
  bool too_hot_in_use;
};
/// For soft solder on tinplate the sheet counts, not its tin coat. Rules of the trade: liquidus 50 K below the solidus
/// of the work, joint in use 50 K below the solidus of its filler. ISO 17672 calls melting temperatures approximate.
/// Throws ModelError for a metal whose solidus is not known.
JointVerdict joint_verdict(const JointHeat& heat);

struct LapOf {
  Length tube_wall;
  Length plate;
};
/// Least lap of a brazed joint: three times the thinner wall.
/// Sizes above zero; throws ModelError otherwise.
Length least_lap(const LapOf& lap);
}  // namespace lumwright
