#include "matter/water.hpp"
#include "numeric/cube_root.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include <cmath>

namespace lumwright::matter {
namespace {
constexpr TemperatureRise critical_temperature = 647.096 * K;  // IAPWS R2-83(1992)
constexpr Pressure critical_pressure = 22.064 * MPa;
constexpr Density critical_density = 322.0 * kg_per_m3;
constexpr Temperature region_4_low = kelvin(273.15), triple_point = kelvin(273.16), critical_point = kelvin(647.096);

// R7-97(2012), table 34, n1 to n10; temperatures in K, pressures in MPa
constexpr double n1 = 0.11670521452767e4, n2 = -0.72421316703206e6, n3 = -0.17073846940092e2, n4 = 0.12020824702470e5,
                 n5 = -0.32325550322333e7, n6 = 0.14915108613530e2, n7 = -0.48232657361591e4, n8 = 0.40511340542057e6,
                 n9 = -0.23855557567849, n10 = 0.65017534844798e3;

std::string shown(Temperature t) { return is_finite(t) ? format(t, "K", 6) : "that is no number"; }
std::string shown(Pressure p) { return is_finite(p) ? format(p, "Pa", 6) : "that is no number"; }

constexpr double power(double x, int n) {  // by squares: what std::pow takes a hundred cycles for
  double out = 1.0;
  for (; n > 0; n /= 2, x *= x)
    if (n % 2 == 1) out *= x;
  return out;
}

// SR1-86(1992), eqs 1 to 5, in tau = 1 - T/Tc and theta = T/Tc
double log_reduced_pressure(double tau) {
  const double half = std::sqrt(tau);
  return (-7.85951783 * tau + 1.84408259 * half * tau - 11.7866497 * power(tau, 3) + 22.6807411 * half * power(tau, 3) -
          15.9618719 * power(tau, 4) + 1.80122502 * half * power(tau, 7)) /
         (1.0 - tau);
}
// -(T/p) dp/dT, which is smooth up to the critical point
double pressure_slope(double tau) {
  const double half = std::sqrt(tau);
  return -7.85951783 + 1.5 * 1.84408259 * half - 3.0 * 11.7866497 * power(tau, 2) +
         3.5 * 22.6807411 * half * power(tau, 2) - 4.0 * 15.9618719 * power(tau, 3) +
         7.5 * 1.80122502 * half * power(tau, 6) + log_reduced_pressure(tau);
}
Density water_density(double tau) {
  const double third = numeric::cube_root(tau);
  return critical_density *
         (1.0 + 1.99274064 * third + 1.09965342 * third * third - 0.510839303 * power(third, 5) -
          1.75493479 * power(third, 16) - 45.5170352 * power(third, 43) - 6.74694450e5 * power(third, 110));
}
Density steam_density(double tau) {
  const double third = numeric::cube_root(tau), sixth = std::sqrt(third);
  return critical_density *
         std::exp(-2.03150240 * third - 2.68302940 * third * third - 5.38626492 * power(third, 4) -
                  17.2991605 * tau * tau * tau - 44.7586581 * power(sixth, 37) - 63.9201063 * power(sixth, 71));
}
SpecificEnergy auxiliary(double theta) {
  const double half = std::sqrt(theta);
  return (-1135.905627715 - 5.65134998e-8 / power(theta, 19) + 2690.66631 * theta +
          127.287297 * half * power(theta, 4) - 135.003439 * power(theta, 5) + 0.981825814 * half * power(theta, 54)) *
         kJ_per_kg;
}
}  // namespace

Pressure saturation_pressure(Temperature t) {
  if (!(t >= region_4_low && t <= critical_point))
    throw ModelError("water temperature " + shown(t) + " is not between 273.15 K and 647.096 K");
  const double kelvins = in(above_absolute_zero(t), K), theta = kelvins + n9 / (kelvins - n10);
  const double a = theta * theta + n1 * theta + n2, b = n3 * theta * theta + n4 * theta + n5,
               c = n6 * theta * theta + n7 * theta + n8;
  return power(2.0 * c / (-b + std::sqrt(b * b - 4.0 * a * c)), 4) * MPa;
}

Temperature saturation_temperature(Pressure p) {
  // the ends are eq. 30 at its own ends, so that a pressure it gave always finds its way back
  static const Pressure low = saturation_pressure(region_4_low), high = saturation_pressure(critical_point);
  if (!(p >= low && p <= high))
    throw ModelError("steam pressure " + shown(p) + " (absolute) is not between 611.213 Pa and 22.064 MPa");
  const double beta = std::sqrt(std::sqrt(in(p, MPa)));
  const double e = beta * beta + n3 * beta + n6, f = n1 * beta * beta + n4 * beta + n7,
               gg = n2 * beta * beta + n5 * beta + n8;  // E, F, G of the release
  const double d = 2.0 * gg / (-f - std::sqrt(f * f - 4.0 * e * gg));
  return kelvin(0.5 * (n10 + d - std::sqrt((n10 + d) * (n10 + d) - 4.0 * (n9 + n10 * d))));
}

Saturation saturation(Temperature t) {
  if (!(t >= triple_point && t <= critical_point))
    throw ModelError("water temperature " + shown(t) + " is not between 273.16 K and 647.096 K");
  const double theta = above_absolute_zero(t) / critical_temperature, tau = 1.0 - theta;
  const Pressure pressure = saturation_pressure(t);
  const Density water = water_density(tau), steam = steam_density(tau);
  const SpecificEnergy alpha = auxiliary(theta);
  const Pressure t_slope = -critical_pressure * std::exp(log_reduced_pressure(tau)) * pressure_slope(tau);  // T dp/dT
  const SpecificEnergy water_enthalpy = alpha + t_slope / water, steam_enthalpy = alpha + t_slope / steam;
  return {.temperature = t,
          .pressure = pressure,
          .water_density = water,
          .steam_density = steam,
          .water_enthalpy = water_enthalpy,
          .steam_enthalpy = steam_enthalpy,
          .water_energy = water_enthalpy - pressure / water,
          .steam_energy = steam_enthalpy - pressure / steam,
          .alpha = alpha};
}

Saturation saturation_at(Pressure p) { return saturation(saturation_temperature(p)); }
}  // namespace lumwright::matter
