#include "boiler/stores.hpp"
#include "matter/convection.hpp"
#include "matter/range.hpp"
#include "matter/water.hpp"
#include "quantity/errors.hpp"
#include <boost/math/interpolators/cardinal_cubic_b_spline.hpp>
#include <vector>

namespace lumwright {
namespace {
constexpr double first = 273.16, last = 573.16, step = 2.0;  // K
constexpr double beyond = 40.0;                              // K: keeps the spline's free end away from what is used

const auto& energy_spline() {
  static const auto spline = [] {
    std::vector<double> u;
    for (int i = 0; first + i * step <= last + beyond; ++i)
      u.push_back(in(saturation(kelvin(first + i * step)).water_energy, J_per_kg));
    return boost::math::interpolators::cardinal_cubic_b_spline<double>(u.begin(), u.end(), first, step);
  }();
  return spline;
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

HeatTransfer barrel_coefficient(const Barrel& barrel, Temperature surface, Temperature room) {
  return free_convection_cylinder(barrel.diameter, surface, room) +
         radiation_coefficient(barrel.emissivity, surface, room);
}

Power outside_loss(const OutsideLoss& loss, Temperature water, Temperature room) {
  if (const auto* conductance = std::get_if<ThermalConductance>(&loss)) {
    require_not_negative("heat loss of the boiler", *conductance);
    return *conductance * (water - room);
  }
  const Barrel& barrel = std::get<Barrel>(loss);
  require_not_negative("outside of the boiler", barrel.surface);
  require_within("share of a bare barrel's loss", barrel.bare_share, {0.0, 1.0});
  return barrel.bare_share * barrel_coefficient(barrel, water, room) * barrel.surface * (water - room);
}
}  // namespace lumwright
