// The seam between the gas path and the fire: how hot the gas is in each part, for a given flow of air.
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright::draught {
struct Ambient {
  Temperature temperature;
  Pressure pressure;
};

struct GasTemperatures {
  Temperature bed_mean;
  Temperature firebox;  // all the gas that enters the tubes
  Temperature tube_mean;
  Temperature tube_exit;  // before any leak joins it
  double fuel_per_air;    // mass of fuel that has become gas, over the bed's air
};
/// A fire and a boiler, as the gas path sees them. Answers for any flow from zero to far more than a fan can move.
class TemperatureSource {
 public:
  virtual ~TemperatureSource() = default;
  virtual Temperature bed_mean(MassFlow bed_air) const = 0;
  /// Fuel that has become gas within the bed, over the bed's air, as the mean over the depth.
  virtual double fuel_in_bed() const { return 0.0; }
  /// The rest, once it is known how much air got past the bed (below zero: gas puffs out of the fire-door).
  virtual GasTemperatures after_bed(MassFlow bed_air, MassFlow past_bed) const = 0;
};
/// The same temperatures at any flow.
class FixedTemperatures final : public TemperatureSource {
 public:
  explicit FixedTemperatures(GasTemperatures t) : t_(t) {}
  Temperature bed_mean(MassFlow) const override { return t_.bed_mean; }
  GasTemperatures after_bed(MassFlow, MassFlow) const override { return t_; }

 private:
  GasTemperatures t_;
};
/// No fire: everything at the temperature of the room.
inline FixedTemperatures unlit(const Ambient& ambient) {
  const Temperature t = ambient.temperature;
  return FixedTemperatures({.bed_mean = t, .firebox = t, .tube_mean = t, .tube_exit = t, .fuel_per_air = 0.0});
}

}  // namespace lumwright::draught
