// The operating point: the flow at which the fan holds just the suction that the gas path asks for.
#pragma once
#include "draught/fan.hpp"
#include "draught/gas_path.hpp"
#include "draught/temperature_source.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <vector>

namespace lumwright::draught {
/// One flow at which fan and path balance.
struct Crossing {
  MassFlow bed;
  VolumeFlow fan_volume;
  Pressure static_pressure;
  bool stable;  // a little more flow costs more suction than the fan gains
};
/// Where an axial fan works on its curve (data::fan_stall). Centrifugal fans are always clear.
enum class StallZone { clear, unsteady, stalled };

struct Duty {
  PathFlow flow;             // at the operating point: the rightmost stable crossing
  Pressure static_pressure;  // that the fan gives, at its gas and speed
  double free_air_share;     // fan's flow over its flow in free air at this speed
  StallZone stall;
  std::vector<Crossing> crossings;  // all, in rising order of flow
  bool several;                     // more than one: the fan may settle at either stable one
};

/// Fan against path. The search runs from no flow, where the fan must hold the path, to a flow at which it proved
/// unable to; every change of sign between is polished to rounding (algorithm TOMS 748). Crossings of a rising part of
/// the curve closer together than a fiftieth of the free-air flow may be missed in pairs. Throws ModelError if the fan
/// cannot even begin (hot gas in a duct that leads down, a fan without pressure), if no flow gets through, or as the
/// parts of the path do.
Duty solve_duty(const GasNetwork& network, const TemperatureSource& source, const RunningFan& fan);

/// The path at a measured flow of air through the engine (through the bed and past it), with no fan: what suctions
/// belong to it. Flow above zero, and such that the suction stays below the pressure of the air, else ModelError.
PathFlow at_engine_flow(const GasNetwork& network, const TemperatureSource& source, MassFlow engine);

/// The path by the draught of its own heat, the fan standing still and its blades in nobody's way; no further than the
/// flow `most` through the bed. Nothing where the gas does not rise. Throws ModelError as the parts do.
std::optional<PathFlow> without_fan(const GasNetwork& network, const TemperatureSource& source, MassFlow most);
}  // namespace lumwright::draught
