#include "draught/annulus.hpp"
#include "quantity/require.hpp"
#include <numbers>

namespace lumwright::draught {
namespace {
constexpr double inlet_and_exit = 0.5 + 1.0;  // sharp edge, then a free jet

bool leaks(const Annulus& a, Pressure drop, Density density, Viscosity viscosity) {
  require_above_zero("mean diameter of the gap", a.mean_diameter);
  require_finite("radial gap", a.radial_gap);
  require_above_zero("engaged length", a.engaged);
  require_within("eccentricity", a.eccentricity, {0.0, 1.0});
  require_not_negative("pressure drop over the gap", drop);
  require_above_zero("gas density", density);
  require_above_zero("gas viscosity", viscosity);
  return a.radial_gap > 0.0 * m;
}
Area ring(const Annulus& a) { return std::numbers::pi * a.mean_diameter * a.radial_gap; }
/// A tube that touches one side opens the other, and the flow goes with the cube of the gap.
double eccentric_ease(const Annulus& a) { return 1.0 + 1.5 * a.eccentricity * a.eccentricity; }
/// Drop per velocity of plane Poiseuille flow, 12 mu L / c^2, from f = 96 / Re on twice the gap.
auto laminar_resistance(const Annulus& a, Viscosity viscosity) {
  return 12.0 * viscosity * a.engaged / (a.radial_gap * a.radial_gap * eccentric_ease(a));
}
}  // namespace

MassFlow annulus_flow(const Annulus& annulus, Pressure drop, Density density, Viscosity viscosity) {
  if (!leaks(annulus, drop, density, viscosity)) return 0.0 * kg_per_s;
  // drop = a v + b v^2, with the root in the form that does not cancel
  const auto a = laminar_resistance(annulus, viscosity);
  const Density b = 0.5 * inlet_and_exit * density;
  const Velocity v = 2.0 * drop / (a + square_root(a * a + 4.0 * b * drop));
  return density * v * ring(annulus);
}
}  // namespace lumwright::draught
