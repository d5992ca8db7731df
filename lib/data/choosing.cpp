#include "data/choosing.hpp"
#include "data/table.hpp"

namespace lumwright::data {
namespace {
Row rule(std::string_view id) { return row_with_id("choosing", "rules", id); }
}  // namespace

const ChoosingRules& choosing_rules() {
  static const ChoosingRules rules = [] {
    const Row time = rule("time over pressure"), near = rule("gauge near steam");
    return ChoosingRules{.time_over_pressure = time.number("value"),
                         .least_apart = rule("times are the same").number("value"),
                         .near_steam = near.quantity<GaugePressure>("value"),
                         .fan_block = rule("fan mass over its block").quantity<Density>("value"),
                         .step_up = rule("step-up mass").quantity<Mass>("value")};
  }();
  return rules;
}
}  // namespace lumwright::data
