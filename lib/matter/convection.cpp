#include "matter/convection.hpp"
#include "data/air.hpp"
#include "matter/air.hpp"
#include "numeric/chebyshev.hpp"
#include "numeric/cube_root.hpp"
#include "quantity/require.hpp"

namespace lumwright::matter {
namespace {
// Stefan-Boltzmann constant, SI Brochure 9 (follows from the defining constants).
constexpr double stefan_boltzmann = 5.670374419e-8;  // W/m2K4

constexpr Range known_rayleigh = {0.0, 1e12};
constexpr double most_rayleigh_to_sixth = 100.0;

void check(const FreeConvection& at) {
  require_within("Rayleigh number", at.rayleigh, known_rayleigh);
  require_above_zero("Prandtl number", at.prandtl);
}

double to_9_16ths(double x) { return std::sqrt(x) * std::sqrt(std::sqrt(std::sqrt(std::sqrt(x)))); }

/// Nu = (still + slope Ra^(1/6))^2, the form of both of Churchill and Chu's equations.
struct Layer {
  double still, prandtl_constant;
};
constexpr Layer plate = {0.825, 0.492}, cylinder = {0.60, 0.559};
double nusselt(const Layer& layer, double slope, double rayleigh_to_sixth) {
  const double root = layer.still + slope * rayleigh_to_sixth;
  return root * root;
}
double churchill_chu(const FreeConvection& at, const Layer& layer) {
  check(at);
  const double slope = 0.387 / std::pow(1.0 + to_9_16ths(layer.prandtl_constant / at.prandtl), 8.0 / 27.0);
  return nusselt(layer, slope, numeric::sixth_root(at.rayleigh));
}

/// What a film of room air of this temperature does: its conductivity (W/mK), the sixth root of its Rayleigh number for
/// a rise of 1 K over 1 m, and the slopes of plate and cylinder. Free convection takes a third of a raise when worked
/// out afresh; drawn up once, it is the same to 1e-11.
enum Film : std::size_t { conductivity, rayleigh_to_sixth, plate_slope, cylinder_slope, film_values };
using FilmChart = numeric::ChebyshevPieces<film_values, 8>;

FilmChart::Values film_at(Temperature mean) {
  const Viscosity mu = air_viscosity(mean);
  const Density rho = air_density(mean, atmosphere);
  const double pr = prandtl(mean), beta = 1.0 / in(above_absolute_zero(mean), K);  // of an ideal gas
  const double grashof = beta * (standard_gravity * m * m * m * rho * rho / (mu * mu));
  const FreeConvection one{.rayleigh = 1.0, .prandtl = pr};
  return {in(air_conductivity(mean), W_per_m_K), numeric::sixth_root(grashof * pr),
          std::sqrt(plate_nusselt(one)) - plate.still, std::sqrt(cylinder_nusselt(one)) - cylinder.still};
}
const FilmChart& films() {
  static const FilmChart chart = [] {
    std::vector<double> breaks;  // the curve of heat capacity bends at its rows
    for (const data::AirHeatCapacity& row : data::air_heat_capacities())
      breaks.push_back(in(above_absolute_zero(row.temperature), K));
    return FilmChart(breaks, [](double t) { return film_at(kelvin(t)); });
  }();
  return chart;
}

HeatTransfer free_convection(const Layer& layer, Film slope, Length size, Temperature surface, Temperature air) {
  require_above_zero("size of the warm surface", size);
  const Temperature mean = air + 0.5 * (surface - air);
  require_within("air temperature", mean, air_known);
  const FilmChart::Values film = films()(in(above_absolute_zero(mean), K));
  const double rise = std::abs(in(surface - air, K)), across = in(size, m);
  const double root = film[rayleigh_to_sixth] * numeric::sixth_root(rise) * std::sqrt(across);
  if (!(root <= most_rayleigh_to_sixth)) require_within("Rayleigh number", std::pow(root, 6), known_rayleigh);
  return nusselt(layer, film[slope], root) * film[conductivity] / across * W_per_m2_K;
}
}  // namespace

double plate_nusselt(const FreeConvection& at) { return churchill_chu(at, plate); }

double cylinder_nusselt(const FreeConvection& at) { return churchill_chu(at, cylinder); }

HeatTransfer free_convection_plate(Length height, Temperature surface, Temperature air) {
  return free_convection(plate, plate_slope, height, surface, air);
}

HeatTransfer free_convection_cylinder(Length diameter, Temperature surface, Temperature air) {
  return free_convection(cylinder, cylinder_slope, diameter, surface, air);
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
  return 3.66 + 0.0668 * g / (1.0 + 0.04 * numeric::cube_root(g * g));
}

double gnielinski_nusselt(double reynolds, double prandtl) {
  require_within("Reynolds number of turbulent flow", reynolds, {2300.0, 5e6});
  require_within("Prandtl number", prandtl, {0.5, 2000.0});
  const double root = 0.790 * std::log(reynolds) - 1.64, f8 = 1.0 / (8.0 * root * root);
  return f8 * (reynolds - 1000.0) * prandtl /
         (1.0 + 12.7 * std::sqrt(f8) * (numeric::cube_root(prandtl * prandtl) - 1.0));
}

double tube_nusselt(const TubeHeat& at) {
  if (at.reynolds <= 2300.0) return hausen_nusselt(at);
  if (at.reynolds >= 4000.0) return gnielinski_nusselt(at.reynolds, at.prandtl);
  const double share = (at.reynolds - 2300.0) / (4000.0 - 2300.0);
  const TubeHeat last_laminar = {.reynolds = 2300.0, .prandtl = at.prandtl, .bore_over_length = at.bore_over_length};
  return (1.0 - share) * hausen_nusselt(last_laminar) + share * gnielinski_nusselt(4000.0, at.prandtl);
}
}  // namespace lumwright::matter
