#include "boiler/stores.hpp"
#include "data/lagging.hpp"
#include "matter/convection.hpp"
#include "matter/water.hpp"
#include "numeric/curve.hpp"
#include "quantity/errors.hpp"
#include "quantity/require.hpp"
#include <boost/math/interpolators/cardinal_cubic_b_spline.hpp>
#include <cmath>
#include <vector>

namespace lumwright::boiler {
namespace {
constexpr double first = 273.16, last = 573.16, step = 2.0;  // K
constexpr double beyond = 40.0;                              // K: keeps the spline's free end away from what is used

const auto& energy_spline() {
  static const auto spline = [] {
    std::vector<double> u;
    for (int i = 0; first + i * step <= last + beyond; ++i)
      u.push_back(in(matter::saturation(kelvin(first + i * step)).water_energy, J_per_kg));
    return boost::math::interpolators::cardinal_cubic_b_spline<double>(u.begin(), u.end(), first, step);
  }();
  return spline;
}
Power plates_lose(const Plates& plates, TemperatureRise rise) {
  require_not_negative("outside of the boiler", plates.surface);
  if (rise == 0.0 * K) return 0.0 * W;
  const HeatTransfer bare = plates.bare * std::pow(std::abs(in(rise, plates.at)), plates.power);
  const HeatTransfer through = plates.lagging ? bare / (1.0 + in(bare, *plates.lagging)) : bare;
  return through * plates.surface * rise;
}
double checked(Temperature t) {
  require_within("water temperature", t, {first, last});
  return in(above_absolute_zero(t), K);
}
}  // namespace

HeatCapacity heat_capacity(std::span<const MetalMass> metals) {
  HeatCapacity sum = 0.0 * J / K;
  for (const MetalMass& part : metals) {
    require_not_negative("mass of metal", part.mass);
    if (part.metal == nullptr || !part.metal->specific_heat)
      throw ModelError("no specific heat is known of " + (part.metal ? part.metal->name : std::string("a metal")));
    sum += part.mass * *part.metal->specific_heat;
  }
  return sum;
}

SpecificEnergy water_energy(Temperature t) { return energy_spline()(checked(t)) * J_per_kg; }
SpecificHeat water_capacity(Temperature t) { return energy_spline().prime(checked(t)) * J_per_kg_K; }
SpecificEnergy heat_to(Temperature cold, Temperature hot) { return water_energy(hot) - water_energy(cold); }

std::optional<HeatTransfer> lagging_lets_through(Length thickness) {
  require_not_negative("thickness of the lagging", thickness);
  if (!(thickness > 0.0 * mm)) return std::nullopt;
  const HeatTransfer bare = data::bare_loss().coefficient;
  std::vector<double> x{0.0}, hinders{0.0};
  for (const data::LaggingRow& row : data::laggings()) {
    x.push_back(in(row.thickness, mm));
    hinders.push_back(in(bare, row.coefficient) - 1.0);
  }
  return bare / numeric::LinearCurve(x, hinders)(in(thickness, mm));
}

Plates plates_that_lose(Area surface, HeatTransfer coefficient) {
  require_above_zero("outside of the boiler", surface);
  require_above_zero("heat loss of the boiler's outside", coefficient);
  const data::BareLoss& row = data::bare_loss();
  Plates plates{.surface = surface, .bare = row.coefficient, .at = row.at, .power = row.power, .lagging = {}};
  if (coefficient < row.coefficient)
    plates.lagging = coefficient / (1.0 - in(coefficient, row.coefficient));
  else
    plates.bare = coefficient;
  return plates;
}

HeatTransfer barrel_coefficient(const Barrel& barrel, Temperature surface, Temperature room) {
  return matter::free_convection_cylinder(barrel.diameter, surface, room) +
         matter::radiation_coefficient(barrel.emissivity, surface, room);
}

Power outside_loss(const OutsideLoss& loss, Temperature water, Temperature room) {
  if (const auto* conductance = std::get_if<ThermalConductance>(&loss)) {
    require_not_negative("heat loss of the boiler", *conductance);
    return *conductance * (water - room);
  }
  if (const auto* plates = std::get_if<Plates>(&loss)) return plates_lose(*plates, water - room);
  const Barrel& barrel = std::get<Barrel>(loss);
  require_not_negative("outside of the boiler", barrel.surface);
  require_within("share of a bare barrel's loss", barrel.bare_share, {0.0, 1.0});
  return barrel.bare_share * barrel_coefficient(barrel, water, room) * barrel.surface * (water - room);
}
}  // namespace lumwright::boiler
