// How much metal is left beside a hole, and how much there should be.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <string>

namespace lumwright::workshop {
enum class Room { too_little, tight, enough };
struct MetalLeft {
  Room room;
  Length has;
  Length least;        // below: too little
  Length prefer;       // below: tight
  data::Basis basis{};
};

// Geometry; exact. Each may be negative: the holes then run into each other.
struct RimEdge {
  Length outside;  // of the plate
  Length pitch_circle;
};
/// Hole centre to the rim of a round plate.
Length edge_to_rim(const RimEdge& plate);
struct OpeningWeb {
  Length from_centre;  // hole centre to the centre of the opening: half a pitch circle, or pitch / sqrt 2 of a fan
  Length opening;
  Length hole;
};
/// Metal between an opening and a hole. For a tube in a flange the opening is the tube's hole.
Length web_to_opening(const OpeningWeb& web);

// Judged. Each throws ModelError for a hole not above zero.
/// Hole centre to an edge: 1.5 hole diameters at least (EN 1993-1-3), 2 preferred (FAA AC 43.13-1B). Also for the edge
/// of another opening in plate.
MetalLeft judge_edge(Length centre_to_edge, Length hole);
/// Hole centre to hole centre: 2.2 diameters at least (EN 1993-1-8), 3 preferred.
MetalLeft judge_pitch(Length centre_to_centre, Length hole);
/// Metal between openings in thin sheet: 1 mm at least, 2 mm preferred, common practice.
MetalLeft judge_web(Length web);
}  // namespace lumwright::workshop
