// Does the tube fit the chimney, cold and hot, and what would make it fit?
#pragma once
#include "data/metals.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <optional>

namespace lumwright::workshop {
/// What heats and cools tube and chimney; the walls themselves are in FitInput.
struct FitHeat {
  HeatTransfer gas_side;       // from the gas to the tube
  double gap_factor;           // as in TubeInChimney
  HeatTransfer air_side;       // of the chimney's outside, and of the tube above it
  Length chimney_wall;         // that holds the heat; thick is slow
  std::optional<Length> free;  // tube above the chimney; nothing: so long that it does not matter
};

/// A bore and a tube measured at 20 degC. A spread is the part itself (out of round, tapered, a tolerance) and is taken
/// at its worst; `measured_within` is the expanded uncertainty (k = 2) of the measuring on top of that, zero if the
/// spread already holds it.
struct FitInput {
  Band<Length> bore;
  Length bore_measured_within;
  std::optional<Length> chimney_wall;  // where it is thinnest
  Length seam_ridge;                   // height of one weld seam that stands into the bore; zero if none
  std::optional<Length> depth;         // of the bore that the tube can enter
  data::MetalRow chimney_metal;
  Band<Length> outside;  // of the tube
  Length outside_measured_within;
  Length tube_wall;
  std::optional<Length> engaged;  // length of tube inside the chimney
  data::MetalRow tube_metal;
  Temperature tube_hot;              // the gas, with the fire alight; without `heat` the tube itself
  Temperature chimney_cold;          // chimney at lighting-up, when a thin tube is hot already
  Temperature chimney_hot;           // chimney in steam; with `heat` it is solved
  Length soot;                       // per side, between two cleanings
  Length running_clearance;          // diametral, that must remain so that the tube still slides
  std::optional<FitHeat> heat = {};  // nothing: tube and chimney are as hot as written above
};

/// One temperature of tube and chimney. Strains are per unit length from 20 degC.
struct HotClearance {
  Temperature tube, chimney;  // where and when the gap is least
  double tube_strain;
  double chimney_strain;
  Band<Length> clearance;  // diametral, what heat and soot leave; negative: the tube seizes
  Length needed;           // cold clearance that leaves the running clearance here
};

/// A flat filed along the tube: it lets the tube pass a seam ridge that is left standing.
struct RidgeFlat {
  Length depth;
  Length width;        // of the flat; the ridge must be narrower
  Length wall_left;    // of the tube under the flat
  bool strong_enough;  // the wall left is at least the share that the shop's rule asks
  Length margin;       // as Fit::margin, with the ridge out of the way
};

/// Boring the chimney out. A seam ridge goes with it.
struct Skim {
  Length bore;         // to cut to
  Length on_diameter;  // metal off where the bore is smallest; zero when the wall need not be touched
  bool ridge_only;     // the tube fits once the ridge is cut, filed or scraped away
  int roughing_cuts;
  int finishing_cuts;
  std::optional<Length> wall_left;    // where it is thinnest, worst case; nothing when the wall is not known
  std::optional<Length> wall_needed;  // stricter of the limit for the metal and the share of the wall that there was
  bool heavy;                         // more metal off than the trade advises: change the tube instead
};

/// How well the engaged length holds the tube.
struct Engagement {
  double over_outside;                   // engaged length in tube diameters
  double tilt;                           // cold clearance over engaged length: radians that the tube can lean
  std::optional<double> share_of_depth;  // above 1 the tube stands out beyond the bore
};

struct Fit {
  Band<Length> effective_bore;           // what the tube feels: the bore less its seam ridge
  Band<Length> cold;                     // diametral clearance at 20 degC, clean; both spreads at their worst
  Length uncertainty;                    // of the cold clearance by measuring, expanded, root sum of squares
  HotClearance lighting_up;              // tube hotter than the chimney: where the gap is least
  HotClearance both_hot;                 // tube and chimney hot
  std::optional<HotClearance> put_back;  // a cold tube in a chimney still hot; with `heat` only
  Length needed;                         // cold clearance, the largest of these
  Length margin;                         // cold.low - uncertainty - needed: accepted when not negative (ISO 14253-1)
  std::optional<Temperature> seizes_at;  // heat of the tube that uses up the clearance while the chimney is cold
  Band<Area> leak_area;                  // annulus, cold and clean; zero where tube and bore touch all round
  Band<double> leak_share;               // of the area of the tube's own bore
  std::optional<RidgeFlat> ridge_flat;   // when there is a ridge and the tube wall is thicker than the flat
  Skim skim;
  std::optional<Engagement> engagement;  // when the engaged length is known
};

/// The whole fit. With `heat` the walls' temperatures are those of heat_tube() at the place and moment of the least
/// gap: in the first five minutes from cold, when nothing changes any more, and in five minutes from a chimney as hot
/// as that leaves it. Hot clearance is exact for given strains: bore (1 + chimney strain) - outside (1 + tube strain) -
/// 2 soot; the chimney gets the least and the tube the most strain that the sources allow (matter/metal.hpp). The
/// needed cold clearance is `needed_clearance`. `seizes_at` is 20 degC when soot alone fills the gap, nothing when the
/// tube metal gives out first. Expansion coefficients are good to about 4 %, which is 5 um on 25 mm of brass at 250
/// degC. Diameters, walls, depth and engaged length above zero, the other lengths not negative. Throws ModelError
/// otherwise, for a band out of order, a wall that closes the tube, or a temperature beyond its metal.
Fit fit(const FitInput& input);

struct ColdNeed {
  Length outside;
  double tube_strain;
  double chimney_strain;
  Length soot;  // per side
  Length running_clearance;
};
/// Cold diametral clearance that leaves the running clearance hot, to first order in the strains: it asks for a little
/// more than the exact form while the chimney is warmer than 20 degC.
Length needed_clearance(const ColdNeed& need);

struct LeakGap {
  Length bore;
  Length outside;
  Length tube_bore;
};
/// Area between tube and chimney over the area of the tube's bore. Exact; with the mean of bore and outside as diameter
/// D it is 2 D c / d^2. Zero when the tube fills the bore. Throws ModelError for a size not above zero.
double leak_share(const LeakGap& gap);
}  // namespace lumwright::workshop
