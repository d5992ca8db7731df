#include "workshop/plane.hpp"
#include <cmath>

namespace lumwright::workshop {
Length distance(PlanePoint a, PlanePoint b) { return std::hypot(in(b.x - a.x, mm), in(b.y - a.y, mm)) * mm; }
}  // namespace lumwright::workshop
