// Flat shapes that make a box: a strip and two discs, or a sheet that folds up.
#pragma once
#include "workshop/plane.hpp"
#include <string>
#include <vector>

namespace lumwright::workshop {
struct Bend {
  double angle;   // turned through: 90.0 * degree
  Length inside;  // radius; 0 for a sharp fold
  Length sheet;
  std::string metal;
};
/// Sheet that a bend takes up, along its middle: (a t + pi/2 r) x angle / 90 degrees with a by hardness of the metal
/// (Machinery's Handbook, allowance for bends). Good to about 0.1 sheet thicknesses a bend. Angle above 0 to 180
/// degrees. Throws ModelError outside or for a metal without a row.
Length bend_allowance(const Bend& bend);

enum class DiscFit {
  inside,  // disc stands within the strip; its skirt points outwards, flush with the edge
  on_top,  // disc covers the edge of the strip; its skirt goes down round the outside
};
struct RoundBox {
  Length diameter;  // inside
  Length height;    // inside, between the discs
  Length sheet;
  Length lap;    // of the seam; 0 for a butt joint
  Length skirt;  // rim turned from a disc to solder it to the strip; 0 for a flat disc
  DiscFit fit;
};
struct RoundBoxPieces {
  Length strip_length;  // pi (inside + sheet) + lap
  Length strip_width;
  Length disc;        // finished diameter over its skirt
  Length disc_blank;  // to cut: with the skirt
  Length outside;
  Volume metal;  // all three
};
/// Strip along its middle line, exact; a skirted disc by equal area, sqrt(d^2 + 4 d h) on its middle line (Machinery's
/// Handbook, blanks of drawn shells), within one sheet thickness. Diameter, height and sheet above zero, lap and skirt
/// not negative, sheet below a tenth of the diameter. Throws ModelError otherwise.
RoundBoxPieces round_box(const RoundBox& box);

struct SquareBox {
  Length width;   // inside
  Length length;  // inside
  Length height;  // inside
  Length sheet;
  Length inside_radius;
  Length tab;  // soldering tabs on the walls along `length`; 0 for none
  Length hem;  // edge folded flat at the rim; 0 for none
  std::string metal;
  Length wall_step = 0.0 * mm;   // what is cut off a corner comes in such steps, and the floor between its folds in
  Length floor_step = 0.0 * mm;  // these; 0 for the exact sizes
};
/// One direction of the net, from its edge.
struct NetAxis {
  std::vector<Length> folds;  // middle of each bend
  Length total;
};
struct NetLine {
  PlanePoint from;
  PlanePoint to;
};
struct SquareBoxNet {
  NetAxis across;                   // over the width, x: hem, wall, floor, wall, hem
  NetAxis along;                    // over the length, y
  Length corner;                    // side of the square cut out of each corner, up to where the fold lines cross
  std::vector<PlanePoint> outline;  // from lower left of the net's bounding box, counter-clockwise, not closed
  std::vector<NetLine> folds;
  Volume metal;
};
/// Net of an open box that folds up from its floor, walls at right angles. The walls that run along `length` carry
/// tapered tabs at their ends. Bends by `bend_allowance`; a fold line is the middle of its bend. Drill a small hole
/// where fold lines cross, or the corner tears. Width, length, height and sheet above zero, the others not negative.
/// Throws ModelError otherwise, or when wall, hem or tab is shorter than its bends need.
SquareBoxNet square_box(const SquareBox& box);
}  // namespace lumwright::workshop
