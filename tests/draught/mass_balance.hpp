// What comes into each place of the gas path less what goes out of it: nothing, where a solution is one.
#pragma once
#include "draught/path_flow.hpp"
#include <string_view>
#include <vector>

namespace lumwright {
struct NodeBalance {
  std::string_view node;
  MassFlow residual;
};
inline std::vector<NodeBalance> mass_balance(const draught::PathFlow& f) {
  return {{.node = "firebox", .residual = f.bed + f.past_bed + f.fuel - f.tubes},
          {.node = "smokebox", .residual = f.tubes + f.smokebox_leak + f.annulus - f.chimney},
          {.node = "box", .residual = f.chimney + f.bleed - f.fan_volume * f.fan_density}};
}
}  // namespace lumwright
