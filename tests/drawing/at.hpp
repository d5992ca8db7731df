// A point of a drawing from two numbers of millimetres.
#pragma once
#include "drawing/drawing.hpp"

namespace lumwright::drawing {
inline Point at(double x, double y) { return {x * mm, y * mm}; }
}  // namespace lumwright::drawing
