// Prints lumwright's saturation states for the absolute temperatures (K) on standard input, for iapws_saturation.py.
#include "matter/water.hpp"
#include <iostream>
#include <limits>

int main() {
  using namespace lumwright;
  using namespace lumwright::matter;
  std::cout.precision(std::numeric_limits<double>::max_digits10);
  for (double kelvins = 0; std::cin >> kelvins;) {
    const Saturation s = saturation(kelvin(kelvins));
    std::cout << in(s.pressure, Pa) << ' ' << in(above_absolute_zero(saturation_temperature(s.pressure)), K) << ' '
              << in(s.water_density, kg_per_m3) << ' ' << in(s.steam_density, kg_per_m3) << ' '
              << in(s.water_enthalpy, J_per_kg) << ' ' << in(s.steam_enthalpy, J_per_kg) << ' '
              << in(s.water_energy, J_per_kg) << ' ' << in(s.steam_energy, J_per_kg) << '\n';
  }
}
