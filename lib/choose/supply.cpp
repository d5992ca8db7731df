#include "choose/detail/parts.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "power/discharge.hpp"
#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace lumwright::choose {
namespace {
const plan::Check* check_named(std::string_view id) {
  for (const plan::Check& check : plan::all_checks())
    if (check.id == id) return &check;
  throw std::logic_error("no check is called " + std::string(id));
}

struct Breaker {
  const plan::Check* check;
  Loss loss;
};
// Checks of the supply that no want can outweigh: something burns, or nothing turns.
const std::vector<Breaker>& supply_breakers() {
  static const std::vector<Breaker> all = {{check_named("power.step_up_minimum"), Loss::step_up_runs_away},
                                           {check_named("power.step_up_input"), Loss::step_up_overloaded},
                                           {check_named("power.step_up_heat"), Loss::step_up_overloaded},
                                           {check_named("power.fuse"), Loss::fuse_blows},
                                           {check_named("power.start"), Loss::pack_too_weak},
                                           {check_named("power.cells"), Loss::pack_too_weak},
                                           {check_named("power.weak_cell"), Loss::cell_reversed},
                                           {check_named("power.bank"), Loss::pack_too_weak},
                                           {check_named("power.step_up_output"), Loss::step_up_overloaded}};
  return all;
}

Voltage emf_of(const power::Pack& pack) { return pack.curve.at(pack.drawn); }

// The step-up's output does not follow the pack as long as the pack, less the diode, stays below it; and a loaded pack
// is never above its open-circuit voltage, which falls as it empties.
bool holds(const model::SolvedSupply& s, Voltage output) {
  return s.feed.step_up && emf_of(s.pack) - s.feed.step_up->passing_drop <= output;
}

/// Time at which the run has drawn down to `charge_share`; straight between the samples, which lie at the bends of the
/// cells' curve.
Duration time_at(const power::Run& run, double charge_share) {
  for (std::size_t i = 1; i < run.series.size(); ++i) {
    const power::Sample &a = run.series[i - 1], &b = run.series[i];
    if (b.charge_share > charge_share) continue;
    const double fall = a.charge_share - b.charge_share;
    return fall > 0.0 ? a.time + (a.charge_share - charge_share) / fall * (b.time - a.time) : b.time;
  }
  return run.runtime;
}

// Turned down, a charge lasts longer; counted to where the full output would have ended it, since every light-up begins
// with that.
void lower(SupplyFact& fact, const model::SolvedSupply& s, Voltage to) {
  if (!s.feed.step_up || s.feed.control.kind != power::Control::Kind::none || !holds(s, to) ||
      to >= s.feed.step_up->output) {
    fact.loss = Loss::cannot_be_lowered;
    return;
  }
  power::FanSupply feed = s.feed;
  feed.control = {.kind = power::Control::Kind::lower_output, .duty = 1.0, .voltage = to};
  const power::Run run = power::discharge(s.pack, feed, s.stop_at);
  if (!run.starts) {
    fact.loss = Loss::cannot_be_lowered;
    return;
  }
  fact.lowered = to;
  fact.runtime_lowered = time_at(run, s.run.charge_left_share);
}

// No voltage at the fan is ever above this: neither pack nor step-up gives more when less is drawn.
Voltage most_at_fan(const model::SolvedSupply& s) {
  const Voltage emf = emf_of(s.pack);
  switch (s.feed.control.kind) {
    case power::Control::Kind::series_regulator:
      return s.feed.control.voltage;
    case power::Control::Kind::lower_output:
      return std::max(s.feed.control.voltage, emf);
    default:
      return s.feed.step_up ? std::max(s.feed.step_up->output, emf) : emf;
  }
}

Loss judge_supply(const model::Solved& solved) {
  const model::SolvedSupply& s = *solved.supply;
  static const plan::Check* const voltage = check_named("fan.voltage");
  if (plan::fails(*voltage, solved))
    return s.start.fan_voltage > solved.fan->motor->highest ? Loss::too_much_voltage : Loss::fan_stands;
  for (const Breaker& breaker : supply_breakers())
    if (plan::fails(*breaker.check, solved)) return breaker.loss;
  return Loss::none;
}
}  // namespace

