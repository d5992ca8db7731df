// The fan unit as it is to be made: flange, tube, box and fan with every size that the bench needs.
#pragma once
#include "data/metals.hpp"
#include "description/build.hpp"
#include "model/inputs.hpp"
#include "model/outcome.hpp"
#include "workshop/box_development.hpp"
#include "workshop/brazing.hpp"
#include "workshop/edges.hpp"
#include "workshop/fan_pattern.hpp"
#include "workshop/fit_limits.hpp"
#include "workshop/grommet.hpp"
#include "workshop/hole_circle.hpp"
#include "workshop/stability.hpp"
#include "workshop/thread.hpp"
#include "workshop/thread_hold.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::model {
/// Screws of the flange: tapped where the plate holds a thread, else clearance holes and nuts.
struct FlangeScrews {
  int count;
  Length pitch_circle;
  data::ThreadRow thread;
  workshop::ThreadHold hold;
  bool tapped;
  Length drill;      // in the flange
  Length clearance;  // in the sheet that lies on it
  Length strays;     // how far the middle of a hole may lie from its place, in plate and in sheet
};
struct MadeTube {
  Length outside, wall, length;
  std::optional<Length> engaged;
  data::MetalRow metal;
  std::string inlet;
  Length chamfer;
  workshop::LimitsWhenAsked
      limits{};  // of its outside or of the chimney's bore; neither where nothing is known or fits
};
struct MadeFlange {
  Length outside, thickness;
  data::MetalRow metal;
  std::optional<FlangeScrews> screws;
  std::optional<Length> tube_hole;  // when the tube is known
  std::optional<workshop::Limits> tube_hole_limits;  // what the joint asks for, with the tube in hand
  std::optional<workshop::BrazeGap> gap;  // when they are silver brazed
  std::string joint;
};
/// Holes in the side of the box.
struct SideHoles {
  int count;
  Length diameter;
};
struct MadeBox {
  bool square;
  Length across, height, sheet;         // inside
  std::string metal;                    // as written
  std::optional<workshop::RoundBoxPieces> round;  // strip and two discs
  std::optional<workshop::SquareBoxNet> net;      // open box; its lid is a plate of the outside size
  Length lap;                           // of the round one's seam; width of the net's tabs
  Length skirt;                         // of the round one
  std::optional<Length> tube_hole;      // in the bottom
  std::optional<workshop::Limits> tube_hole_limits;
  std::optional<SideHoles> bleed;
  std::optional<workshop::GrommetChoice> grommet;  // where the leads go through the side
  Length plate;                          // side or diameter of lid and bottom, finished
  Length marked_to;                      // step in which holes without a fit are placed
};
struct MadeFan {
  workshop::FanDrawing drawing;
  bool axial, inside;
  Length frame;
  std::optional<Length> thickness;
  std::optional<workshop::PlanePoint> inlet;  // of a blower, from the corner of its body
  std::optional<Mass> mass;
};
/// What the description gives of the unit; what it lacks is in `missing`, by part.
struct FanUnit {
  std::optional<MadeTube> tube;
  std::optional<MadeFlange> flange;
  std::optional<MadeBox> box;
  std::optional<MadeFan> fan;
  std::optional<workshop::Stability> stability;
  std::vector<std::string> missing;
};

/// Heights of the box over the chimney's mouth, on which the flange rests: under and over its bottom, under and over
/// its lid. Asks for the box.
struct BoxLevels {
  Length floor, inside, lid, roof;
};
BoxLevels box_levels(const FanUnit& unit);
/// Bored, turned and drilled. Throws ModelError where the density of the metal is not known.
Mass mass_of(const MadeTube& tube);
Mass mass_of(const MadeFlange& flange);

/// The fan's screw holes and its cut-out about the middle of the lid. Empty where the fan must be measured first, or a
/// blower's inlet is not placed.
struct LidHoles {
  std::vector<workshop::PlanePoint> screws;
  Length screw_hole;
  std::optional<Length> opening;
  std::optional<Length> strays;  // how far a screw hole may lie from its place, by the fullest screw that is usual
  workshop::PlanePoint frame_low, frame_high;  // outline of the fan
};
std::optional<LidHoles> lid_holes(const MadeFan& fan);

/// `limits`: of the fit, where it is solved.
Outcome<FanUnit> solve_unit(const description::Build& build, Inputs& inputs,
                            const workshop::LimitsWhenAsked& limits = {});
}  // namespace lumwright::model
