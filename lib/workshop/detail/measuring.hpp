// How far a measured diameter can be trusted.
#pragma once
#include "data/measuring.hpp"
#include <initializer_list>

namespace lumwright::workshop {
/// Root sum of squares of independent expanded uncertainties (ISO/IEC Guide 98-3, 5.1.2). None may be negative.
/// Throws ModelError for one that is.
Length combined_uncertainty(std::initializer_list<Length> parts);
}  // namespace lumwright::workshop
