// The boiler at one instant: how much of the fire's heat reaches the water, and what leaves by the chimney.
#pragma once
#include "boiler/firebox.hpp"
#include "boiler/stores.hpp"
#include "boiler/tube_heat.hpp"
#include "draught/temperature_source.hpp"
#include "fire/fire.hpp"
#include "quantity/quantity.hpp"
#include <array>
#include <cstddef>
#include <optional>

namespace lumwright::boiler {
struct Boiler {
  Mass water;
  HeatCapacity metal;
  Firebox firebox;
  HeatingTubes tubes;
  OutsideLoss outside;
  double heat_factor;  // heat that reaches the water over what this model says: 1, or from a timed lighting-up
};
/// Throws ModelError for a mass, heat capacity or factor out of range.
void check(const Boiler& boiler);

struct BoilerHeat {
  FireboxBalance firebox;
  TubeBalance tubes;
  Power absorbed;  // by water and metal: heat_factor (firebox + tubes), but no more than `most`
  Power most;      // that the gas could give: it leaves no colder than the water
  Power stack;   // with the gas, counted from the air's temperature: the fire's heat less `absorbed` with a factor of 1
  Power astray;  // what a heat factor other than 1 takes away or adds
  Power outside;  // lost to the room
};
/// Where the gas stood in an instant near by; it saves steps and changes nothing else.
struct ZoneGuess {
  Temperature firebox;
  double tube_exit;  // between water (0) and firebox (1)
};
/// What the gas gives up on its way, first in the firebox, then in the tubes.
struct Zones {
  FireboxBalance firebox;
  TubeBalance tubes;
};
Zones zones(const Boiler& boiler, const fire::Burning& burning, Temperature water, std::optional<ZoneGuess> guess = {});
BoilerHeat boiler_heat(const Boiler& boiler, const fire::Fire& fire, const fire::Burning& burning, const Zones& zones,
                       Temperature water);
/// The heat factor with which the water would take all that the gas can give; nothing while the gas gives none.
std::optional<double> most_heat_factor(const BoilerHeat& heat);

/// Where the fire and the water stand.
struct Condition {
  double lit;           // share of the bed
  Power wanted_by_bed;  // to warm it up
  Temperature water;
};

/// A fire under a boiler as the gas path sees them: every temperature follows from the flow of air at once. Keeps
/// references, and remembers the last flows that it was asked about: one to a thread.
class FiredBoiler final : public draught::TemperatureSource {
 public:
  FiredBoiler(const fire::Fire& fire, const Boiler& boiler, Condition condition, std::optional<ZoneGuess> guess = {})
      : fire_(fire), boiler_(boiler), condition_(condition), guess_(guess) {}
  Temperature bed_mean(MassFlow bed_air) const override;
  double fuel_in_bed() const override { return fire_.gas_in_bed(condition_.lit); }
  draught::GasTemperatures after_bed(MassFlow bed_air, MassFlow past_bed) const override;

  const fire::Burning& burning(MassFlow bed_air, MassFlow past_bed) const { return at(bed_air, past_bed).burning; }
  BoilerHeat heat(MassFlow bed_air, MassFlow past_bed) const;
  /// For the next instant; nothing before the first flow.
  const std::optional<ZoneGuess>& guess() const { return guess_; }

 private:
  struct Fired {
    MassFlow bed_air, past_bed;
    fire::Burning burning;
    Zones zones;
  };
  const Fired& at(MassFlow bed_air, MassFlow past_bed) const;

  const fire::Fire& fire_;
  const Boiler& boiler_;
  Condition condition_;
  mutable std::optional<ZoneGuess> guess_;
  mutable std::array<std::optional<Fired>, 2> known_{};
  mutable std::size_t next_ = 0;  // of those that are known, to be overwritten
};
}  // namespace lumwright::boiler
