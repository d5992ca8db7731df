#include "fire/burning_bed.hpp"
#include "matter/air.hpp"
#include "quantity/require.hpp"
#include <cmath>

namespace lumwright::fire {
namespace {
void check(const BurnDepth& depth) {
  require_above_zero("bed depth", depth.bed);
  require_above_zero("depth in which the bed uses up the oxygen", depth.burn);
}
/// Gas in the bed: air as it enters, flue gas 4 to 5 % denser as it leaves.
Density bed_gas_density(Temperature t) { return 1.02 * matter::air_density(t, atmosphere); }
}  // namespace

double bed_conversion(const BurnDepth& depth) {
  check(depth);
  return -std::expm1(-(depth.bed / depth.burn));
}

double bed_mean_use(const BurnDepth& depth) {
  const double used = bed_conversion(depth), over_depth = depth.burn / depth.bed;
  return 1.0 - over_depth * used;
}

Temperature bed_gas_mean(const BedGas& bed, double lit) {
  require_within("share of the bed that is lit", lit, {0.0, 1.0});
  return bed.cold + lit * bed_mean_use(bed.depth) * (bed.exit - bed.cold);
}

MassFlux lifting_flux(const LooseLump& lump, Temperature gas) {
  require_above_zero("lump size", lump.diameter);
  const Density rho = bed_gas_density(gas);
  const Viscosity mu = matter::air_viscosity(gas);
  require_above_zero("weight of a lump in the gas", lump.density - rho);
  const Length d = lump.diameter;
  const double archimedes = d * d * d * rho * (lump.density - rho) * standard_gravity / (mu * mu);
  const double re = std::sqrt(33.7 * 33.7 + 0.0408 * archimedes) - 33.7;
  return re * mu / d;
}

Mass bed_mass(Area grate, Length depth, Density bulk) {
  require_above_zero("grate area", grate);
  require_above_zero("bed depth", depth);
  require_above_zero("bulk density of the fuel", bulk);
  return grate * depth * bulk;
}

Duration top_up_interval(Mass bed, MassFlow burning) {
  require_above_zero("mass of the bed", bed);
  require_above_zero("fuel burnt in time", burning);
  return 0.5 * bed / burning;
}

Energy bed_heat(Mass bed, SpecificHeat heat_capacity, TemperatureRise rise) {
  require_not_negative("mass of the bed", bed);
  require_above_zero("heat capacity of the bed", heat_capacity);
  require_above_zero("rise of the bed from cold to glow", rise);
  return bed * heat_capacity * rise;
}
}  // namespace lumwright::fire
