#include "matter/air.hpp"
#include "data/air.hpp"
#include "numeric/curve.hpp"
#include "quantity/require.hpp"

namespace lumwright::matter {
namespace {
constexpr SpecificHeat air_constant = 287.05 * J_per_kg_K;  // dry air, 8.31446 / 0.028965

double checked_kelvin(Temperature t) {
  require_within("air temperature", t, air_known);
  return in(above_absolute_zero(t), K);
}

/// Sutherland's form, for viscosity and conductivity alike: x0 (T/T0)^1.5 (T0 + S) / (T + S), T0 = 273.15 K.
double sutherland(double x0, double s, double t) {
  constexpr double t0 = 273.15;
  const double ratio = t / t0;
  return x0 * ratio * std::sqrt(ratio) * (t0 + s) / (t + s);
}

numeric::MonotoneCurve heat_capacity_curve() {
  std::vector<double> t, cp;
  for (const data::AirHeatCapacity& row : data::air_heat_capacities()) {
    t.push_back(in(above_absolute_zero(row.temperature), K));
    cp.push_back(in(row.value, J_per_kg_K));
  }
  return {std::move(t), std::move(cp)};
}
}  // namespace

Density air_density(Temperature t, Pressure absolute) {
  checked_kelvin(t);
  require_above_zero("absolute pressure", absolute);
  return absolute / (air_constant * above_absolute_zero(t));
}

Viscosity air_viscosity(Temperature t) { return sutherland(1.716e-5, 110.4, checked_kelvin(t)) * Pa_s; }

Conductivity air_conductivity(Temperature t) { return sutherland(0.0241, 194.0, checked_kelvin(t)) * W_per_m_K; }

SpecificHeat air_heat_capacity(Temperature t) {
  static const numeric::MonotoneCurve curve = heat_capacity_curve();
  return curve(checked_kelvin(t)) * J_per_kg_K;
}

double prandtl(Temperature t) { return air_viscosity(t) * air_heat_capacity(t) / air_conductivity(t); }
}  // namespace lumwright::matter
