#include "matter/nasa.hpp"
#include "quantity/errors.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::matter {
namespace {
constexpr double gas_constant = 8314.462618;                                 // J/(kmol K), exact (SI Brochure 9)
constexpr double table_from = in(above_absolute_zero(IdealGas::coldest), K),
                 table_to = in(above_absolute_zero(IdealGas::hottest), K), reference = 298.15;  // K

double checked(Temperature t) {
  const double x = in(above_absolute_zero(t), K);
  if (!(x >= table_from && x <= table_to)) require_within("gas temperature", t, {table_from, table_to});
  return x;
}
double capacity(const std::array<double, 6>& c, double t) {
  return c[0] + t * (c[1] + t * (c[2] + t * (c[3] + t * c[4])));
}
double heat_of(const std::array<double, 6>& c, double t) {
  return c[5] + t * (c[0] + t * (c[1] / 2 + t * (c[2] / 3 + t * (c[3] / 4 + t * (c[4] / 5)))));
}
std::array<double, 6> scaled(const std::array<double, 7>& a, double r) {
  return {a[0] * r, a[1] * r, a[2] * r, a[3] * r, a[4] * r, a[5] * r};
}
}  // namespace

IdealGas::IdealGas(const data::SpeciesRow& row) : IdealGas(row, row.relative_mass) {}

IdealGas::IdealGas(const data::SpeciesRow& row, double relative_mass)
    : middle_(in(above_absolute_zero(row.middle), K)), relative_mass_(relative_mass) {
  require_above_zero("relative mass of a molecule", relative_mass);
  low_ = scaled(row.low, gas_constant / relative_mass);
  high_ = scaled(row.high, gas_constant / relative_mass);
  high_[5] += heat_of(low_, middle_) - heat_of(high_, middle_);
  at_25_ = h(reference);
}

double IdealGas::h(double t) const { return heat_of(t < middle_ ? low_ : high_, t); }
double IdealGas::cp(double t) const { return capacity(t < middle_ ? low_ : high_, t); }

SpecificEnergy IdealGas::enthalpy(Temperature t) const { return h(checked(t)) * J_per_kg; }
SpecificHeat IdealGas::heat_capacity(Temperature t) const { return cp(checked(t)) * J_per_kg_K; }

IdealGas::Heat IdealGas::heat(Temperature t) const {
  const double x = checked(t);
  return {h(x) * J_per_kg, cp(x) * J_per_kg_K};
}

void IdealGas::require_reached(SpecificEnergy enthalpy) const {
  const double wanted = in(enthalpy, J_per_kg);
  if (!(wanted >= h(table_from) && wanted <= h(table_to)))
    throw ModelError("a gas does not reach " + std::to_string(wanted - at_25_) +
                     " J/kg above 25 degC between 200 and 3500 K");
}

Temperature IdealGas::temperature(SpecificEnergy enthalpy) const {
  require_reached(enthalpy);
  const double wanted = in(enthalpy, J_per_kg);
  double low = table_from, high = table_to;
  double t = std::clamp(reference + (wanted - at_25_) / 1150.0, low, high);
  for (int i = 0; i < 60; ++i) {
    const double excess = h(t) - wanted;
    (excess > 0.0 ? high : low) = t;
    const double next = t - excess / cp(t);
    const double fenced = next > low && next < high ? next : 0.5 * (low + high);
    if (std::abs(next - t) <= 1e-12 * t) return kelvin(std::clamp(next, table_from, table_to));
    t = fenced;
  }
  return kelvin(t);  // the fence has shrunk to rounding: 60 halvings of 3300 K
}

IdealGas mixed(const IdealGas& a, const IdealGas& b, double share_of_b) {
  require_within("share in a gas mixture", share_of_b, {0.0, 1.0});
  if (a.middle_ != b.middle_) throw ModelError("gases whose ranges do not meet at one temperature cannot be mixed");
  const double share_of_a = 1.0 - share_of_b;
  IdealGas out;
  for (std::size_t i = 0; i < out.low_.size(); ++i) {
    out.low_[i] = share_of_a * a.low_[i] + share_of_b * b.low_[i];
    out.high_[i] = share_of_a * a.high_[i] + share_of_b * b.high_[i];
  }
  out.middle_ = a.middle_;
  out.at_25_ = share_of_a * a.at_25_ + share_of_b * b.at_25_;
  out.relative_mass_ = 1.0 / (share_of_a / a.relative_mass_ + share_of_b / b.relative_mass_);
  return out;
}
}  // namespace lumwright::matter
