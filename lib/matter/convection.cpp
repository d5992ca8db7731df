#include "matter/convection.hpp"
#include "matter/air.hpp"
#include "quantity/require.hpp"

namespace lumwright::matter {
namespace {
// Stefan-Boltzmann constant, SI Brochure 9 (follows from the defining constants).
constexpr double stefan_boltzmann = 5.670374419e-8;  // W/m2K4

void check(const FreeConvection& at) {
  require_within("Rayleigh number", at.rayleigh, {0.0, 1e12});
  require_above_zero("Prandtl number", at.prandtl);
}

double to_9_16ths(double x) { return std::sqrt(x) * std::sqrt(std::sqrt(std::sqrt(std::sqrt(x)))); }

double churchill_chu(const FreeConvection& at, double still, double prandtl_constant) {
  check(at);
  const double prandtl_part = std::pow(1.0 + to_9_16ths(prandtl_constant / at.prandtl), 8.0 / 27.0);
  const double root = still + 0.387 * std::cbrt(std::sqrt(at.rayleigh)) / prandtl_part;
  return root * root;
}

struct Film {
  FreeConvection at;
  Conductivity conductivity;
};
Film film(Length size, Temperature surface, Temperature air) {
  require_above_zero("size of the warm surface", size);
  const Temperature mean = air + 0.5 * (surface - air);
  const Viscosity mu = air_viscosity(mean);
  const Density rho = air_density(mean, atmosphere);
  const Conductivity k = air_conductivity(mean);
  const double pr = prandtl(mean);
  const double rise = std::abs(in(surface - air, K)) / in(above_absolute_zero(mean), K);  // beta dT of an ideal gas
  const double grashof = rise * (standard_gravity * size * size * size * rho * rho / (mu * mu));
  return {{.rayleigh = grashof * pr, .prandtl = pr}, k};
}
}  // namespace

double plate_nusselt(const FreeConvection& at) { return churchill_chu(at, 0.825, 0.492); }

double cylinder_nusselt(const FreeConvection& at) { return churchill_chu(at, 0.60, 0.559); }

HeatTransfer free_convection_plate(Length height, Temperature surface, Temperature air) {
  const Film f = film(height, surface, air);
  return plate_nusselt(f.at) * f.conductivity / height;
}

HeatTransfer free_convection_cylinder(Length diameter, Temperature surface, Temperature air) {
  const Film f = film(diameter, surface, air);
  return cylinder_nusselt(f.at) * f.conductivity / diameter;
}

HeatTransfer radiation_coefficient(double emissivity, Temperature surface, Temperature surroundings) {
  require_within("emissivity", emissivity, {0.0, 1.0});
  require_not_negative("surface temperature", surface);
  require_not_negative("temperature of the surroundings", surroundings);
  const double s = in(above_absolute_zero(surface), K), a = in(above_absolute_zero(surroundings), K);
  return emissivity * stefan_boltzmann * (s + a) * (s * s + a * a) * W_per_m2_K;
}

double hausen_nusselt(const TubeHeat& at) {
  require_not_negative("Reynolds number", at.reynolds);
  require_above_zero("Prandtl number", at.prandtl);
  require_above_zero("bore over length", at.bore_over_length);
  const double g = at.bore_over_length * at.reynolds * at.prandtl;
  return 3.66 + 0.0668 * g / (1.0 + 0.04 * std::cbrt(g * g));
}

double gnielinski_nusselt(double reynolds, double prandtl) {
  require_within("Reynolds number of turbulent flow", reynolds, {2300.0, 5e6});
  require_within("Prandtl number", prandtl, {0.5, 2000.0});
  const double root = 0.790 * std::log(reynolds) - 1.64, f8 = 1.0 / (8.0 * root * root);
  return f8 * (reynolds - 1000.0) * prandtl / (1.0 + 12.7 * std::sqrt(f8) * (std::cbrt(prandtl * prandtl) - 1.0));
}

double tube_nusselt(const TubeHeat& at) {
  if (at.reynolds <= 2300.0) return hausen_nusselt(at);
  if (at.reynolds >= 4000.0) return gnielinski_nusselt(at.reynolds, at.prandtl);
  const double share = (at.reynolds - 2300.0) / (4000.0 - 2300.0);
  const TubeHeat last_laminar = {.reynolds = 2300.0, .prandtl = at.prandtl, .bore_over_length = at.bore_over_length};
  return (1.0 - share) * hausen_nusselt(last_laminar) + share * gnielinski_nusselt(4000.0, at.prandtl);
}
}  // namespace lumwright::matter
