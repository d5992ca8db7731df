#include "boiler/boiler.hpp"
#include "quantity/require.hpp"
#include <algorithm>

namespace lumwright::boiler {
void check(const Boiler& boiler) {
  require_above_zero("water in the boiler", boiler.water);
  require_not_negative("heat capacity of the boiler's metal", in(boiler.metal, J / K));
  require_above_zero("factor on the heat that reaches the water", boiler.heat_factor);
}

Zones zones(const Boiler& boiler, const fire::Burning& b, Temperature water, std::optional<ZoneGuess> guess) {
  constexpr double usual_exit = 0.3;
  const FireboxBalance firebox =
      firebox_balance(boiler.firebox, {.flow = b.gas, .enthalpy = b.enthalpy, .mixture = b.mixture}, water,
                      guess ? std::optional(guess->firebox) : std::nullopt);
  return {firebox, tube_balance(boiler.tubes, {.flow = b.gas, .inlet = firebox.gas, .mixture = b.mixture}, water,
                                guess ? guess->tube_exit : usual_exit)};
}

BoilerHeat boiler_heat(const Boiler& boiler, const fire::Fire& fire, const fire::Burning& b, const Zones& z,
                       Temperature water) {
  const Power taken = z.firebox.heat + z.tubes.heat;
  const SpecificEnergy cold = fire.cold_enthalpy(b.mixture), leaving = b.mixture.enthalpy(z.tubes.exit);
  const Power stack = b.gas * (leaving - cold) + b.blown_out * (b.enthalpy - cold);
  const Power spare = b.gas * (leaving - b.mixture.enthalpy(water));
  const Power most = taken + std::max(spare, 0.0 * W);
  // a factor moves heat that is there: what it asks for beyond the gas's heat is not taken
  const Power absorbed = taken > 0.0 * W ? std::min(boiler.heat_factor * taken, most) : boiler.heat_factor * taken;
  return {.firebox = z.firebox,
          .tubes = z.tubes,
          .absorbed = absorbed,
          .most = most,
          .stack = stack,
          .astray = taken - absorbed,
          .outside = outside_loss(boiler.outside, water, fire.input().air)};
}

std::optional<double> most_heat_factor(const BoilerHeat& heat) {
  const Power taken = heat.firebox.heat + heat.tubes.heat;
  if (!(taken > 0.0 * W)) return std::nullopt;
  return static_cast<double>(heat.most / taken);
}

Temperature FiredBoiler::bed_mean(MassFlow) const { return fire_.bed_gas(condition_.lit); }

const FiredBoiler::Fired& FiredBoiler::at(MassFlow bed_air, MassFlow past_bed) const {
  for (const std::optional<Fired>& known : known_)
    if (known && known->bed_air == bed_air && known->past_bed == past_bed) return *known;
  const Temperature water = condition_.water;
  const fire::Burning burning = fire_.burn(condition_.lit, condition_.wanted_by_bed, bed_air, past_bed);
  const Zones found = zones(boiler_, burning, water, guess_);
  const TemperatureRise over = found.firebox.gas - water;
  if (over > 0.0 * K || over < 0.0 * K) guess_ = {found.firebox.gas, in(found.tubes.exit - water, over)};
  std::optional<Fired>& place = known_[next_];
  next_ = (next_ + 1) % known_.size();
  return place.emplace(Fired{bed_air, past_bed, burning, found});
}

draught::GasTemperatures FiredBoiler::after_bed(MassFlow bed_air, MassFlow past_bed) const {
  const Fired& fired = at(bed_air, past_bed);
  return {.bed_mean = fire_.bed_gas(condition_.lit),
          .firebox = fired.zones.firebox.gas,
          .tube_mean = fired.zones.tubes.mean,
          .tube_exit = fired.zones.tubes.exit,
          .fuel_per_air = fire_.gas_per_air(condition_.lit)};
}

BoilerHeat FiredBoiler::heat(MassFlow bed_air, MassFlow past_bed) const {
  const Fired& fired = at(bed_air, past_bed);
  return boiler_heat(boiler_, fire_, fired.burning, fired.zones, condition_.water);
}
}  // namespace lumwright::boiler
