// How far a measured diameter can be trusted.
#pragma once
#include "data/measuring.hpp"
#include <initializer_list>

namespace lumwright {
/// Root sum of squares of independent expanded uncertainties (ISO/IEC Guide 98-3, 5.1.2). None may be negative.
/// Throws ModelError for one that is.
Length combined_uncertainty(std::initializer_list<Length> parts);

struct CaliperReading {
  Length bore;
  Length jaw_land;  // width of the flat on the edge of one inside jaw
};
/// How much too small a caliper reads a bore because its flats bear on a chord. 0 <= land < bore.
/// Chord geometry, exact. Throws ModelError outside.
Length caliper_land_error(CaliperReading reading);
}  // namespace lumwright
