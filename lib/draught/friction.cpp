#include "draught/friction.hpp"
#include "numeric/cube_root.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <numbers>

namespace lumwright::draught {
namespace {
void check(double re, double relative_roughness) {
  require_above_zero("Reynolds number", re);
  require_within("relative roughness", relative_roughness, {0.0, 0.1});
}

double squared(double x) { return x * x; }
double to_the_8th(double x) { return squared(squared(squared(x))); }

/// (A + B)^(-1/8) of Churchill's equation, so that f / 8 is the 12th root of laminar^12 + turbulent^12.
double churchill_turbulent(double re, double relative_roughness) {
  const double a = 2.457 * std::log(1.0 / (std::pow(7.0 / re, 0.9) + 0.27 * relative_roughness));
  const double b = 37530.0 / re;
  return 1.0 / std::sqrt(std::sqrt(std::sqrt(squared(to_the_8th(a)) + squared(to_the_8th(b)))));
}

/// 12th root of a^12 + b^12 without overflow: a creeping flow has a factor of 1e30.
double twelfth_root_sum(double a, double b) {
  const double big = std::max(a, b), small = std::min(a, b);
  const double to_the_4th = squared(squared(small / big));
  return big * numeric::cube_root(std::sqrt(std::sqrt(1.0 + to_the_4th * to_the_4th * to_the_4th)));
}

void check_flow(MassFlow flow, Area area, Density density) {
  require_not_negative("mass flow", flow);
  require_above_zero("flow area", area);
  require_above_zero("gas density", density);
}
}  // namespace

double friction_developing(double re, double length_over_bore) {
  require_above_zero("Reynolds number", re);
  require_above_zero("length over bore", length_over_bore);
  const double x = length_over_bore / re;  // Shah's x+
  const double entry = 3.44 / std::sqrt(x);
  const double rest = (1.25 / (4.0 * x) + 16.0 - entry) / (1.0 + 0.00021 / (x * x));
  return 4.0 / re * (entry + rest);
}

double friction_short_tube(double re, double length_over_bore, double relative_roughness) {
  check(re, relative_roughness);
  return 8.0 *
         twelfth_root_sum(friction_developing(re, length_over_bore) / 8.0, churchill_turbulent(re, relative_roughness));
}

double reynolds_tube(MassFlow flow, Length bore, Viscosity viscosity) {
  require_not_negative("mass flow", flow);
  require_above_zero("tube bore", bore);
  require_above_zero("gas viscosity", viscosity);
  const double re = 4.0 / std::numbers::pi * (flow / (bore * viscosity));
  require_finite("Reynolds number", re);
  return re;
}

double friction_heads(double friction, const Tube& tube) {
  require_not_negative("friction factor", friction);
  require_above_zero("tube bore", tube.bore);
  require_above_zero("tube length", tube.length);
  return friction * (tube.length / tube.bore);
}

Pressure tube_friction(MassFlow flow, const Tube& tube, Density density, Viscosity viscosity) {
  require_above_zero("tube length", tube.length);
  const double re = reynolds_tube(flow, tube.bore, viscosity);
  const Pressure head = velocity_head(flow, circle(tube.bore), density);
  if (re < 1e-200) return 0.0 * Pa;  // the factor would overflow; the loss is below 1e-200 Pa
  const double f = friction_short_tube(re, tube.length / tube.bore, tube.roughness / tube.bore);
  return friction_heads(f, tube) * head;
}

Velocity mean_velocity(MassFlow flow, Area area, Density density) {
  check_flow(flow, area, density);
  return flow / (density * area);
}

Pressure velocity_head(MassFlow flow, Area area, Density density) {
  const Velocity v = mean_velocity(flow, area, density);
  const Pressure head = 0.5 * density * v * v;
  require_finite("velocity head", head);
  return head;
}

Pressure loss(double k, MassFlow flow, Area area, Density density) {
  require_not_negative("loss factor", k);
  return k * velocity_head(flow, area, density);
}
}  // namespace lumwright::draught
