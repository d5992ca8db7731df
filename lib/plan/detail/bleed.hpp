// What it takes to hold the gas at the fan within its limit: bleed holes, what they cost, and what else would do.
#pragma once
#include "model/solved.hpp"
#include <optional>
#include <string>

namespace lumwright::plan {
/// The draught of a solved build with something changed.
struct DraughtChange {
  draught::GasPath path;
  double fan_speed;  // over what it is; above zero
};
/// As described. The draught must be solved and have a fan; so for all below, else std::logic_error.
DraughtChange unchanged(const model::Solved& solved);
/// With sharp-edged holes of this area together in place of those that are there; zero closes them.
DraughtChange with_bleed(DraughtChange change, Area area);
/// Area of the holes that are there.
Area bleed_area(const DraughtChange& change);

/// Tries changes on a solved build without solving the rest of it again.
class DraughtTrial {
 public:
  explicit DraughtTrial(const model::Solved& solved);
  /// The fire well alight at the pressure where the fan comes off: what checks of the hot draught look at. Throws as
  /// solve_duty does.
  draught::PathFlow alight(const DraughtChange& change) const;
  /// From cold to own-blower pressure; nothing if that is not reached, or the raise is not known at all.
  std::optional<Duration> to_own_blower(const DraughtChange& change) const;

 private:
  const model::Solved& solved_;
};

/// The most that holes can take away of the box: half of its side wall; without a described box four times the tube's
/// section.
Area most_bleed(const draught::GasPath& path);
/// Least area of bleed holes with which the gas at the fan is no hotter than `hold`, fire well alight, to 1e-5; zero if
/// it needs none; nothing if even most_bleed() does not do. More holes never make the gas hotter, so the bracketed root
/// is the only one; where an axial fan jumps from one operating point to another, the cool side is taken.
std::optional<Area> bleed_to_hold(const DraughtTrial& trial, const DraughtChange& change, Temperature hold);

/// About eight holes of one whole-millimetre drill, at least `area` together; or as many as it takes of `drill`.
struct Holes {
  int count;
  Length diameter;
};
Holes holes_for(Area area, std::optional<Length> drill);

/// Another change that holds the limit, with the bleed holes that it still needs.
struct Remedy {
  std::string words;  // "mount the fan outside the box"
  Area bleed;
  std::optional<Duration> time;  // to own-blower pressure
};
/// The first that works of: fan outside the box, box painted black, box half as large again each way, tube twice as
/// long, slower fan. To work, it must hold `hold` and raise steam within `within` (where the raise is known). A few
/// milliseconds each.
std::optional<Remedy> other_remedy(const model::Solved& solved, const DraughtTrial& trial, Temperature hold,
                                   std::optional<Duration> within);
}  // namespace lumwright::plan
