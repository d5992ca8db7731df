#include "power/detail/load_regimes.hpp"
#include "power/detail/efficiency_points.hpp"
#include "power/output_draw.hpp"
#include "quantity/require.hpp"
#include <algorithm>

namespace lumwright::power {
namespace {
using Law = std::function<Current(Voltage)>;

/// The lowest voltage at which `answers` is still true, with it false at 0 and true at `high`; to one part in 2^50.
Voltage lowest_answer(const std::function<bool(Voltage)>& answers, Voltage high) {
  Voltage low = Voltage();
  for (int halving = 0; halving < 50; ++halving) {
    const Voltage middle = 0.5 * (low + high);
    (answers(middle) ? high : low) = middle;
  }
  return high;
}

std::vector<LoadRegime> direct(const FanSupply& supply, Voltage highest) {
  const Law law = [supply](Voltage v) { return output_draw(supply, v).current; };
  const Voltage nothing = 1e-6 * highest;
  switch (supply.control.kind) {
    case Control::Kind::series_regulator: {
      const Voltage lowest = supply.regulator_dropout + nothing;
      const Voltage holds = std::max(lowest, supply.control.voltage + supply.regulator_dropout);
      if (!(holds < highest)) return {{.from = lowest, .to = highest, .current = law, .power = {}}};
      return {{.from = holds, .to = highest, .current = law, .power = {}},
              {.from = lowest, .to = holds, .current = law, .power = {}}};
    }
    case Control::Kind::chopped_supply: {
      const Voltage stalls = supply.motor.idle * supply.motor.winding / supply.control.duty * supply.fan.rated_voltage;
      return {{.from = stalls + nothing, .to = highest, .current = law, .power = {}}};
    }
    default:
      return {{.from = nothing, .to = highest, .current = law, .power = {}}};
  }
}

/// Where the step-up boosts, with its output set and so its output current known.
LoadRegime boosting(const StepUp& step_up, Current output, Voltage highest) {
  const Power out = step_up.output * output;
  LoadRegime regime{.from = 1e-6 * highest, .to = highest, .current = {}, .power = {}};
  if (const auto* share = std::get_if<double>(&step_up.efficiency)) {
    require_share("step-up efficiency", *share);
    const Power in_power = out / *share;
    regime.power = in_power;
    regime.current = [in_power](Voltage v) -> Current { return in_power / v; };
  } else if (const auto* losses = std::get_if<StepUpLosses>(&step_up.efficiency)) {
    const StepUpLosses parts = *losses;
    const Voltage set = step_up.output;
    const auto input = [=](Voltage v) { return input_current(parts, set, {.input = v, .output = output}); };
    regime.from = lowest_answer([&](Voltage v) { return input(v).has_value(); }, highest);
    regime.current = [=](Voltage v) { return input(v).value(); };
  } else {
    const EfficiencyAtInput at(std::get<std::vector<EfficiencyPoint>>(step_up.efficiency), out);
    regime.current = [at, out](Voltage v) -> Current { return out / (at(v) * v); };
  }
  return regime;
}

std::vector<LoadRegime> through(const FanSupply& supply, const StepUp& step_up, Voltage highest) {
  const Current output = output_draw(supply, step_up.output).current;
  const Voltage knee = step_up.output + step_up.passing_drop;
  std::vector<LoadRegime> out;
  if (highest > knee) {
    const Law law = [supply, step_up](Voltage v) {
      const Current passed = output_draw(supply, v - step_up.passing_drop).current;
      return passed_through(step_up, {.input = v, .output = passed}).input;
    };
    out.push_back({.from = knee, .to = highest, .current = law, .power = {}});
  }
  const Voltage top = std::min(highest, knee);
  if (!boosted(step_up, {.input = top, .output = output})) return out;  // not even with a pack of no resistance
  out.push_back(boosting(step_up, output, top));
  return out;
}
}  // namespace

std::vector<LoadRegime> regimes(const Load& load, Voltage highest) {
  require_above_zero("open-circuit voltage", highest, "V");
  if (const auto* power = std::get_if<Power>(&load)) {
    require_above_zero("load", *power, "W");
    const Power p = *power;
    return {
        {.from = 1e-6 * highest, .to = highest, .current = [p](Voltage v) -> Current { return p / v; }, .power = p}};
  }
  const auto& supply = std::get<FanSupply>(load);
  check(supply);
  const std::optional<StepUp> step_up = step_up_in_use(supply);
  if (!step_up) return direct(supply, highest);
  require_above_zero("step-up output", step_up->output, "V");
  require_not_negative("diode drop", step_up->passing_drop, "V");
  return through(supply, *step_up, highest);
}
}  // namespace lumwright::power
