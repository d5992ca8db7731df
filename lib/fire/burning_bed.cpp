#include "fire/burning_bed.hpp"
#include "matter/air.hpp"
#include "matter/range.hpp"
#include <cmath>

namespace lumwright {
namespace {
void check(const BurnDepth& depth) {
  require_above_zero("bed depth", depth.bed);
  require_above_zero("depth in which the bed uses up the oxygen", depth.burn);
}
/// Gas in the bed: air as it enters, flue gas 4 to 5 % denser as it leaves.
Density bed_gas_density(Temperature t) { return 1.02 * air_density(t, atmosphere); }
/// Binary diffusion of oxygen in air at one atmosphere, a usual fit: 1.78e-5 m2/s at 0 degC, power 1.75 (Fuller's
/// exponent).
double oxygen_diffusivity(double t) { return 1.78e-5 * std::pow(t / 273.15, 1.75); }
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

Length oxygen_film_length(const BedFilm& film) {
  require_above_zero("lump size", film.lump);
  require_above_zero("bed voidage", film.voidage);
  require_above_zero("solid share of the bed", 1.0 - film.voidage);
  require_above_zero("gas flux through the bed", film.flux);
  const Density rho = bed_gas_density(film.temperature);
  const Viscosity mu = air_viscosity(film.temperature);
  const double d_o2 = oxygen_diffusivity(in(above_absolute_zero(film.temperature), K));  // m2/s
  const double re = film.flux * film.lump / mu;
  const double sc = in(mu / rho, m2 / s) / d_o2;
  const double sherwood = 2.0 + 1.1 * std::cbrt(sc) * std::pow(re, 0.6);
  const double speed = in(film.flux / rho, m_per_s), d = in(film.lump, m);
  return speed / (sherwood * d_o2 / d * 6.0 * (1.0 - film.voidage) / d) * m;
}

MassFlux lifting_flux(const LooseLump& lump, Temperature gas) {
  require_above_zero("lump size", lump.diameter);
  const Density rho = bed_gas_density(gas);
  const Viscosity mu = air_viscosity(gas);
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

Length bed_depth(Mass fuel, Area grate, Density bulk) {
  require_not_negative("fuel on the grate", fuel);
  require_above_zero("grate area", grate);
  require_above_zero("bulk density of the fuel", bulk);
  return fuel / (grate * bulk);
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
}  // namespace lumwright
