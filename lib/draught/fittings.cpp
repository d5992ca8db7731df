#include "draught/fittings.hpp"
#include "draught/fittings_charts.hpp"
#include "draught/friction.hpp"
#include "matter/range.hpp"
#include <numbers>
#include <string>

namespace lumwright {
namespace {
using std::numbers::pi;

const char* name(Handbook handbook) {
  switch (handbook) {
    case Handbook::idelchik:
      return "Idelchik";
    case Handbook::rennels:
      return "Rennels";
    case Handbook::crane:
      return "Crane";
    case Handbook::miller:
      return "Miller";
    case Handbook::harris:
      return "Harris";
  }
  return "unnamed";
}
[[noreturn]] void unknown(const char* what, Handbook handbook) {
  throw ModelError(std::string("no equation of ") + name(handbook) + " is kept for a " + what);
}

double square(double x) { return x * x; }

/// Narrow over wide bore.
double bore_ratio(Length small, Length large) {
  require_above_zero("narrow bore", small);
  require_above_zero("wide bore", large);
  require_not_negative("wide bore minus narrow bore", large - small);
  return small / large;
}

/// Crane's friction factor of rough turbulent flow in clean commercial steel pipe: Colebrook at Re = 7.5e6 bore/m with
/// the roughness of Farshad et al. for bare carbon steel.
double crane_friction(Length bore) {
  require_above_zero("bend bore", bore);
  const double d = in(bore, m);
  return friction_colebrook(7.5e6 * d, 3.4126825352925e-5 * std::pow(d, -1.0112));
}

void check_turn(double angle) { require_within("angle of a bend", angle, {0.0, pi}); }
double in_degrees(double angle) { return angle * 180.0 / pi; }

/// Loss of a jet that contracts to 1/lambda and spreads again, Rennels and Hudson 2012, ch. 9 and 10.
double rennels_jet(double sharpness, double lambda) {
  return 0.0696 * sharpness * square(lambda) + square(lambda - 1.0);
}
}  // namespace

double square_inlet(Handbook handbook) {
  switch (handbook) {
    case Handbook::idelchik:
    case Handbook::crane:
      return 0.5;
    case Handbook::rennels:
      return 0.57;
    case Handbook::miller:
      return 0.5092676683721356;  // his chart at radius 0, as the library fluids 1.0.22 reads it
    case Handbook::harris:
      break;
  }
  unknown("square inlet", handbook);
}

double projecting_inlet(const ProjectingInlet& inlet, Handbook handbook) {
  require_above_zero("inlet bore", inlet.bore);
  require_not_negative("thickness of the inlet's edge", inlet.wall);
  require_not_negative("projection of the inlet", inlet.projection);
  const double edge = inlet.wall / inlet.bore;
  switch (handbook) {
    case Handbook::idelchik:
      return grid_at(data::loss_grid("projecting inlet, idelchik"), edge, inlet.projection / inlet.bore);
    case Handbook::rennels: {
      const double e = std::min(edge, 0.05);
      return 1.12 - 22.0 * e + 216.0 * e * e + 80.0 * e * e * e;
    }
    case Handbook::crane:
      return 0.78;
    case Handbook::miller:
      return polynomial_at(data::loss_polynomial("projecting inlet, miller"), edge);
    case Handbook::harris:
      return spline_at(data::loss_spline("projecting inlet, harris"), edge);
  }
  unknown("projecting inlet", handbook);
}

double rounded_inlet(const RoundedInlet& inlet, Handbook handbook) {
  require_above_zero("inlet bore", inlet.bore);
  require_not_negative("radius of the inlet's edge", inlet.radius);
  const double r = inlet.radius / inlet.bore;
  switch (handbook) {
    case Handbook::idelchik:
      return spline_at(data::loss_spline("rounded inlet, idelchik"), r);
    case Handbook::crane:
      return points_at(data::loss_points("rounded inlet, crane"), r);
    case Handbook::rennels: {
      const double q = std::min(r, 1.0);
      const double lambda = 1.0 + 0.622 * square(square(1.0 - 0.30 * std::sqrt(q) - 0.70 * q));
      return rennels_jet(1.0 - 0.569 * q, lambda);
    }
    case Handbook::miller:
    case Handbook::harris:
      break;
  }
  unknown("rounded inlet", handbook);
}

double inlet_loss(const InletShape& inlet) {
  require_above_zero("inlet bore", inlet.bore);
  switch (inlet.kind) {
    case Inlet::square:
      return square_inlet();
    case Inlet::projecting:
      return projecting_inlet({.bore = inlet.bore, .wall = inlet.wall, .projection = inlet.projection});
    case Inlet::rounded:
      return rounded_inlet({.bore = inlet.bore, .radius = inlet.radius});
  }
  throw std::logic_error("an inlet of no kind");
}

double sudden_expansion(const Step& step) { return square(1.0 - square(bore_ratio(step.small, step.large))); }

double sudden_contraction(const Step& step, Handbook handbook) {
  const double beta = bore_ratio(step.small, step.large), closed = 1.0 - square(beta);
  switch (handbook) {
    case Handbook::idelchik:
      return 0.5 * std::pow(closed, 0.75);
    case Handbook::crane:
      return 0.5 * closed;
    case Handbook::rennels: {
      const double beta5 = std::pow(beta, 5);
      return rennels_jet(1.0 - beta5, 1.0 + 0.622 * (1.0 - 0.215 * square(beta) - 0.785 * beta5));
    }
    case Handbook::miller:
    case Handbook::harris:
      break;
  }
  unknown("sudden contraction", handbook);
}

namespace {
struct CheckedCone {
  double beta;
  double half_sine;
  double wall_friction;  // along the cone, on the narrow end's head
};
CheckedCone checked(const Cone& cone) {
  require_above_zero("angle of a cone", cone.angle);
  require_within("angle of a cone", cone.angle, {0.0, pi});
  require_not_negative("friction factor", cone.friction);
  const double beta = bore_ratio(cone.small, cone.large), half_sine = std::sin(0.5 * cone.angle);
  return {beta, half_sine, cone.friction * (1.0 - std::pow(beta, 4)) / (8.0 * half_sine)};
}
}  // namespace

double conical_contraction(const Cone& cone) {
  const auto [beta, half_sine, wall_friction] = checked(cone);
  const double beta5 = std::pow(beta, 5);
  const double lambda = 1.0 + 0.622 * std::pow(cone.angle / pi, 0.8) * (1.0 - 0.215 * square(beta) - 0.785 * beta5);
  return wall_friction + rennels_jet(half_sine * (1.0 - beta5), lambda);
}

double conical_expansion(const Cone& cone) {
  const auto [beta, half_sine, wall_friction] = checked(cone);
  const double degrees = in_degrees(cone.angle), beta4 = std::pow(beta, 4), borda = square(1.0 - square(beta));
  const bool wide = beta < 0.5;  // more than four times the area
  if (degrees <= 20.0) return 8.30 * std::pow(std::tan(0.5 * cone.angle), 1.75) * borda + wall_friction;
  if (degrees <= 60.0) {
    const double stall = 1.366 * std::sqrt(std::sin(2.0 * (cone.angle - pi / 12.0))) - 0.170;
    const double extra = wide ? 3.28 * (0.0625 - beta4) * std::sqrt((degrees - 20.0) / 40.0) : 0.0;
    return (stall - extra) * borda + wall_friction;
  }
  const double opening = std::sqrt((degrees - 60.0) / 120.0);
  if (wide) return (1.205 - 3.28 * (0.0625 - beta4) - 12.8 * std::pow(beta, 6) * opening) * borda;
  return (1.205 - 0.20 * opening) * borda;
}

double mitre_bend(const MitreBend& bend, Handbook handbook) {
  check_turn(bend.angle);
  const double half_sine = std::sin(0.5 * bend.angle);
  switch (handbook) {
    case Handbook::rennels:
      return 0.42 * half_sine + 2.56 * half_sine * half_sine * half_sine;
    case Handbook::crane:
      require_within("angle of Crane's mitre", bend.angle, {0.0, 0.5000001 * pi});
      return crane_friction(bend.bore) * points_at(data::loss_points("mitre bend, crane"), in_degrees(bend.angle));
    case Handbook::miller: {
      require_within("angle of Miller's mitre", bend.angle, {pi / 18.0, 2.0000001 / 3.0 * pi});
      require_above_zero("Reynolds number of a bend", bend.reynolds);
      const double k = polynomial_at(data::loss_polynomial("mitre bend, miller"), in_degrees(bend.angle));
      const data::Polynomial& at_low = data::loss_polynomial("bend at low reynolds number, miller");
      const double low = std::max(1.0, polynomial_at(at_low, std::log10(bend.reynolds)));
      return k * k / std::max(k - 0.2 * low + 0.2, k / 2.2);  // at most 2.2 times
    }
    case Handbook::idelchik:
    case Handbook::harris:
      break;
  }
  unknown("mitre bend", handbook);
}

double smooth_bend(const SmoothBend& bend, Handbook handbook) {
  check_turn(bend.angle);
  require_above_zero("bend bore", bend.bore);
  require_above_zero("bend radius", bend.radius);
  const double radius = bend.radius / bend.bore;
  switch (handbook) {
    case Handbook::rennels: {
      require_above_zero("friction factor", bend.friction);
      const double half_sine = std::sin(0.5 * bend.angle), f = bend.friction;
      return f * bend.angle * radius + (0.10 + 2.4 * f) * half_sine +
             6.6 * f * (std::sqrt(half_sine) + half_sine) / std::pow(radius, 4.0 * bend.angle / pi);
    }
    case Handbook::crane: {
      require_within("radius of Crane's bend over its bore", radius, {1.0, 20.0});
      const double f = crane_friction(bend.bore);
      const double right_angle = f * points_at(data::loss_points("smooth bend, crane"), radius);
      const double further = bend.angle / (0.5 * pi) - 1.0;  // right angles beyond the first
      return right_angle + further * (0.25 * pi * f * radius + 0.5 * right_angle);
    }
    case Handbook::idelchik:
    case Handbook::miller:
    case Handbook::harris:
      break;
  }
  unknown("smooth bend", handbook);
}
}  // namespace lumwright
