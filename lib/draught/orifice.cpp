#include "draught/orifice.hpp"
#include "data/losses.hpp"
#include "quantity/require.hpp"
#include <string>

namespace lumwright::draught {
namespace {
void check(double cd, Density density) {
  require_above_zero("discharge coefficient", cd);
  require_within("discharge coefficient", cd, {0.0, 1.0});
  require_above_zero("gas density", density);
}
}  // namespace

MassFlow orifice_flow(double cd, Area area, Density density, Pressure drop) {
  check(cd, density);
  require_not_negative("area of a hole", area);
  require_not_negative("pressure drop over a hole", drop);
  return cd * area * square_root(2.0 * density * drop);
}

Pressure orifice_drop(double cd, Area area, Density density, MassFlow flow) {
  check(cd, density);
  require_above_zero("area of a hole", area);
  require_not_negative("mass flow", flow);
  const MassFlux flux = flow / (cd * area);
  const Pressure drop = 0.5 * flux * flux / density;
  require_finite("pressure drop over a hole", drop);
  return drop;
}

Length orifice_diameter(double cd, Density density, Pressure drop, MassFlow flow) {
  check(cd, density);
  require_above_zero("pressure drop over a hole", drop);
  require_above_zero("mass flow", flow);
  const MassFlux flux = cd * square_root(2.0 * density * drop);
  const Area of_unit_circle = circle(1.0 * m);
  const Area needed = flow / flux;
  return std::sqrt(needed / of_unit_circle) * m;
}

Band<double> discharge_coefficient(std::string_view kind) {
  for (const data::Discharge& row : data::discharges())
    if (row.id == kind) return row.value;
  throw ModelError("no discharge coefficient is known for '" + std::string(kind) + "'");
}
}  // namespace lumwright::draught
