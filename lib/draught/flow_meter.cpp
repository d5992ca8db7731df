#include "draught/flow_meter.hpp"
#include "matter/range.hpp"
#include <algorithm>

namespace lumwright {
namespace {
double checked_beta(const OrificeMeter& meter) {
  require_above_zero("pipe bore", meter.pipe);
  require_above_zero("orifice diameter", meter.hole);
  const double beta = meter.hole / meter.pipe;
  require_within("orifice over pipe diameter", beta, {0.1, 0.75});
  return beta;
}
void check(const MeteredGas& gas) {
  require_above_zero("upstream pressure", gas.upstream);
  require_not_negative("pressure drop over the meter", gas.drop);
  require_above_zero("gas density", gas.density);
  require_above_zero("gas viscosity", gas.viscosity);
  require_above_zero("isentropic exponent", gas.isentropic_exponent);
}

/// Distances of the taps from the plate, over the pipe's bore.
struct TapPlaces {
  double upstream;    // L1
  double downstream;  // L2'
};
TapPlaces places(const OrificeMeter& meter) {
  switch (meter.taps) {
    case Taps::corner:
      return {0.0, 0.0};
    case Taps::flange:
      return {inch / meter.pipe, inch / meter.pipe};
    case Taps::d_and_half:
      return {1.0, 0.47};
  }
  throw std::logic_error("taps of no kind");
}
}  // namespace

double velocity_of_approach(const OrificeMeter& meter) {
  return 1.0 / std::sqrt(1.0 - std::pow(checked_beta(meter), 4));
}

double orifice_expansibility(const OrificeMeter& meter, const MeteredGas& gas) {
  check(gas);
  const double ratio = 1.0 - gas.drop / gas.upstream;
  require_within("downstream over upstream pressure", ratio, {0.75, 1.0});
  const double b4 = std::pow(checked_beta(meter), 4);
  return 1.0 - (0.351 + 0.256 * b4 + 0.93 * b4 * b4) * (1.0 - std::pow(ratio, 1.0 / gas.isentropic_exponent));
}

// The two maxima, for Re below 3700 and in the small-Re slope, are its authors' (Reader-Harris, Orifice Plates and
// Venturi Tubes, 2015); the standard starts at Re 5000, above both.
double reader_harris_gallagher(const OrificeMeter& meter, double pipe_reynolds) {
  const double beta = checked_beta(meter), b2 = beta * beta, b4 = b2 * b2, b35 = b2 * beta * std::sqrt(beta);
  require_above_zero("Reynolds number of the pipe", pipe_reynolds);
  const auto [l1, l2] = places(meter);
  const double re = pipe_reynolds, a = std::pow(19000.0 * beta / re, 0.8), m2 = 2.0 * l2 / (1.0 - beta);
  const double slope = std::max(std::pow(1e6 / re, 0.3), 22.7 - 0.0047 * re);
  const double corner = 0.5961 + 0.0261 * b2 - 0.216 * b4 * b4 + 0.000521 * std::pow(1e6 * beta / re, 0.7) +
                        (0.0188 + 0.0063 * a) * b35 * slope;
  const double upstream =
      (0.043 + 0.080 * std::exp(-10.0 * l1) - 0.123 * std::exp(-7.0 * l1)) * (1.0 - 0.11 * a) * b4 / (1.0 - b4);
  const double low = std::max(0.0, std::log10(3700.0 / re));
  const double downstream = -0.031 * (m2 - 0.8 * std::pow(m2, 1.1)) * std::pow(beta, 1.3) * (1.0 + 8.0 * low);
  constexpr Length small_pipe = 2.8 * inch;
  const double small = meter.pipe < small_pipe ? 0.011 * (0.75 - beta) * (2.8 - meter.pipe / inch) : 0.0;
  return corner + upstream + downstream + small;
}

MassFlow orifice_meter_flow(const OrificeMeter& meter, const MeteredGas& gas) {
  const double expansibility = orifice_expansibility(meter, gas);
  if (gas.drop == 0.0 * Pa) return 0.0 * kg_per_s;
  const MassFlow ideal =
      velocity_of_approach(meter) * expansibility * circle(meter.hole) * root<2>(2.0 * gas.density * gas.drop);
  MassFlow flow = 0.6 * ideal;
  // Cd depends on Re by powers above -0.8, so each step shrinks the error.
  for (int step = 0; step < 300; ++step) {
    const double re = flow * meter.pipe / (circle(meter.pipe) * gas.viscosity);
    const MassFlow next = reader_harris_gallagher(meter, re) * ideal;
    require_above_zero("flow through the meter", next);
    const double change = std::abs(next / flow - 1.0);
    flow = next;
    if (change < 1e-14) return flow;
  }
  throw ModelError("the orifice meter's flow does not settle: its Reynolds number is far below the standard's 5000");
}

double orifice_meter_loss(const OrificeMeter& meter, double cd) {
  require_above_zero("discharge coefficient", cd);
  require_within("discharge coefficient", cd, {0.0, 1.0});
  const double b2 = checked_beta(meter) * checked_beta(meter);
  const double root = std::sqrt(1.0 - b2 * b2 * (1.0 - cd * cd)) / (cd * b2) - 1.0;
  return root * root;
}

double nozzle_coefficient(NozzleThroat throat, double reynolds) {
  require_within("Reynolds number of the nozzle", reynolds, {12000.0, 1e7});
  const bool longer = throat == NozzleThroat::point_six;
  return 0.9986 - (longer ? 7.006 : 6.688) / std::sqrt(reynolds) + (longer ? 134.6 : 131.5) / reynolds;
}
}  // namespace lumwright
