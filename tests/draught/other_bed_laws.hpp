// Laws that others found for beds, to judge Ergun's by; and his the other way round.
#pragma once
#include "draught/bed.hpp"
#include "numeric/root.hpp"
#include <cmath>

namespace lumwright {
/// Drop by a law of the form F(Re/(1 - voidage)) mu v (1 - voidage)^2 depth / (d^2 voidage^3).
template <class F>
Pressure bed_by(const draught::BedFlow& bed, F factor) {
  const Length d = bed.particle * bed.sphericity;
  const double e = bed.voidage, solid = 1.0 - e;
  const double rem = bed.density * bed.superficial * d / (bed.viscosity * solid);
  return factor(rem) * solid * solid / (e * e * e) * (bed.viscosity * bed.superficial * bed.depth / (d * d));
}
/// Carman, Trans. Inst. Chem. Eng. 15 (1937) 150-166.
inline Pressure carman(const draught::BedFlow& bed) {
  return bed_by(bed, [](double rem) { return 180.0 + 2.871 * std::pow(rem, 0.9); });
}
/// Erdim, Akgiray and Demir, Powder Technology 283 (2015) 488-504.
inline Pressure erdim(const draught::BedFlow& bed) {
  return bed_by(bed, [](double rem) { return 160.0 + 2.81 * std::pow(rem, 0.904); });
}
/// KTA 3102.3 (1981), for beds of spheres.
inline Pressure kta(const draught::BedFlow& bed) {
  return bed_by(bed, [](double rem) { return 160.0 + 3.0 * std::pow(rem, 0.9); });
}
/// Brauer (1960), after VDI Heat Atlas.
inline Pressure brauer(const draught::BedFlow& bed) {
  return bed_by(bed, [](double rem) { return 160.0 + 3.1 * std::pow(rem, 0.9); });
}
/// The flow at which bed_drop() is this drop.
inline MassFlow flow_that_makes(const draught::Bed& bed, Pressure drop, Density density, Viscosity viscosity) {
  const auto over = [&](double ln_flow) {
    const double ratio = draught::bed_drop(bed, std::exp(ln_flow) * kg_per_s, density, viscosity) / drop;
    return ratio - 1.0;
  };
  return std::exp(numeric::bracketed_root(over, std::log(1e-18), std::log(1e2), "flow through the bed")) * kg_per_s;
}
}  // namespace lumwright
