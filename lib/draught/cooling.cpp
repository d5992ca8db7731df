#include "draught/cooling.hpp"
#include "draught/friction.hpp"
#include "matter/air.hpp"
#include "matter/convection.hpp"
#include "quantity/errors.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>
#include <numbers>

namespace lumwright::draught {
namespace {
double transfer_units(const GasCooling& cooling) {
  require_above_zero("gas flow", cooling.flow);
  require_above_zero("heat capacity of the gas", cooling.heat_capacity);
  require_not_negative("conductance to the room", cooling.conductance);
  require_above_zero("temperature of the gas", cooling.inlet);
  require_above_zero("temperature of the room", cooling.ambient);
  return cooling.conductance / (cooling.flow * cooling.heat_capacity);
}

/// A guess of the wall, and the mean of gas and room weighted by both sides' W/K at that guess.
struct WallTry {
  double wall, mean;  // K
  WallBalance balance;
};

/// The wall takes the temperature at which as much heat leaves as comes. `inside` and `outside` give W/K at a wall
/// temperature; both change slowly with it, so that secants on the weighted mean need four or five steps. A fence of
/// gas and room, drawn in by the sign of what is missing, holds them; to 1e-10 of the temperature.
template <class Inside, class Outside>
WallBalance balance(Temperature gas, Temperature ambient, double first, Inside inside, Outside outside) {
  const double g = in(above_absolute_zero(gas), K), a = in(above_absolute_zero(ambient), K);
  const auto guess = [&](double t) -> WallTry {
    const ThermalConductance in_ = inside(kelvin(t)), out = outside(kelvin(t));
    return {t, a + in(in_, in_ + out) * (g - a), {.conductance = in_ * out / (in_ + out), .wall = kelvin(t)}};
  };
  if (gas == ambient) return guess(g).balance;
  double cold = std::min(g, a), hot = std::max(g, a);
  const double close = 1e-10 * hot;
  WallTry before = guess(a + first * (g - a));
  if (std::abs(before.mean - before.wall) <= close) return before.balance;
  WallTry here = guess(before.mean);
  for (int i = 0; i < 100; ++i) {
    const double gap = here.mean - here.wall, gap_before = before.mean - before.wall;
    if (std::abs(gap) <= close) return here.balance;
    (gap > 0.0 ? cold : hot) = here.wall;
    const double next = here.wall - gap * (here.wall - before.wall) / (gap - gap_before);
    before = here;
    here = guess(next > cold && next < hot ? next : 0.5 * (cold + hot));
  }
  throw ModelError("the wall between gas and room finds no temperature");
}
}  // namespace

Pressure natural_draught(const GasColumn& column) {
  require_finite("height of the gas column", column.height);
  require_above_zero("density of the air beside it", column.ambient);
  require_above_zero("density of the gas in it", column.gas);
  return standard_gravity * column.height * (column.ambient - column.gas);
}

Temperature mixing_temperature(std::span<const Stream> streams) {
  ThermalConductance capacity = 0.0 * W_per_K;
  Power heat = 0.0 * W;  // above absolute zero, each stream with its own constant cp
  for (const Stream& s : streams) {
    require_not_negative("flow of a stream", s.flow);
    require_above_zero("heat capacity of a stream", s.heat_capacity);
    require_above_zero("temperature of a stream", s.temperature);
    capacity += s.flow * s.heat_capacity;
    heat += s.flow * s.heat_capacity * above_absolute_zero(s.temperature);
  }
  require_above_zero("heat capacity of all streams together", capacity);
  return kelvin(in(heat / capacity, K));
}

double bleed_ratio(const BleedDuty& duty) {
  require_above_zero("temperature of the gas", duty.gas);
  require_above_zero("temperature of the bleed air", duty.bleed);
  require_above_zero("temperature to hold", duty.hold);
  require_above_zero("temperature to hold above the bleed air", duty.hold - duty.bleed);
  if (duty.gas <= duty.hold) return 0.0;
  return (duty.gas - duty.hold) / (duty.hold - duty.bleed);
}

Temperature cooled_along_tube(const GasCooling& cooling) {
  return cooling.ambient + std::exp(-transfer_units(cooling)) * (cooling.inlet - cooling.ambient);
}

Temperature cooled_well_mixed(const GasCooling& cooling) {
  return cooling.ambient + (cooling.inlet - cooling.ambient) / (1.0 + transfer_units(cooling));
}

WallBalance tube_conductance(const TubeWall& tube, MassFlow flow, Temperature gas, Temperature ambient, double guess) {
  require_above_zero("tube length", tube.length);
  require_not_negative("wall of the tube", tube.outside - tube.bore);
  const double nusselt = matter::tube_nusselt({.reynolds = reynolds_tube(flow, tube.bore, matter::air_viscosity(gas)),
                                               .prandtl = matter::prandtl(gas),
                                               .bore_over_length = tube.bore / tube.length});
  const HeatTransfer inside = nusselt * matter::air_conductivity(gas) / tube.bore;
  const Area wet = std::numbers::pi * tube.bore * tube.length, bare = std::numbers::pi * tube.outside * tube.length;
  return balance(
      gas, ambient, guess, [&](Temperature) { return inside * wet; },
      [&](Temperature wall) {
        return (matter::free_convection_cylinder(tube.outside, wall, ambient) +
                matter::radiation_coefficient(tube.emissivity, wall, ambient)) *
               bare;
      });
}

WallBalance box_conductance(const BoxWall& box, Temperature gas, Temperature ambient, double guess) {
  require_above_zero("height of the box", box.height);
  require_above_zero("cooled area of the box", box.area);
  require_above_zero("stirring of the gas in the box", box.stirring);
  return balance(
      gas, ambient, guess,
      [&](Temperature wall) { return box.stirring * matter::free_convection_plate(box.height, wall, gas) * box.area; },
      [&](Temperature wall) {
        return (matter::free_convection_plate(box.height, wall, ambient) +
                matter::radiation_coefficient(box.emissivity, wall, ambient)) *
               box.area;
      });
}
}  // namespace lumwright::draught
