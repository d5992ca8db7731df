// The way of the gas from the ash-pan to the fan: what it consists of, and what happens to the gas on it at a given
// flow.
#pragma once
#include "draught/annulus.hpp"
#include "draught/bed.hpp"
#include "draught/cooling.hpp"
#include "draught/fittings.hpp"
#include "draught/friction.hpp"
#include "draught/path_flow.hpp"
#include "draught/temperature_source.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string_view>
#include <variant>
#include <vector>

namespace lumwright::draught {
/// A hole, or several alike, between two large spaces.
struct Hole {
  Area area;
  double discharge;  // coefficient, above 0 to 1
};
struct Grate {
  Area area;
  double open_share;  // of the bars with ash on them, above 0 to 1
};
struct FireTubes {
  int count;
  Tube each;
  Area firebox;                 // section from which the gas narrows into the tubes
  Length rise;                  // of the far end over the near one: zero for a locomotive boiler
  Length above_bed = 0.0 * mm;  // middle of the near ends over the top of the bed: the height of the hot firebox
};
/// Tube from smokebox to box.
struct Adapter {
  Tube tube;
  InletShape inlet;              // its bore is the tube's
  double fittings;               // bends and spark mesh: sum of loss factors on the tube's velocity head
  Length rise;                   // of the box over the smokebox, chimney and all; below zero for a duct that leads down
  std::optional<TubeWall> wall;  // the part outside the chimney, which loses heat to the room; length zero: none
};
struct Box {
  Length bore;                  // diameter of the circle with the section's area, into which the tube opens
  BoxDepth depth;               // fan opening, and its distance from the tube
  Length rise;                  // of the fan over the tube's end
  std::optional<BoxWall> wall;  // loses heat to the room if given
};

/// Finger guard over the fan's open side; the gas passes it at the fan's own density, whichever side that is.
struct FanGuard {
  double loss_factor;  // on the velocity head of `area`, from zero up
  Area area;           // of the fan's opening
};

/// A leak is known by its share of a flow, with the fire alight, or as an opening (area times discharge coefficient).
struct LeakShare {
  double share;  // 0 to below 1
};
using Leak = std::variant<LeakShare, Area>;

/// Every part may be missing, and then loses and leaks nothing. A box that is missing behind an adapter's tube costs
/// the whole velocity head of the tube.
struct GasPath {
  std::optional<Hole> air_entry;  // ash-pan door or damper
  std::optional<Grate> grate;
  std::optional<Bed> bed;
  std::optional<Leak> past_bed;  // fire-door and ash-pan; share: of all the engine's air
  std::optional<FireTubes> tubes;
  std::optional<Leak> smokebox;  // door and seams; share: of the gas that leaves the smokebox, before the annulus
  std::optional<Length> blast_pipe_gap;  // from its tip to the adapter's mouth; needs the adapter
  std::optional<Annulus> annulus;        // between adapter and chimney, from the room to the smokebox
  std::optional<Adapter> adapter;
  std::optional<Box> box;
  std::optional<Hole> bleed;        // into the box
  std::optional<FanGuard> guard{};  // over the fan
  Length smokebox_rise = 0.0 * mm;  // from the far ends of the fire tubes to the lower end of the adapter
};

struct ElementLoss {
  std::string_view name;
  Pressure loss;
};
/// Losses of the elements that `path` has, in the order of the flow.
std::vector<ElementLoss> losses(const GasPath& path, const PathFlow& flow);

/// Where between room (0) and gas (1) the walls of tube and box were at a flow near by.
struct WallGuess {
  double tube = 0.5, box = 0.5;
};

/// A path that has been looked over, with its constants worked out. Gas is air by its properties; densities are at the
/// barometer's pressure, since suctions are below 1 % of it; the pressure that gas regains as it cools in a tube (below
/// 1 Pa) is left out.
class GasNetwork {
 public:
  /// Throws ModelError for sizes, shares and coefficients out of range, or an ambient outside the range of air's
  /// properties.
  GasNetwork(const GasPath& path, const Ambient& ambient);

  /// Follows the gas from ash-pan to fan. Bed air from zero up. Throws ModelError if it is not, or if a temperature of
  /// the source is out of the range of air's properties.
  PathFlow follow(MassFlow bed_air, const TemperatureSource& source) const;
  /// The same; `guess` is where the walls are looked for first, and becomes where they were found.
  PathFlow follow(MassFlow bed_air, const TemperatureSource& source, WallGuess& guess) const;

  const Ambient& ambient() const { return ambient_; }
  Density ambient_density() const { return rho_; }
  const GasPath& path() const { return path_; }

 private:
  struct Walk;
  GasPath path_;
  Ambient ambient_;
  Density rho_;                                                  // of the room's air
  Viscosity mu_;                                                 // of the room's air
  SpecificHeat cp_;                                              // of the room's air
  double grate_, firebox_, inlet_, blast_, box_entry_, shadow_;  // loss factors
};

}  // namespace lumwright::draught
