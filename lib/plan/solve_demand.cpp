#include "data/fuels.hpp"
#include "matter/metal.hpp"
#include "matter/water.hpp"
#include "plan/solved.hpp"

namespace lumwright {
// Heat that water and metal take up to own-blower pressure, over the heat that a kilogram of air sets free and brings
// in. A plain balance with usual shares, to judge a fan by before the fire itself is followed through time.
Outcome<SolvedDemand> solve_demand(const Build& build, Inputs& inputs) {
  return attempt<SolvedDemand>([&](std::vector<std::string>& missing) -> std::optional<SolvedDemand> {
    const part::Boiler& boiler = build.engine.boiler;
    const auto water = needed(inputs, "engine.boiler.water", boiler.water, missing);
    const auto own_blower = needed(inputs, "engine.boiler.own_blower_from", boiler.own_blower_from, missing);
    if (!missing.empty()) return std::nullopt;
    const Temperature air = inputs.usual("place.air", build.place.air);
    const Pressure barometer = inputs.usual("place.barometer", build.place.barometer);
    const Temperature take_over = saturation_temperature(own_blower->above_barometer + barometer);
    const Saturation warm = saturation(take_over), cool = saturation(std::max(air, degC(1)));
    const Mass charge = *water * cool.water_density;
    const auto heat = [&](const char* key, const Given<Mass>& mass, const char* name) {
      return inputs.known(key, mass).value_or(0.0 * g) * *metal(name).specific_heat * (take_over - air);
    };
    const Energy absorbed = charge * (warm.water_energy - cool.water_energy) +
                            heat("engine.boiler.metal.copper", boiler.metal.copper, "copper") +
                            heat("engine.boiler.metal.brass", boiler.metal.brass, "brass") +
                            heat("engine.boiler.metal.steel", boiler.metal.steel, "steel");
    const Duration within = inputs.usual("want.steam_within", build.want.steam_within);
    const Duration kindling = inputs.usual("fuel.kindling", build.fuel.kindling);
    const double lit = inputs.usual("fuel.lit_at_start", build.fuel.lit_at_start);
    const Duration at_full_fire = within - 0.5 * (1.0 - lit) * kindling;
    if (at_full_fire <= 0.0 * s) throw ModelError("kindling alone takes longer than the wanted time to steam");
    const double used = (1.0 - inputs.usual("engine.leakage.past_bed", build.engine.leakage.past_bed)) *
                        inputs.constant<double>("raise.efficiency");
    const SpecificEnergy per_air = inputs.constant<SpecificEnergy>("raise.heat_per_air");
    return SolvedDemand{absorbed, take_over, absorbed / (at_full_fire * used * per_air), within};
  });
}
}  // namespace lumwright
