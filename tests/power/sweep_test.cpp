// A thousand packs and loads, always the same: results or refusals, never a number that is none; and no gain from worse
// parts.
#include "near.hpp"
#include "published_packs.hpp"
#include <chrono>
#include <cmath>
#include <doctest/doctest.h>
#include <random>
using namespace lumwright;
using namespace lumwright::power;

namespace {
class Dice {
 public:
  double between(double low, double high) { return low + (high - low) * static_cast<double>(engine_()) / 4294967295.0; }
  int whole(int low, int high) { return low + static_cast<int>(engine_() % static_cast<unsigned>(high - low + 1)); }

 private:
  std::mt19937 engine_{20240229};  // its sequence is fixed by the C++ standard, those of the distributions are not
};

struct Scene {
  PackInput pack;
  Load load;
  std::optional<Voltage> stop_at;
};
Load any_load(Dice& dice) {
  if (dice.whole(0, 3) == 0) return dice.between(0.05, 30.0) * W;
  FanSupply supply = fan_supply(dice.whole(0, 1) == 0 ? 12.0 * V : 5.0 * V, dice.between(0.03, 0.6) * A);
  supply.fan.current_exponent = dice.between(1.0, 2.2);
  supply.control = {.kind = static_cast<Control::Kind>(dice.whole(0, 3)),
                    .duty = dice.between(0.02, 1.0),
                    .voltage = dice.between(2.0, 12.0) * V};
  if (dice.whole(0, 2) > 0) {
    const data::StepUpRow& row = data::step_ups().at(static_cast<std::size_t>(dice.whole(0, 3)));
    supply.step_up = step_up_of(row, dice.between(5.0, 24.0) * V, real_minimum(row, {}));
    if (dice.whole(0, 3) == 0) supply.step_up->efficiency = dice.between(0.5, 1.0);
    if (dice.whole(0, 3) == 0)
      supply.step_up->efficiency =
          std::vector<EfficiencyPoint>{{dice.between(2.0, 4.0) * V, 1.0 * W, dice.between(0.5, 0.9)},
                                       {dice.between(5.0, 9.0) * V, 2.0 * W, dice.between(0.6, 0.95)}};
  }
  return supply;
}
Scene any_scene(Dice& dice) {
  const auto& cells = data::cells();
  const data::CellRow& cell = cells.at(static_cast<std::size_t>(dice.whole(0, static_cast<int>(cells.size()) - 1)));
  PackInput pack = plain_pack(cell, cell.bank ? 1 : dice.whole(1, 10), dice.between(0.3, 1.5) * cell.capacity.value);
  pack.parallel = dice.whole(1, 3);
  pack.capacity_factor = dice.between(0.3, 1.0);
  pack.resistance_factor = dice.between(1.0, 5.0);
  pack.charged = dice.between(0.1, 1.0);
  pack.rate_exponent = dice.whole(0, 1) == 0 ? 1.0 : dice.between(1.0, 1.4);
  pack.temperature = degC(dice.between(-20.0, 40.0));
  pack.contacts = dice.between(0.0, 0.3) * ohm;
  pack.outside = dice.between(0.0, 0.3) * ohm;
  if (pack.series > 1 && dice.whole(0, 1) == 0) pack.weakest = dice.between(0.3, 1.0);
  if (dice.whole(0, 9) == 0) pack.measured = 0.0 * ohm;
  const Load load = any_load(dice);
  std::optional<Voltage> stop;
  if (dice.whole(0, 2) > 0) stop = dice.between(0.5, 1.3) * pack.series * cell.cells_inside * cell.chemistry.end;
  return {.pack = pack, .load = load, .stop_at = stop};
}
/// Only for such a load is the law true: a fan on the pack itself, or behind a step-up that passes through, takes less
/// through more resistance and may run longer; so may a step-up whose table makes it better at lower input.
bool takes_less_at_more_voltage(const Load& load, const Run& run) {
  const auto* supply = std::get_if<FanSupply>(&load);
  if (supply == nullptr) return true;
  if (!supply->step_up || std::holds_alternative<std::vector<EfficiencyPoint>>(supply->step_up->efficiency))
    return false;
  const bool lowered = supply->control.kind == Control::Kind::lower_output;
  return run.series.front().open_circuit < (lowered ? supply->control.voltage : supply->step_up->output);
}
bool sound(const Sample& s) {
  return is_finite(s.time) && is_finite(s.voltage) && is_finite(s.current) && is_finite(s.open_circuit) &&
         std::isfinite(s.charge_share) && s.voltage > 0.0 * V && s.voltage <= s.open_circuit * (1.0 + 1e-9) &&
         s.current > 0.0 * A && s.charge_share >= 0.0 && s.charge_share <= 1.0;
}
}  // namespace

