#include "boiler/firebox.hpp"
#include "matter/convection.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::boiler {
FireboxBalance firebox_balance(const Firebox& firebox, const FireboxGas& gas, Temperature water,
                               std::optional<Temperature> guess) {
  require_not_negative("heating surface of the firebox", firebox.surface);
  require_not_negative("convection in the firebox", firebox.convection);
  require_not_negative("gas through the firebox", gas.flow);
  gas.mixture.require_reached(gas.enthalpy);
  if (!(gas.flow > 0.0 * kg_per_s)) return {.gas = water, .heat = 0.0 * W};

  const double m = in(gas.flow, kg_per_s), area = in(firebox.surface, m2), tw = in(above_absolute_zero(water), K);
  const double h_in = in(gas.enthalpy, J_per_kg), h_c = in(firebox.convection, W_per_m2_K);
  const Temperature hot = guess ? *guess : gas.mixture.temperature(gas.enthalpy);
  double t = std::max(in(above_absolute_zero(hot), K), tw);
  // The coefficient is proportional to this sum of powers at every temperature.
  const auto powers = [tw](double x) { return (x + tw) * (x * x + tw * tw); };
  const double most = in(above_absolute_zero(matter::IdealGas::hottest), K);
  const double emitted =
      in(matter::radiation_coefficient(firebox.emissivity, kelvin(t), water), W_per_m2_K) / powers(t);
  for (int i = 0; i < 100; ++i) {
    const matter::IdealGas::Heat heat = gas.mixture.heat(kelvin(t));
    const double given = m * (h_in - in(heat.enthalpy, J_per_kg));
    const double taken = area * (emitted * powers(t) + h_c) * (t - tw);
    const double slope = m * in(heat.capacity, J_per_kg_K) + area * (4.0 * emitted * t * t * t + h_c);
    const double step = std::min((given - taken) / slope, most - t);
    t += step;
    if (std::abs(step) <= 1e-12 * t) return {.gas = kelvin(t), .heat = taken * W};
  }
  throw ModelError("the firebox finds no balance of heat with " + format_number(1e3 * m) + " g/s of gas");
}
}  // namespace lumwright::boiler
