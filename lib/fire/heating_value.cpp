#include "fire/heating_value.hpp"
#include "data/species.hpp"
#include "matter/flue_gas.hpp"
#include "quantity/errors.hpp"
#include "quantity/require.hpp"

namespace lumwright::fire {
namespace {
using Fuel = data::FuelAnalysis;

void check(const Fuel& f) {
  struct Share {
    const char* name;
    double value;
  };
  for (const Share& s : {Share{"moisture of the fuel", f.moisture}, Share{"volatiles of the fuel", f.volatiles},
                         Share{"ash of the fuel", f.ash}, Share{"carbon of the fuel", f.carbon},
                         Share{"hydrogen of the fuel", f.hydrogen}, Share{"oxygen of the fuel", f.oxygen},
                         Share{"nitrogen of the fuel", f.nitrogen}, Share{"sulphur of the fuel", f.sulphur}})
    require_within(s.name, s.value, {0.0, 1.0});
}

SpecificEnergy positive(SpecificEnergy heat) {
  require_above_zero("heating value of the fuel", heat);
  return heat;
}
}  // namespace

double stoichiometric_air(const Fuel& fuel) {
  check(fuel);
  const data::RelativeAtomicMasses& a = data::relative_atomic_masses();
  const double o2 = 2.0 * a.oxygen;
  const double oxygen = o2 / a.carbon * fuel.carbon + o2 / (4.0 * a.hydrogen) * fuel.hydrogen +
                        o2 / a.sulphur * fuel.sulphur - fuel.oxygen;
  const double air = oxygen / matter::oxygen_in_air();
  require_above_zero("air that the fuel needs, over its mass", air);
  return air;
}

SpecificEnergy gross_heat(const Fuel& fuel) {
  check(fuel);
  const double dry = 1.0 - fuel.moisture;
  require_above_zero("dry part of the fuel", dry);
  require_within("carbon of the dry fuel", fuel.carbon / dry, {0.0, 0.9225});
  require_within("hydrogen of the dry fuel", fuel.hydrogen / dry, {0.0043, 0.2515});
  require_within("oxygen of the dry fuel", fuel.oxygen / dry, {0.0, 0.50});
  require_within("nitrogen of the dry fuel", fuel.nitrogen / dry, {0.0, 0.056});
  require_within("sulphur of the dry fuel", fuel.sulphur / dry, {0.0, 0.9408});
  require_within("ash of the dry fuel", fuel.ash / dry, {0.0, 0.714});
  return positive((34.91 * fuel.carbon + 117.83 * fuel.hydrogen + 10.05 * fuel.sulphur - 10.34 * fuel.oxygen -
                   1.51 * fuel.nitrogen - 2.11 * fuel.ash) *
                  MJ_per_kg);
}

SpecificEnergy net_heat(SpecificEnergy gross, const Fuel& fuel) {
  check(fuel);
  constexpr SpecificEnergy condensing = 2.442 * MJ_per_kg;  // water at 25 degC
  const data::RelativeAtomicMasses& a = data::relative_atomic_masses();
  const double water = fuel.moisture + (2.0 * a.hydrogen + a.oxygen) / (2.0 * a.hydrogen) * fuel.hydrogen;
  return positive(gross - water * condensing);
}

SpecificEnergy net_heat(const Fuel& fuel) { return net_heat(gross_heat(fuel), fuel); }
}  // namespace lumwright::fire
