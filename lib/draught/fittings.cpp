#include "draught/fittings.hpp"
#include "draught/detail/fittings_charts.hpp"
#include "draught/friction.hpp"
#include "quantity/require.hpp"
#include <numbers>
#include <string>

namespace lumwright::draught {
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
}  // namespace lumwright::draught
