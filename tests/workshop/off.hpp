// How far two lengths are apart, as a number of millimetres.
#pragma once
#include "quantity/quantity.hpp"
#include <cmath>

namespace lumwright {
inline double off(Length a, Length b) { return std::abs(in(a - b, mm)); }
}  // namespace lumwright
