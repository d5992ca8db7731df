// What comes of following the gas: flows, temperatures, suctions and losses, from the ash-pan to the fan.
#pragma once
#include "quantity/quantity.hpp"
#include <array>
#include <string_view>
#include <vector>

namespace lumwright::draught {
enum class Element {
  air_entry,
  grate,
  bed,
  firebox,
  tubes,
  smokebox,
  blast_pipe,
  adapter_inlet,
  adapter_friction,
  fittings,
  box_entry,
  box_to_fan,
  fan_guard
};
inline constexpr std::size_t element_count = 13;
std::string_view name(Element element);  // "air_entry"

/// Flows, temperatures and suctions at one air flow. Suctions are below the room's air at the same height.
struct PathFlow {
  MassFlow bed;       // air through grate and bed
  MassFlow past_bed;  // below zero if the firebox blows out
  MassFlow engine;    // bed and past_bed
  MassFlow fuel;      // that joined the gas
  MassFlow tubes;
  MassFlow smokebox_leak;
  MassFlow annulus;
  MassFlow chimney;  // through the adapter
  MassFlow bleed;
  MassFlow fan;
  VolumeFlow fan_volume;  // at its inlet

  Temperature bed_gas, firebox_gas, tube_gas, tube_exit_gas;
  Temperature smokebox_gas;  // with leaks, as it enters the adapter
  Temperature adapter_exit_gas;
  Temperature fan_gas;
  Density fan_density;

  Pressure ash_pan_suction, firebox_suction, smokebox_suction, box_suction;
  Pressure fan_suction;                      // in front of the fan: what its static pressure must hold
  std::array<Pressure, element_count> loss;  // by Element; of total pressure, natural draught not taken off
  Pressure natural_draught;                  // sum of all rises
};

/// Guards a solution: every loss finite, every gas warmer than absolute zero and of some density, every absolute
/// pressure above zero. Throws UnsoundNumber that names the element; ModelError where the path would ask for more
/// suction than there is air pressure.
void check_sound(const PathFlow& flow, Pressure barometer);
}  // namespace lumwright::draught
