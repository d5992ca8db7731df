#include "boiler/tube_heat.hpp"
#include "matter/air.hpp"
#include "matter/flue_gas.hpp"
#include "numeric/cube_root.hpp"
#include "quantity/errors.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>
#include <numbers>

namespace lumwright::boiler {
namespace {
constexpr double laminar_to = 2300.0, turbulent_from = 4000.0;

void check(const matter::TubeHeat& at) {
  require_not_negative("Reynolds number", at.reynolds);
  require_above_zero("Prandtl number", at.prandtl);
  require_above_zero("bore over length", at.bore_over_length);
}
double cube(double x) { return x * x * x; }

/// Third power of the laminar Nusselt number without the developing flow.
double laminar_cubed(double graetz) { return cube(3.66) + cube(0.7) + cube(1.615 * numeric::cube_root(graetz) - 0.7); }

struct Pass {  // one guess of the exit temperature, and the one that follows from it
  double exit, reynolds, nusselt, transfer_units, coefficient;
};
class TubePass {
 public:
  TubePass(const HeatingTubes& tubes, const TubeGas& gas, double water)
      : gas_(gas),
        water_(water),
        inlet_(in(above_absolute_zero(gas.inlet), K)),
        h_in_(in(gas.mixture.enthalpy(gas.inlet), J_per_kg)),
        m_(in(gas.flow, kg_per_s)),
        d_(in(tubes.bore, m)),
        l_(in(tubes.length, m)),
        n_(tubes.count) {}

  Pass from(double exit) const {
    const Temperature mean = kelvin(0.5 * (inlet_ + exit));
    const double difference = inlet_ - exit;
    // heat capacity between inlet and exit; where they nearly meet, at the middle of the two
    const double cp = std::abs(difference) > 1e-3
                          ? (h_in_ - in(gas_.mixture.enthalpy(kelvin(exit)), J_per_kg)) / difference
                          : in(gas_.mixture.heat_capacity(mean), J_per_kg_K);
    const double mu = in(matter::air_viscosity(mean), Pa_s), k = in(matter::flue_gas_conductivity(mean), W_per_m_K);
    const double re = 4.0 * m_ / (n_ * std::numbers::pi * d_ * mu);
    const double nu = fire_tube_nusselt({.reynolds = re, .prandtl = mu * cp / k, .bore_over_length = d_ / l_});
    const double h = nu * k / d_, ntu = h * std::numbers::pi * d_ * l_ * n_ / (m_ * cp);
    return {.exit = water_ + (inlet_ - water_) * std::exp(-ntu),
            .reynolds = re,
            .nusselt = nu,
            .transfer_units = ntu,
            .coefficient = h};
  }

  /// The guess that confirms itself. Properties change slowly with the guess, so that secants close in fast; a fence
  /// between water and inlet holds them.
  Pass solve(double guess) const {
    const double low = std::min(water_, inlet_), high = std::max(water_, inlet_), close = 1e-10 * high;
    double before = water_ + guess * (inlet_ - water_), gap_before = from(before).exit - before;
    double here = std::clamp(before + gap_before, low, high);
    for (int i = 0; i < 50; ++i) {
      const Pass pass = from(here);
      const double gap = pass.exit - here;
      if (std::abs(gap) <= close) return pass;
      const double slope = (gap - gap_before) / (here - before);
      const double next = std::isfinite(slope) && slope < -0.1 ? here - gap / slope : here + gap;
      before = here;
      gap_before = gap;
      here = std::clamp(next, low, high);
      if (here == before) return pass;
    }
    throw ModelError("the gas in the fire tubes finds no exit temperature");
  }

 private:
  const TubeGas& gas_;
  double water_, inlet_, h_in_, m_, d_, l_, n_;
};
}  // namespace

double laminar_nusselt(const matter::TubeHeat& at) {
  check(at);
  return numeric::cube_root(laminar_cubed(at.reynolds * at.prandtl * at.bore_over_length));
}

double turbulent_nusselt(const matter::TubeHeat& at) {
  check(at);
  require_within("Reynolds number of turbulent flow", at.reynolds, {laminar_to, 1e9});
  const double root = 1.8 * std::log10(at.reynolds) - 1.5, f8 = 1.0 / (8.0 * root * root);
  const double ratio = at.bore_over_length;
  return f8 * (at.reynolds - 1000.0) * at.prandtl /
         (1.0 + 12.7 * std::sqrt(f8) * (numeric::cube_root(at.prandtl * at.prandtl) - 1.0)) *
         (1.0 + numeric::cube_root(ratio * ratio));
}

double fire_tube_nusselt(const matter::TubeHeat& at) {
  if (at.reynolds <= laminar_to) return laminar_nusselt(at);
  if (at.reynolds >= turbulent_from) return turbulent_nusselt(at);
  const double share = (at.reynolds - laminar_to) / (turbulent_from - laminar_to);
  matter::TubeHeat last = at, first = at;
  last.reynolds = laminar_to;
  first.reynolds = turbulent_from;
  return (1.0 - share) * laminar_nusselt(last) + share * turbulent_nusselt(first);
}

TubeBalance tube_balance(const HeatingTubes& tubes, const TubeGas& gas, Temperature water, double guess) {
  if (tubes.count < 1) throw ModelError("number of fire tubes " + std::to_string(tubes.count) + " is below 1");
  require_above_zero("fire tube bore", tubes.bore);
  require_above_zero("fire tube length", tubes.length);
  require_not_negative("gas through the fire tubes", gas.flow);
  if (!(gas.flow > 0.0 * kg_per_s))
    return {.exit = water,
            .mean = water,
            .heat = 0.0 * W,
            .reynolds = 0.0,
            .nusselt = 3.66,
            .transfer_units = 0.0,
            .coefficient = 3.66 * matter::flue_gas_conductivity(water) / tubes.bore};
  const double tw = in(above_absolute_zero(water), K), inlet = in(above_absolute_zero(gas.inlet), K);
  const Pass pass = TubePass(tubes, gas, tw).solve(guess);
  const double exit = pass.exit;
  const double along = pass.transfer_units > 1e-9 ? tw + (inlet - exit) / pass.transfer_units : inlet;
  return {.exit = kelvin(exit),
          .mean = kelvin(along),
          .heat = gas.flow * (gas.mixture.enthalpy(gas.inlet) - gas.mixture.enthalpy(kelvin(exit))),
          .reynolds = pass.reynolds,
          .nusselt = pass.nusselt,
          .transfer_units = pass.transfer_units,
          .coefficient = pass.coefficient * W_per_m2_K};
}
}  // namespace lumwright::boiler
