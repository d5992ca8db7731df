#include "boiler/boiler.hpp"
#include "quantity/require.hpp"
#include <algorithm>

namespace lumwright::boiler {
namespace {
struct Zones {
  FireboxBalance firebox;
  TubeBalance tubes;
};
Zones zones(const Boiler& boiler, const fire::Burning& b, Temperature water) {
  const FireboxBalance firebox =
      firebox_balance(boiler.firebox, {.flow = b.gas, .enthalpy = b.enthalpy, .mixture = b.mixture}, water);
  return {firebox, tube_balance(boiler.tubes, {.flow = b.gas, .inlet = firebox.gas, .mixture = b.mixture}, water)};
}
}  // namespace

void check(const Boiler& boiler) {
  require_above_zero("water in the boiler", boiler.water);
  require_not_negative("heat capacity of the boiler's metal", in(boiler.metal, J / K));
  require_above_zero("factor on the heat that reaches the water", boiler.heat_factor);
}

BoilerHeat boiler_heat(const Boiler& boiler, const fire::Fire& fire, const fire::Burning& b, Temperature water) {
  const Zones z = zones(boiler, b, water);
  const Power taken = z.firebox.heat + z.tubes.heat;
  const SpecificEnergy cold = fire.cold_enthalpy(b.mixture);
  const Power stack = b.gas * (b.mixture.enthalpy(z.tubes.exit) - cold) + b.blown_out * (b.enthalpy - cold);
  const Power spare = b.gas * (b.mixture.enthalpy(z.tubes.exit) - b.mixture.enthalpy(water));
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

draught::GasTemperatures FiredBoiler::after_bed(MassFlow bed_air, MassFlow past_bed) const {
  const fire::Burning b = fire_.burn(condition_.lit, condition_.wanted_by_bed, bed_air, past_bed);
  const Zones z = zones(boiler_, b, condition_.water);
  return {.bed_mean = fire_.bed_gas(condition_.lit),
          .firebox = z.firebox.gas,
          .tube_mean = z.tubes.mean,
          .tube_exit = z.tubes.exit,
          .fuel_per_air = fire_.gas_per_air(condition_.lit)};
}
}  // namespace lumwright::boiler
