// Rules by which candidates of a bin are compared.
#pragma once
#include "quantity/kind.hpp"
#include "quantity/quantity.hpp"
#include <string>

namespace lumwright::data {
struct ChoosingRules {
  double time_over_pressure;  // minutes to steam go with pressure to the power of minus this
  double least_apart;         // times that differ by less are the same
  GaugePressure near_steam;  // where the owner turns the step-up down
  Density fan_block;         // mass of a fan over side by side by depth of its frame, where nobody weighed it
  Mass step_up;              // of a board that nobody weighed
};
const ChoosingRules& choosing_rules();
}  // namespace lumwright::data
