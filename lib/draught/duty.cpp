#include "draught/duty.hpp"
#include "matter/air.hpp"
#include "numeric/root.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>

namespace lumwright::draught {
namespace {
struct Probe {
  double bed;     // kg/s
  double gap;     // Pa that the fan has left
  double volume;  // of the fan, over its free-air flow
  bool beyond;    // no greater flow can balance: the path asks for more than the fan gives anywhere
};

class Search {
 public:
  Search(const GasNetwork& network, const TemperatureSource& source, const RunningFan& fan)
      : network_(network), source_(source), fan_(fan) {
    require_above_zero("free-air flow of the fan", fan.free_air);
    require_above_zero("greatest static pressure of the fan", fan.highest);
  }

  PathFlow follow(double bed) const { return network_.follow(bed * kg_per_s, source_, walls_); }
  Pressure fan_pressure(const PathFlow& f) const {
    return static_pressure(fan_, std::max(f.fan_volume, 0.0 * m3_per_s), f.fan_density);
  }
  double gap(double bed) const {
    const PathFlow f = follow(bed);
    return in(fan_pressure(f) - f.fan_suction, Pa);
  }

  std::vector<numeric::Bracket> brackets() const;

 private:
  Probe probe(double bed) const;
  Probe far_end() const;
  void scan(const Probe& low, const Probe& high, int halvings, std::vector<numeric::Bracket>& found) const;