SupplyFact supply_fact(const Stall& stall, const Stock& stock, std::size_t unit) {
  const description::Build build = with_unit(stall, stock, unit);
  model::Solved solved{.build = build, .inputs = quiet(stock.tuning)};
  solved.fan = model::solve_fan(build, solved.inputs);
  solved.supply = model::solve_supply(build, solved.inputs, solved.fan);
  SupplyFact fact;
  if (!solved.fan || !solved.supply) {
    const bool unknown = !solved.fan.missing.empty() || !solved.supply.missing.empty();
    fact.loss = unknown ? Loss::lacking : Loss::pack_too_weak;
    return fact;
  }
  const model::SolvedSupply& s = *solved.supply;
  const auto kind = s.feed.control.kind;
  const bool lowers = kind == power::Control::Kind::lower_output, chops = kind == power::Control::Kind::chopped_supply;
  fact.fan_voltage = s.start.fan_voltage;
  fact.most = most_at_fan(s);
  fact.runtime = s.run.runtime;
  fact.held = !chops && s.feed.step_up && holds(s, lowers ? s.feed.control.voltage : s.feed.step_up->output);
  fact.loss = judge_supply(solved);
  const Unit& u = stock.units[unit];
  if (fact.loss == Loss::none && u.lowered) lower(fact, s, *stock.bin.step_ups[u.step_up].lower_to);
  if (fact.loss == Loss::none && u.lowered)
    if (draught::fan_motion(*solved.fan->motor, fact.lowered) == draught::FanMotion::stopped)
      fact.loss = Loss::fan_stands;
  return fact;
}

bool DriveKey::operator<(const DriveKey& o) const {
  const auto unit_of = [&](const DriveKey& k) { return k.held < 0.0 * V ? k.unit : 0; };
  const std::size_t mine = unit_of(*this), theirs = unit_of(o);
  return std::tie(fan, pairing, held, lowered, mine) < std::tie(o.fan, o.pairing, o.held, o.lowered, theirs);
}

// A light-up takes its share of the charge: the time at full output over what the charge lasts at that, and likewise
// once turned down (as Palmgren and Miner count wear; exact where both currents keep their ratio as the pack sinks).
int most_light_ups(const SupplyFact& supply, Duration least) {
  const Duration longest = std::max(supply.runtime, supply.runtime_lowered);
  const double most = std::floor(in(longest, least) * (1.0 + 1e-9));
  return most < 1e9 ? static_cast<int>(most) : std::numeric_limits<int>::max();
}

Tried candidate_of(const Yard& yard, const Stock& stock, const Task& task, std::size_t unit) {
  if (task.loss != Loss::none) return {task.loss, std::nullopt};
  const SupplyFact& supply = yard.supplies[unit];
  const Unit& u = stock.units[unit];
  const Duration full = u.lowered ? task.turned_down : task.to_steam;
  const double lowered_share = u.lowered ? in(task.to_steam - full, supply.runtime_lowered) : 0.0;
  const double share = in(full, supply.runtime) + lowered_share;
  const double whole = std::floor((1.0 + 1e-12) / share);
  if (!(whole >= 1.0)) return {Loss::pack_stops_first, std::nullopt};
  const int count = whole < 1e9 ? static_cast<int>(whole) : std::numeric_limits<int>::max();
  return {Loss::none, Candidate{.at = {yard.stall.index, u.fan, u.pack, u.step_up, task.tube, u.pairing, u.lowered},
                                .fan = u.fan_name,
                                .pack = u.pack_name,
                                .step_up = u.step_up_name,
                                .tube = yard.stall.tube_names[task.tube],
                                .to_steam = task.to_steam,
                                .runtime = u.lowered ? task.to_steam / share : supply.runtime,
                                .light_ups = count,
                                .mass = u.mass,
                                .in_time = task.to_steam <= yard.stall.within,
                                .enough = count >= yard.stall.wanted,
                                .time_spread = stock.time_spread[Stock::index(u.fan, u.pairing)]}};
}
}  // namespace lumwright::choose