TEST_CASE("a thousand packs and loads give numbers or refusals") {
  Dice dice;
  int ran = 0, refused = 0, collapsed = 0, reversed = 0;
  for (int i = 0; i < 1000; ++i) {
    CAPTURE(i);
    const Scene scene = any_scene(dice);
    try {
      const Pack pack = make_pack(scene.pack);
      const Run run = discharge(pack, scene.load, scene.stop_at);
      ++ran;
      CHECK(is_finite(run.runtime));
      CHECK(run.runtime >= 0.0 * s);
      CHECK(run.starts == (run.runtime > 0.0 * s));
      bool all = true;
      for (std::size_t k = 0; k < run.series.size(); ++k) {
        all = all && sound(run.series[k]);
        if (k > 0) all = all && run.series[k].time >= run.series[k - 1].time;
      }
      CHECK(all);
      // energy: no more leaves the terminals than stood in the cells
      CHECK(run.charge_left_share <= scene.pack.charged * (1.0 + 1e-12));
      if (run.reason == StopReason::collapse) ++collapsed;
      if (run.weak && run.weak->reversed_from) ++reversed;
      if (run.starts && run.reason == StopReason::stop_at) CHECK(run.end.voltage == near(*scene.stop_at, 1e-6));
    } catch (const ModelError&) {
      ++refused;
    }
  }
  // the sweep must reach every corner, else it proves nothing
  CHECK(ran > 500);
  CHECK(refused > 20);
  CHECK(collapsed > 20);
  CHECK(reversed > 5);
}

TEST_CASE("more resistance never runs longer, more capacity never shorter") {
  Dice dice;
  int compared = 0, thinned = 0;
  for (int i = 0; i < 400; ++i) {
    CAPTURE(i);
    const Scene scene = any_scene(dice);
    try {
      const Run run = discharge(make_pack(scene.pack), scene.load, scene.stop_at);
      Scene thin = scene;
      thin.pack.outside += dice.between(0.0, 0.5) * ohm;
      if (takes_less_at_more_voltage(scene.load, run)) {
        CHECK(discharge(make_pack(thin.pack), scene.load, scene.stop_at).runtime <= run.runtime * (1.0 + 1e-7));
        ++thinned;
      }
      Scene big = scene;
      big.pack.capacity *= dice.between(1.0, 2.0);
      if (!scene.pack.cell.resistance_goes_with_size)
        CHECK(discharge(make_pack(big.pack), scene.load, scene.stop_at).runtime >= run.runtime * (1.0 - 1e-7));
      ++compared;
    } catch (const ModelError&) {
    }
  }
  CHECK(compared > 150);
  CHECK(thinned > 80);
}

TEST_CASE("a discharge takes well under a millisecond") {
  PackInput input = plain_pack(data::cell("NiMH AA"), 5, 1.9 * Ah);
  input.rate_exponent = 1.016;
  const Pack pack = make_pack(input);
  const Load load = stepped_up("small 1.2 MHz", 12.0 * V, 0.16 * A);
  const auto start = std::chrono::steady_clock::now();
  for (int i = 0; i < 20; ++i) CHECK(discharge(pack, load, 5.0 * V).starts);
  const std::chrono::duration<double, std::milli> each = (std::chrono::steady_clock::now() - start) / 20;
  MESSAGE("one discharge through a step-up: " << each.count() << " ms");
  CHECK(each.count() < 5.0);  // under 0.1 ms here; generous for a loaded machine
}
