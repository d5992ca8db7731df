#include "draught/path_flow.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/sound.hpp"
#include <algorithm>

namespace lumwright::draught {
namespace {
constexpr std::array<std::string_view, element_count> element_names = {
    "air_entry",        "grate",    "bed",       "firebox",    "tubes",    "smokebox", "blast_pipe", "adapter_inlet",
    "adapter_friction", "fittings", "box_entry", "box_to_fan", "fan_guard"};
}  // namespace

std::string_view name(Element element) { return element_names.at(static_cast<std::size_t>(element)); }

void check_sound(const PathFlow& f, Pressure barometer) {
  for (std::size_t i = 0; i < element_count; ++i)
    sound(f.loss[i], Sound::finite, element_names[i], "pressure loss",
          {{"air through the bed", f.bed}, {"gas in the tubes", f.tubes}, {"gas at the fan", f.fan}});
  const struct {
    std::string_view element;
    Temperature gas;
    MassFlow flow;
  } places[] = {{"bed", f.bed_gas, f.bed},
                {"firebox", f.firebox_gas, f.engine},
                {"tubes", f.tube_gas, f.tubes},
                {"smokebox", f.smokebox_gas, f.chimney},
                {"adapter", f.adapter_exit_gas, f.chimney},
                {"fan", f.fan_gas, f.fan}};
  for (const auto& place : places) {
    sound(place.flow, Sound::finite, place.element, "gas flow", {{"air through the bed", f.bed}});
    sound(place.gas, Sound::positive, place.element, "gas temperature",
          {{"gas flow", place.flow}, {"air through the bed", f.bed}});
  }
  sound(f.fan_density, Sound::positive, "fan", "density of the gas", {{"gas temperature", f.fan_gas}});
  const Pressure most = std::max({f.ash_pan_suction, f.firebox_suction, f.smokebox_suction, f.box_suction,
                                  sound(f.fan_suction, Sound::finite, "fan", "suction", {{"gas flow", f.fan}})});
  if (!(most < barometer))
    throw ModelError("a suction of " + format(most, "mbar") + " is more than the pressure of the air, " +
                     format(barometer, "mbar") + ": no fan draws " + format(f.fan, "g/s") + " through this");
}
}  // namespace lumwright::draught
