#include "matter/flue_gas.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <array>
#include <cmath>

namespace lumwright::matter {
namespace {
const IdealGas& co2() {
  static const IdealGas gas(data::species("CO2"));
  return gas;
}
const IdealGas& steam() {
  static const IdealGas gas(data::species("H2O"));
  return gas;
}
const IdealGas& co() {
  static const IdealGas gas(data::species("CO"));
  return gas;
}
const IdealGas& oxygen() {
  static const IdealGas gas(data::species("O2"));
  return gas;
}
const IdealGas& rest_of_air() {
  static const IdealGas gas(data::species("N2"), data::dry_air().rest_relative_mass);
  return gas;
}
}  // namespace

double oxygen_in_air() {
  const double share = data::dry_air().oxygen_share, o2 = share * data::species("O2").relative_mass;
  return o2 / (o2 + (1.0 - share) * data::dry_air().rest_relative_mass);
}

GasShares air_shares() {
  static const double o2 = oxygen_in_air();
  return {.carbon_dioxide = 0.0, .water = 0.0, .carbon_monoxide = 0.0, .oxygen = o2, .nitrogen = 1.0 - o2};
}

IdealGas gas_of(const GasShares& s) {
  struct Part {
    const IdealGas* gas;
    double share;
  };
  const std::array<Part, 5> parts = {{{&rest_of_air(), s.nitrogen},
                                      {&co2(), s.carbon_dioxide},
                                      {&steam(), s.water},
                                      {&oxygen(), s.oxygen},
                                      {&co(), s.carbon_monoxide}}};
  double sum = 0.0;
  for (const Part& part : parts) {
    require_within("mass share of a gas", part.share, {-1e-9, 1.0 + 1e-9});
    sum += part.share;
  }
  require_within("sum of the mass shares of a gas", sum, {1.0 - 1e-9, 1.0 + 1e-9});
  IdealGas out = *parts[0].gas;
  double so_far = std::max(parts[0].share, 0.0);
  for (std::size_t i = 1; i < parts.size(); ++i) {
    const double share = std::max(parts[i].share, 0.0);
    if (!(share > 0.0)) continue;
    so_far += share;
    out = mixed(out, *parts[i].gas, share / so_far);
  }
  return out;
}

const IdealGas& dry_air_gas() {
  static const IdealGas gas = gas_of(air_shares());
  return gas;
}

Conductivity flue_gas_conductivity(Temperature t) {
  const double x = in(above_absolute_zero(t), K);
  if (!(x >= 200.0 && x <= 2500.0)) require_within("gas temperature", t, {200.0, 2500.0});
  constexpr double ln10 = 2.302585092994046;
  return 2.64638e-3 * x * std::sqrt(x) / (x + 245.4 * std::exp(-12.0 * ln10 / x)) * W_per_m_K;
}
}  // namespace lumwright::matter
