#include "power/constant_power.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <cmath>

namespace lumwright::power {
namespace {
using VoltageSquared = quantity<detail::times<si::electric_potential, si::electric_potential>>;

void check(Resistance r, Power p) {
  require_not_negative("pack resistance", r, "ohm");
  require_above_zero("load", p, "W");
}
/// sqrt(E^2 - 4 R P).
Voltage discriminant(const PowerDraw& draw) {
  const VoltageSquared square = draw.emf * draw.emf, left = square - 4.0 * (draw.resistance * draw.power);
  if (std::abs(in(left, square)) < 1e-13) return Voltage();  // the collapse itself, but for rounding
  if (!(left > VoltageSquared()))
    throw ModelError("load " + format(draw.power, "W") + " is more than the pack can give: " +
                     format(most_power(draw.emf, draw.resistance), "W", 4) + " at " + format(draw.emf, "V") + " open");
  return square_root(left);
}
}  // namespace

Current current(const PowerDraw& draw) {
  check(draw.resistance, draw.power);
  require_above_zero("open-circuit voltage", draw.emf, "V");
  return 2.0 * draw.power / (draw.emf + discriminant(draw));  // this form does not cancel and holds for R = 0
}
Voltage terminal_voltage(const PowerDraw& draw) { return draw.emf - current(draw) * draw.resistance; }

Power most_power(Voltage emf, Resistance resistance) {
  require_above_zero("open-circuit voltage", emf, "V");
  require_above_zero("pack resistance", resistance, "ohm");
  return emf * emf / (4.0 * resistance);
}
Voltage collapse_voltage(Resistance resistance, Power power) {
  check(resistance, power);
  const VoltageSquared square = resistance * power;
  return square_root(square);
}

Duration time_to_draw(const StraightPiece& piece, Resistance resistance, Power power) {
  check(resistance, power);
  require_above_zero("open-circuit voltage", piece.to, "V");
  require_not_negative("charge drawn", piece.charge, "Ah");
  const Voltage fall = piece.from - piece.to;
  require_not_negative("fall of open-circuit voltage", fall, "V");
  // On a nearly level piece the difference below cancels; the value at its middle is then exact to (fall/E)^2.
  if (fall < 1e-6 * piece.from)
    return piece.charge / current({.emf = piece.to + 0.5 * fall, .resistance = resistance, .power = power});
  const auto integral = [&](Voltage e) -> VoltageSquared {  // of E + sqrt(E^2 - 4RP) over E
    const Voltage s = discriminant({.emf = e, .resistance = resistance, .power = power});
    return 0.5 * e * e + 0.5 * e * s - 2.0 * (resistance * power) * std::log(in(e + s, V));
  };
  return piece.charge / fall * (integral(piece.from) - integral(piece.to)) / (2.0 * power);
}
}  // namespace lumwright::power
