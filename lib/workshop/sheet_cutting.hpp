// Cutting thin sheet: which saw blade, which steps of a step drill, what is left to file.
#pragma once
#include "data/drills.hpp"
#include "data/sheet.hpp"
#include <optional>
#include <string_view>
#include <vector>

namespace lumwright::workshop {
struct SawAdvice {
  Length wanted_tooth_pitch;  // three teeth in the sheet, square on
  double wanted_teeth_per_inch;
  std::optional<data::SawBlade> three_teeth;  // coarsest blade that keeps three teeth in the cut, square on
  std::optional<data::SawBlade> two_teeth;    // coarsest that keeps two: the least for a piercing saw
  data::SawBlade finest;
  double tilt;   // angle between blade and sheet at which the finest keeps three teeth: 90 degrees is square on
  Length stack;  // sheet and boards together that keep three teeth of the finest in the cut, square on
};
/// Three-teeth rule: tooth pitch at most a third of the sheet; tilted by an angle the cut is sheet / sin(angle) long.
/// Hacksaw-blade texts; two teeth by common practice. Throws ModelError for a thickness not above zero.
SawAdvice saw_for_sheet(Length sheet);

struct SheetHole {
  Length diameter;
  Length sheet;
  std::string_view drills =
      "";  // "metric", "inch": of which the shop has a set; empty: metric step drills, and any twist
};
enum class HoleFinish {
  on_size,  // the last tool leaves it on size
  file,     // a little is left on diameter: file to the line
  cut_out,  // beyond the step drill: hole saw, or piercing saw from the pilot hole
  prick,    // below the smallest drill of the table: a needle, from both sides
};
struct SheetHolePlan {
  std::optional<Length> pilot;           // nothing for a hole that one small drill makes
  std::optional<data::DrillRow> twist;   // that drill, with the sheet clamped between boards
  std::optional<data::StepDrill> drill;  // the step drill that ends nearest below the hole
  std::vector<Length> steps;             // its sizes in order, the last no larger than the hole
  HoleFinish finish;
  Length left;  // on diameter, for the file or the saw
  Length burr;  // that may be left
};
/// How to make a round hole in thin sheet. A step cuts 0 to 0.3 mm over; the sheet must be thinner than one step is
/// high. Common practice. Throws ModelError for a size not above zero.
SheetHolePlan sheet_hole(const SheetHole& hole);

/// Drills for a hole in plate, in order: the pilot first where the hole is over 6 mm, about half the next each time.
/// Throws ModelError beyond the drills of the table (0.5 to 13 mm).
std::vector<data::DrillRow> plate_drills(Length diameter, std::string_view series = "");
}  // namespace lumwright::workshop