  const GasNetwork& network_;
  const TemperatureSource& source_;
  const RunningFan& fan_;
  mutable WallGuess walls_;
};

Probe Search::probe(double bed) const {
  const PathFlow f = follow(bed);
  const double gap = in(fan_pressure(f) - f.fan_suction, Pa), volume = f.fan_volume / fan_.free_air;
  if (!std::isfinite(gap))
    throw ModelError("the fan's pressure at " + format(f.fan_volume, "l/min") + " is not a number");
  const Pressure most = volume < 1.0 ? fan_.highest * (f.fan_density / matter::standard_fan_air) : 0.0 * Pa;
  return {.bed = bed, .gap = gap, .volume = volume, .beyond = gap < 0.0 && f.fan_suction > most};
}

// A flow that is too much, and not far too much: within a factor of four of the least such flow.
Probe Search::far_end() const {
  Probe end = probe(in(fan_.free_air * network_.ambient_density(), kg_per_s));
  for (int i = 0; !end.beyond; ++i) {
    if (i == 60) throw ModelError("the gas path holds back no flow that this fan can move");
    end = probe(2.0 * end.bed);
  }
  for (Probe less = probe(0.25 * end.bed); less.beyond; less = probe(0.25 * end.bed)) {
    end = less;
    if (end.bed < 1e-30) throw ModelError("no flow: the gas path is shut");
  }
  return end;
}

void Search::scan(const Probe& low, const Probe& high, int halvings, std::vector<numeric::Bracket>& found) const {
  if (halvings > 0 && std::abs(high.volume - low.volume) > 0.02) {
    const Probe middle = probe(0.5 * (low.bed + high.bed));
    scan(low, middle, halvings - 1, found);
    scan(middle, high, halvings - 1, found);
  } else if ((low.gap > 0.0) != (high.gap > 0.0)) {
    found.push_back({.low = low.bed, .high = high.bed});
  }
}

std::vector<numeric::Bracket> Search::brackets() const {
  Probe low = probe(0.0);
  if (!(low.gap > 0.0))
    throw ModelError("no flow: with the gas at rest the fan is " + format(-low.gap * Pa, "Pa") +
                     " short of what the path asks for");
  const Probe end = far_end();
  // Steps that grow with the flow: a bleed hole passes the root of the suction, so the fan's flow climbs fast at first.
  const int steps = fan_.rises ? 24 : 6, halvings = fan_.rises ? 6 : 0;
  std::vector<numeric::Bracket> found;
  for (int i = 1; i <= steps; ++i) {
    const double t = static_cast<double>(i) / steps;
    const Probe high = i == steps ? end : probe(end.bed * t * t);
    scan(low, high, halvings, found);
    low = high;
  }
  return found;
}

// Where nearly all the bed's gas blows out of the fire-door again, what is left for the tubes drowns in rounding.
void check_closed(const Duty& duty, const RunningFan& fan) {
  const Pressure gap = duty.static_pressure - duty.flow.fan_suction;
  const Pressure scale = fan.highest + std::max(duty.flow.natural_draught, -duty.flow.natural_draught);
  if (!(std::abs(gap / scale) < 1e-9))
    throw ModelError("no flow that can be told from rounding: fan and gas path miss each other by " +
                     format(gap, "Pa"));
}

StallZone stall_zone(data::FanKind kind, double share) {
  const data::FanStall* stall = data::fan_stall(kind);
  if (!stall || share > stall->to) return StallZone::clear;
  return share < stall->from ? StallZone::stalled : StallZone::unsteady;
}
}  // namespace

Duty solve_duty(const GasNetwork& network, const TemperatureSource& source, const RunningFan& fan) {
  const Search search(network, source, fan);
  Duty duty{.flow = {}, .static_pressure = {}, .free_air_share = 0.0, .stall = {}, .crossings = {}, .several = false};
  bool stable = true;  // the search begins where the fan has pressure to spare, so the signs alternate from there
  for (const numeric::Bracket& bracket : search.brackets()) {
    const double bed =
        numeric::bracketed_root([&](double m) { return search.gap(m); }, bracket.low, bracket.high, "operating point");
    const PathFlow flow = search.follow(bed);
    const Crossing crossing{
        .bed = flow.bed, .fan_volume = flow.fan_volume, .static_pressure = search.fan_pressure(flow), .stable = stable};
    duty.crossings.push_back(crossing);
    if (stable) {
      duty.flow = flow;
      duty.static_pressure = crossing.static_pressure;
    }
    stable = !stable;
  }
  check_sound(duty.flow, network.ambient().pressure);
  check_closed(duty, fan);
  if (!(duty.flow.tubes > 0.0 * kg_per_s) || !(duty.flow.fan > 0.0 * kg_per_s))
    throw ModelError("no flow: the fan draws " + format(duty.flow.fan, "g/s") + " and " +
                     format(duty.flow.tubes, "g/s") + " comes through the tubes");
  duty.free_air_share = duty.flow.fan_volume / fan.free_air;
  duty.stall = stall_zone(fan.kind, duty.free_air_share);
  duty.several = duty.crossings.size() > 1;
  return duty;
}

namespace {
PathFlow follow_engine_flow(const GasNetwork& network, const TemperatureSource& source, MassFlow engine) {
  require_above_zero("air flow through the engine", engine);
  const std::optional<Leak>& way = network.path().past_bed;
  const auto* part = way ? std::get_if<LeakShare>(&*way) : nullptr;
  if (!way || part) return network.follow(engine * (part ? 1.0 - part->share : 1.0), source);
  const auto excess = [&](double bed) { return in(network.follow(bed * kg_per_s, source).engine - engine, kg_per_s); };
  double most = in(engine, kg_per_s);
  for (int i = 0; i < 60 && excess(most) < 0.0; ++i)
    most *= 2.0;  // a firebox that blows out passes more than the engine
  return network.follow(numeric::bracketed_root(excess, 0.0, most, "air flow through the bed") * kg_per_s, source);
}
}  // namespace

PathFlow at_engine_flow(const GasNetwork& network, const TemperatureSource& source, MassFlow engine) {
  PathFlow flow = follow_engine_flow(network, source, engine);
  check_sound(flow, network.ambient().pressure);
  return flow;
}

std::optional<PathFlow> without_fan(const GasNetwork& network, const TemperatureSource& source, MassFlow most) {
  require_above_zero("air through the bed", most);
  constexpr double least = 1e-3;  // of `most`: less than anybody can measure
  const auto asks = [&](double share) { return in(network.follow(share * most, source).fan_suction, Pa); };
  if (asks(least) >= 0.0) return std::nullopt;
  const double share = asks(1.0) <= 0.0 ? 1.0 : numeric::bracketed_root(asks, least, 1.0, "air with the fan off");
  return network.follow(share * most, source);
}
}  // namespace lumwright::draught
