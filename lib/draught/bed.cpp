// Notation: d particle * sphericity, e voidage, rem = rho v d / (mu (1 - e)). Every law here is
//   drop / depth = F(rem) mu v (1 - e)^2 / (d^2 e^3)
// and only F differs.
#include "draught/bed.hpp"
#include "numeric/root.hpp"
#include "quantity/require.hpp"

namespace lumwright::draught {
namespace {
struct Shape {
  Length particle;
  double sphericity;
  double voidage;
  Length depth;
};
Length effective_size(const Shape& s) {
  require_above_zero("lump size", s.particle);
  require_above_zero("sphericity", s.sphericity);
  require_within("sphericity", s.sphericity, {0.0, 1.0});
  require_above_zero("bed voidage", s.voidage);
  require_above_zero("solid share of the bed", 1.0 - s.voidage);
  require_above_zero("bed depth", s.depth);
  return s.particle * s.sphericity;
}

template <class F>
Pressure packed(const BedFlow& bed, F factor) {
  const Length d = effective_size({bed.particle, bed.sphericity, bed.voidage, bed.depth});
  require_not_negative("velocity through the bed", bed.superficial);
  require_above_zero("gas density", bed.density);
  require_above_zero("gas viscosity", bed.viscosity);
  const double e = bed.voidage, solid = 1.0 - e;
  const double rem = bed.density * bed.superficial * d / (bed.viscosity * solid);
  const Pressure drop =
      factor(rem) * solid * solid / (e * e * e) * (bed.viscosity * bed.superficial * bed.depth / (d * d));
  require_finite("pressure drop of the bed", drop);
  return drop;
}

constexpr double ergun_viscous = 150.0, ergun_inertial = 1.75;

void check_gas(Density density, Viscosity viscosity) {
  require_above_zero("gas density", density);
  require_above_zero("gas viscosity", viscosity);
}

/// Drag coefficient of a sphere, creeping flow to Re 2e5: Barati, Neyshabouri and Ahmadi, Powder Technology 257 (2014)
/// 11-19.
double sphere_drag(double re) {
  return 5.4856e9 * std::tanh(4.3774e-9 / re) + 0.0709 * std::tanh(700.6574 / re) + 0.3894 * std::tanh(74.1539 / re) -
         0.1198 * std::tanh(7429.0843 / re) + 1.7174 * std::tanh(9.9851 / (re + 2.3384)) + 0.4744;
}
}  // namespace

Pressure ergun(const BedFlow& bed) {
  return packed(bed, [](double rem) { return ergun_viscous + ergun_inertial * rem; });
}

BedFlow through(const Bed& bed, MassFlow flow, Density density, Viscosity viscosity) {
  require_not_negative("mass flow", flow);
  require_above_zero("grate area", bed.grate);
  require_above_zero("gas density", density);
  return {.particle = bed.particle,
          .sphericity = bed.sphericity,
          .voidage = bed.voidage,
          .depth = bed.depth,
          .superficial = flow / (density * bed.grate),
          .density = density,
          .viscosity = viscosity};
}

Pressure bed_drop(const Bed& bed, MassFlow flow, Density density, Viscosity viscosity) {
  require_above_zero("factor on the resistance of the bed", bed.resistance);
  return bed.resistance * ergun(through(bed, flow, density, viscosity));
}

Pressure bed_lifting_pressure(const Bed& bed, Density piece) {
  effective_size({bed.particle, bed.sphericity, bed.voidage, bed.depth});
  require_above_zero("density of a lump", piece);
  return (1.0 - bed.voidage) * piece * standard_gravity * bed.depth;
}

Velocity terminal_velocity(const LoosePiece& piece, Density gas, Viscosity viscosity) {
  check_gas(gas, viscosity);
  require_above_zero("size of a piece", piece.diameter);
  require_above_zero("weight of a piece in the gas", piece.density - gas);
  const double weight =
      4.0 / 3.0 * in(standard_gravity * piece.diameter * (piece.density - gas) / gas, m_per_s * m_per_s);
  const double re_per_speed = in(gas * piece.diameter / viscosity, 1.0 / m_per_s);
  const double fastest = weight * re_per_speed / 24.0;  // creeping flow: every real drag is higher
  const auto excess = [&](double v) { return v * v * sphere_drag(re_per_speed * v) - weight; };
  const double v = numeric::bracketed_root(excess, 1e-9 * fastest, 1.01 * fastest, "speed at which a piece hangs");
  require_within("Reynolds number of a piece", re_per_speed * v, {0.0, 2e5});
  return v * m_per_s;
}

double wall_voidage(double across) {
  require_above_zero("box width over lump size", across);
  return 1.0814 / std::pow(across + 0.1226, 2);
}
}  // namespace lumwright::draught
