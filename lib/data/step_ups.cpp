#include "data/step_ups.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include <algorithm>

namespace lumwright::data {
const std::vector<StepUpRow>& step_ups() {
  static const std::vector<StepUpRow> table = [] {
    std::vector<StepUpRow> out;
    for (const Row& row : rows("step_ups", "modules"))
      out.push_back({.id = row.text("id"),
                     .switch_resistance = row.quantity<Resistance>("switch_resistance"),
                     .coil_resistance = row.quantity<Resistance>("coil_resistance"),
                     .diode_drop = row.quantity<Voltage>("diode_drop"),
                     .second_switch = row.optional<Resistance>("second_switch"),
                     .switching_time = row.quantity<Duration>("switching_time"),
                     .frequency = row.quantity<Rotation>("frequency"),
                     .quiescent = row.quantity<Current>("quiescent"),
                     .coil = row.quantity<Inductance>("coil"),
                     .switch_limit = row.quantity<Current>("switch_limit"),
                     .input_limit = row.optional<Current>("input_limit"),
                     .real_minimum = row.quantity<Voltage>("real_minimum"),
                     .runs_away = row.yes("runs_away"),
                     .input_most = row.quantity<Voltage>("input_most"),
                     .output_most = row.quantity<Voltage>("output_most"),
                     .hot_spot_per_loss = row.quantity<ThermalResistance>("hot_spot_per_loss"),
                     .hot_spot_limit = row.quantity<Temperature>("hot_spot_limit"),
                     .basis = row.basis()});
    return out;
  }();
  return table;
}

const StepUpRow& step_up(std::string_view id) {
  const auto found = std::find_if(step_ups().begin(), step_ups().end(), [&](const auto& row) { return row.id == id; });
  if (found == step_ups().end()) throw ModelError("no step-up is called `" + std::string(id) + "`");
  return *found;
}

const UnknownStepUp& unknown_step_up() {
  static const UnknownStepUp row = [] {
    const Row unknown = section("step_ups", "unknown");
    return UnknownStepUp{.diode_drop = unknown.quantity<Voltage>("diode_drop"),
                         .basis = unknown.basis()};
  }();
  return row;
}
}  // namespace lumwright::data
