// Leak through the ring-shaped gap between the adapter's tube and the chimney.
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright::draught {
struct Annulus {
  Length mean_diameter;
  Length radial_gap;    // half the diametral clearance; zero or below is a tight fit and leaks nothing
  Length engaged;       // length of tube inside the chimney
  double eccentricity;  // 0 concentric .. 1 touching, which leaks 2.5 times as much
};

/// Leak with friction, inlet (0.5) and exit (1.0) losses; the friction is laminar and eased by 1 + 1.5 e^2. Above a
/// Reynolds number of 2000 friction is understated, but it is a small share there. Drop not below zero; sizes above
/// zero, eccentricity 0 to 1, else ModelError.
MassFlow annulus_flow(const Annulus& annulus, Pressure drop, Density density, Viscosity viscosity);
}  // namespace lumwright::draught
