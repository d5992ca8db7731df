// Friction by other equations than the program's, and its own in the limit of a tube without end.
#pragma once
#include "draught/friction.hpp"
#include "numeric/root.hpp"
#include <cmath>

namespace lumwright {
/// Turbulent, Re above 2300: Colebrook, J. Inst. Civ. Eng. 11 (1939), solved to rounding.
inline double friction_colebrook(double re, double relative_roughness) {
  const auto gap = [=](double root) {  // root = 1 / sqrt f
    return root + 2.0 * std::log10(relative_roughness / 3.7 + 2.51 * root / re);
  };
  const double root = numeric::bracketed_root(gap, 1.0, 30.0, "friction factor");
  return 1.0 / (root * root);
}
/// Where the flow has long developed friction_short_tube() is Churchill's equation: Chem. Eng. 84(24) (1977) 91-92.
inline double friction_long_tube(double re, double relative_roughness) {
  return draught::friction_short_tube(re, 1e15, relative_roughness);
}
}  // namespace lumwright
