// Every physical type and unit of the program. The only header that names Boost.Units.
#pragma once
#include <boost/units/absolute.hpp>
#include <boost/units/pow.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si.hpp>
#include <cmath>

namespace lumwright {
namespace bu = boost::units;
namespace si = boost::units::si;
using bu::pow, bu::quantity;

namespace detail {
template <class A, class B>
using times = typename bu::multiply_typeof_helper<A, B>::type;
template <class A, class B>
using over = typename bu::divide_typeof_helper<A, B>::type;
}  // namespace detail

/// The processor's own root; the root<2> of Boost.Units is std::pow, at five times the price.
template <class Unit>
auto square_root(const quantity<Unit>& square) {
  return bu::root_typeof_helper<quantity<Unit>, bu::static_rational<2>>::type::from_value(std::sqrt(square.value()));
}

using Length = quantity<si::length>;
using Area = quantity<si::area>;
using Volume = quantity<si::volume>;
using Mass = quantity<si::mass>;
using Duration = quantity<si::time>;
using Velocity = quantity<si::velocity>;
using Acceleration = quantity<si::acceleration>;
using Density = quantity<si::mass_density>;
using Pressure = quantity<si::pressure>;
using Viscosity = quantity<si::dynamic_viscosity>;
using MassFlow = quantity<detail::over<si::mass, si::time>>;
using MassFlux = quantity<detail::over<detail::over<si::mass, si::time>, si::area>>;
using VolumeFlow = quantity<detail::over<si::volume, si::time>>;
using Rotation =
    quantity<si::frequency>;  // turns per second: Boost's angular velocity carries a radian that no fan law wants
using Voltage = quantity<si::electric_potential>;
using Current = quantity<si::current>;
using Resistance = quantity<si::resistance>;
using Inductance = quantity<si::inductance>;
using Charge = quantity<si::electric_charge>;
using Power = quantity<si::power>;
using Energy = quantity<si::energy>;
using Temperature = quantity<bu::absolute<si::temperature>>;                    // a point on a scale: 15 degC
using TemperatureRise = quantity<si::temperature>;                              // a distance between points: 15 K
using ThermalConductance = quantity<detail::over<si::power, si::temperature>>;  // W/K
using HeatTransfer = quantity<detail::over<detail::over<si::power, si::temperature>, si::area>>;    // W/m2K
using Conductivity = quantity<detail::over<detail::over<si::power, si::temperature>, si::length>>;  // W/mK
using SpecificEnergy = quantity<detail::over<si::energy, si::mass>>;                                // J/kg
using SpecificHeat = quantity<detail::over<detail::over<si::energy, si::mass>, si::temperature>>;   // J/kgK
using Expansion = quantity<detail::over<si::dimensionless, si::temperature>>;                       // 1/K
using ThermalResistance = quantity<detail::over<si::temperature, si::power>>;                       // K/W
using LineResistance = quantity<detail::over<si::resistance, si::length>>;                          // ohm/m

// Units are constants of quantity type, so every number in the program is SI from the start. They have a namespace of
// their own so that a local `m` or `V` of an equation shadows nothing.
namespace unit {
// Factors are exact by definition (SI Brochure 9; NIST SP 811, 2008, app. B.8) unless a remark says otherwise.
inline constexpr Length m = 1.0 * si::meter, mm = 1e-3 * m, cm = 1e-2 * m, km = 1e3 * m, um = 1e-6 * m;
inline constexpr Length inch = 25.4 * mm, thou = 1e-3 * inch, foot = 12.0 * inch;
inline constexpr Area m2 = m * m, cm2 = cm * cm, mm2 = mm * mm, in2 = inch * inch;
inline constexpr Volume m3 = m * m * m, cm3 = cm * cm * cm, litre = 1e-3 * m3, ml = 1e-3 * litre;
inline constexpr Volume foot3 = foot * foot * foot, imperial_pint = 568.26125 * ml, fluid_ounce = imperial_pint / 20.0;
inline constexpr Mass kg = 1.0 * si::kilogram, g = 1e-3 * kg, mg = 1e-6 * kg, pound = 0.45359237 * kg,
                      ounce = pound / 16.0;
inline constexpr Duration s = 1.0 * si::second, ms = 1e-3 * s, us = 1e-6 * s, ns = 1e-9 * s, minute = 60.0 * s,
                          hour = 3600.0 * s;
inline constexpr Velocity m_per_s = m / s;
inline constexpr Density kg_per_m3 = kg / m3, g_per_cm3 = g / cm3;
inline constexpr Pressure Pa = 1.0 * si::pascal, hPa = 100.0 * Pa, kPa = 1e3 * Pa, MPa = 1e6 * Pa, bar = 1e5 * Pa,
                          mbar = 100.0 * Pa;
inline constexpr Pressure psi = 6894.757293168361 * Pa;                // lbf/in2: 0.45359237 * 9.80665 / 0.0254^2
inline constexpr Pressure mmH2O = 9.80665 * Pa, inH2O = 25.4 * mmH2O;  // conventional water, 1 kg/L
inline constexpr Pressure atmosphere = 101325.0 * Pa;
inline constexpr Viscosity Pa_s = Pa * s;
inline constexpr MassFlow kg_per_s = kg / s, g_per_s = g / s, mg_per_s = mg / s, g_per_min = g / minute;
inline constexpr MassFlux kg_per_m2_s = kg / s / m2;
inline constexpr VolumeFlow m3_per_s = m3 / s, m3_per_h = m3 / hour, m3_per_min = m3 / minute;
inline constexpr VolumeFlow litre_per_min = litre / minute, litre_per_s = litre / s,
                            cubic_foot_per_min = foot3 / minute;
inline constexpr Rotation hertz = 1.0 / s, rpm = 1.0 / minute;
inline constexpr Voltage V = 1.0 * si::volt, mV = 1e-3 * V;
inline constexpr Current A = 1.0 * si::ampere, mA = 1e-3 * A;
inline constexpr Resistance ohm = 1.0 * si::ohm, mohm = 1e-3 * ohm;
inline constexpr Inductance microhenry = 1e-6 * si::henry;
inline constexpr Charge Ah = A * hour, mAh = 1e-3 * Ah;
inline constexpr Power W = 1.0 * si::watt, mW = 1e-3 * W, kW = 1e3 * W;
inline constexpr Energy J = 1.0 * si::joule, kJ = 1e3 * J, MJ = 1e6 * J, Wh = W * hour, kWh = 1e3 * Wh;
inline constexpr TemperatureRise K = 1.0 * si::kelvin;
inline constexpr ThermalConductance W_per_K = W / K;
inline constexpr HeatTransfer W_per_m2_K = W / K / m2;
inline constexpr Conductivity W_per_m_K = W / K / m;
inline constexpr SpecificEnergy J_per_kg = J / kg, kJ_per_kg = kJ / kg, MJ_per_kg = MJ / kg;
inline constexpr SpecificHeat J_per_kg_K = J / kg / K;
inline constexpr Expansion per_K = 1.0 / K;
inline constexpr ThermalResistance K_per_W = K / W;
inline constexpr LineResistance ohm_per_m = ohm / m, ohm_per_km = ohm / km;
}  // namespace unit
using namespace unit;

inline constexpr Acceleration standard_gravity = 9.80665 * m / s / s;  // exact, CGPM 1901

/// The number to print for `q` in `unit`: in(bore, mm). The only way out of the type system.
template <class Unit>
constexpr double in(const quantity<Unit>& q, const quantity<Unit>& unit) {
  return q.value() / unit.value();
}

constexpr Temperature degC(double t) { return Temperature() + (t + 273.15) * K; }  // Temperature() is 0 K
constexpr Temperature kelvin(double t) { return Temperature() + t * K; }
/// The factor in R T or sigma T^4. Boost.Units lets `R * Temperature` compile, with a meaningless type.
constexpr TemperatureRise above_absolute_zero(Temperature t) { return t - Temperature(); }
constexpr double in_degC(Temperature t) { return in(above_absolute_zero(t), K) - 273.15; }

/// Area of a circle.
inline Area circle(Length diameter) { return 0.78539816339744831 * diameter * diameter; }
template <class Unit>
bool is_finite(const quantity<Unit>& q) {
  return std::isfinite(q.value());
}
inline bool is_finite(Temperature t) { return std::isfinite(in(above_absolute_zero(t), K)); }
}  // namespace lumwright
