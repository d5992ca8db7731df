// Volume and mass of the parts that stand on a chimney.
#pragma once
#include "quantity/quantity.hpp"
#include <string_view>

namespace lumwright::workshop {
struct TubeShape {
  Length outside;
  Length wall;
  Length length;
};
/// Exact. Throws ModelError for a size not above zero or a wall that leaves no bore.
Volume tube_volume(const TubeShape& tube);

struct PlateShape {
  Length outside;
  Length thickness;
  Length opening;  // in the middle; 0 for none
  int holes;
  Length hole;  // diameter of each
};
/// Round plate less its holes. Exact. Throws ModelError for outside or thickness not above zero, negative holes, or
/// more hole than plate.
Volume plate_volume(const PlateShape& plate);

struct BoxShape {
  Length diameter;  // inside; of a square box its side
  Length height;    // inside
  Length sheet;
  bool square;
  Length lid_opening;  // diameter of a round opening; 0 for none
  Length bottom_opening;
};
/// Sheet of a closed box less its openings; laps and seams are not counted, which adds some 5 to 10 %.
/// Throws ModelError as above.
Volume box_volume(const BoxShape& box);

/// Volume times the density of strengths.yaml, good to 2 %. Throws ModelError for a metal that it lacks.
Mass mass_of(Volume volume, std::string_view metal);
}  // namespace lumwright::workshop
