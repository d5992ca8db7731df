#include "draught/path_flow.hpp"

namespace lumwright {
namespace {
constexpr std::array<std::string_view, element_count> element_names = {
    "air_entry",        "grate",    "bed",       "firebox",   "tubes", "smokebox", "blast_pipe", "adapter_inlet",
    "adapter_friction", "fittings", "box_entry", "box_to_fan"};
}  // namespace

std::string_view name(Element element) { return element_names.at(static_cast<std::size_t>(element)); }

std::vector<NodeBalance> mass_balance(const PathFlow& f) {
  return {{.node = "firebox", .residual = f.bed + f.past_bed + f.fuel - f.tubes},
          {.node = "smokebox", .residual = f.tubes + f.smokebox_leak + f.annulus - f.chimney},
          {.node = "box", .residual = f.chimney + f.bleed - f.fan_volume * f.fan_density}};
}

}  // namespace lumwright
