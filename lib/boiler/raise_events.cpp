#include "boiler/detail/raising.hpp"
#include <algorithm>

// What happens within a step, found on the solution between its ends.
namespace lumwright::boiler {
void Raising::add_supply_crossings(const RaiseInstant& end, std::vector<Crossing>& found) {
  if (const auto& battery = solver_.battery()) {
    const double stop = in(battery->stop_charge(), input_.battery->pack.full);
    if (steps_.end()[charge] >= stop) {
      const double t = moment("time at which the pack stops", [&](const State& x) { return x[charge] - stop; });
      found.push_back({t, RaiseEventKind::pack_stops, false});
    }
  }
  if (!input_.fan_gas_limit || too_hot_ || !end.path || !(end.path->fan_gas > *input_.fan_gas_limit)) return;
  const auto excess = [&](const RaiseInstant& at) { return in(at.path->fan_gas - *input_.fan_gas_limit, K); };
  const double t = moment(
      "time at which the fan gets too hot", excess(*before_), excess(end),
      [&](double at) { return excess(instant(at, steps_.at(at))); }, 20);
  found.push_back({t, RaiseEventKind::fan_too_hot, false});
}

void Raising::add_fire_crossings(const RaiseInstant& end, std::vector<Crossing>& found) {
  if (!phase_.fully_lit && steps_.to() >= kindled_) found.push_back({kindled_, RaiseEventKind::fully_lit, false});
  if (!phase_.smouldering) return;
  const auto spare = [&](const RaiseInstant& at) {
    return in(at.burning.chemical - at.burning.carbon_monoxide - input_.fire.kindling_heat(), W);
  };
  if (!(spare(end) > 0.0)) return;
  const double t = moment(
      "time at which the fire has heat to spare", spare(*before_), spare(end),
      [&](double at) { return spare(instant(at, steps_.at(at))); }, 30);
  found.push_back({t, RaiseEventKind::fully_lit, true});
}

std::vector<Raising::Crossing> Raising::crossings(const RaiseInstant& end) {
  std::vector<Crossing> found;
  for (const Goal& goal : goals_) {
    if (goal.passed || water_of(steps_.end()) < goal.water) continue;
    const auto excess = [&](const State& x) { return in(water_of(x) - goal.water, K); };
    found.push_back({moment("time of a water temperature", excess), goal.kind, false});
  }
  if (phase_.venting && steps_.end()[steam] * mass_scale >= input_.purge) {
    const double wanted = in(input_.purge, mass_scale);
    found.push_back({moment("time at which the air is out", [&](const State& x) { return x[steam] - wanted; }),
                     RaiseEventKind::purged, false});
  }
  add_supply_crossings(end, found);
  add_fire_crossings(end, found);
  std::stable_sort(found.begin(), found.end(), [](const Crossing& a, const Crossing& b) { return a.time < b.time; });
  return found;
}

/// Takes note of an event. True if the rates have a corner there, so that the steps must begin anew.
bool Raising::pass(const Crossing& crossing, const RaiseInstant& here) {
  if (crossing.silent) {
    phase_.smouldering = false;
    return true;
  }
  out_.events.push_back({crossing.kind, here, account(steps_.at(crossing.time))});
  for (Goal& goal : goals_)
    if (goal.kind == crossing.kind) goal.passed = true;
  switch (crossing.kind) {
    case RaiseEventKind::fully_lit:
      phase_.fully_lit = true;
      phase_.smouldering = false;
      return true;
    case RaiseEventKind::boils:
      phase_.venting = input_.purge > 0.0 * kg;
      return phase_.venting;
    case RaiseEventKind::purged:
      phase_.venting = false;
      water_left_ -= input_.purge;
      return true;
    case RaiseEventKind::fan_too_hot:
      too_hot_ = true;
      return false;
    case RaiseEventKind::pack_stops:
      out_.end = RaiseEnd::pack_stopped;
      out_.supply_end = solver_.battery()->end();
      done_ = true;
      return true;
    default:
      if (crossing.kind != last_goal_) return false;
      out_.end = RaiseEnd::pressure;
      done_ = true;
      return true;
  }
}
}  // namespace lumwright::boiler
