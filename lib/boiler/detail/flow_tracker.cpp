#include "boiler/detail/flow_tracker.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <array>
#include <cmath>

namespace lumwright::boiler {
namespace {
constexpr double close_enough = 1e-6;  // of the flow
constexpr std::size_t memory = 16;     // instants

/// Counts how often the path is followed, also by the full search.
class Counting final : public draught::TemperatureSource {
 public:
  Counting(const draught::TemperatureSource& source, int& count) : source_(source), count_(count) {}
  Temperature bed_mean(MassFlow bed_air) const override { return source_.bed_mean(bed_air); }
  double fuel_in_bed() const override { return source_.fuel_in_bed(); }
  draught::GasTemperatures after_bed(MassFlow bed_air, MassFlow past_bed) const override {
    ++count_;
    return source_.after_bed(bed_air, past_bed);
  }

 private:
  const draught::TemperatureSource& source_;
  int& count_;
};
}  // namespace

FlowTracker::Probe FlowTracker::probe(double bed, const draught::TemperatureSource& source,
                                      const draught::RunningFan& fan) {
  ++followed_;
  Probe p{.bed = bed, .gap = 0.0, .flow = network_.follow(bed * kg_per_s, source, walls_)};
  const VolumeFlow at_fan = std::max(p.flow.fan_volume, 0.0 * m3_per_s);
  p.gap = in(draught::static_pressure(fan, at_fan, p.flow.fan_density) - p.flow.fan_suction, Pa);
  require_finite("pressure that the fan has left", p.gap);
  return p;
}

draught::PathFlow FlowTracker::search(const draught::TemperatureSource& source, const draught::RunningFan& fan,
                                      double along) {
  ++searched_;
  const draught::Duty duty = draught::solve_duty(network_, Counting(source, followed_), fan);
  const double bed = in(duty.flow.bed, kg_per_s), beside = bed * (1.0 + 1e-4);
  const Probe here = probe(bed, source, fan), there = probe(beside, source, fan);
  const double slope = (there.gap - here.gap) / (there.bed - here.bed);
  known_.clear();  // what was learnt on another branch does not hold on this one
  return keep(here, slope < 0.0 ? slope : -std::abs(in(duty.static_pressure, Pa)) / bed, along);
}

draught::PathFlow FlowTracker::keep(const Probe& found, double slope, double along) {
  if (known_.size() == memory) known_.erase(known_.begin());
  known_.push_back({along, std::log(found.bed)});
  bed_ = found.bed;
  slope_ = slope;
  return found.flow;
}

void FlowTracker::corner() { known_.clear(); }

// Newton's polynomial through up to four instants: the nearest ones, but none so close to another that it would only
// magnify what is wrong with both.
double FlowTracker::guess(double along) const {
  std::array<Known, memory> by_distance;
  const auto end = std::copy(known_.begin(), known_.end(), by_distance.begin());
  const auto away = [&](const Known& k) { return std::abs(k.along - along); };
  std::sort(by_distance.begin(), end, [&](const Known& a, const Known& b) { return away(a) < away(b); });
  std::array<double, 4> t{}, difference{};
  std::size_t n = 0;
  for (auto k = by_distance.begin(); k != end && n < t.size(); ++k) {
    const double apart = 0.2 * away(*k) + 1e-6;
    if (std::any_of(t.begin(), t.begin() + static_cast<std::ptrdiff_t>(n),
                    [&](double other) { return std::abs(other - k->along) < apart; }))
      continue;
    t[n] = k->along;
    difference[n++] = k->log_bed;
  }
  if (n == 0) return bed_;
  for (std::size_t order = 1; order < n; ++order)
    for (std::size_t i = n - 1; i >= order; --i)
      difference[i] = (difference[i] - difference[i - 1]) / (t[i] - t[i - order]);
  double value = difference[n - 1];
  for (std::size_t i = n - 1; i-- > 0;) value = value * (along - t[i]) + difference[i];
  return std::clamp(std::exp(value), 0.5 * bed_, 2.0 * bed_);
}

draught::PathFlow FlowTracker::solve(const draught::TemperatureSource& source, const draught::RunningFan& fan,
                                     double along) {
  if (!(bed_ > 0.0)) return search(source, fan, along);
  const double guess = this->guess(along), close = close_enough * guess;

  Probe near = probe(guess, source, fan);
  if (std::abs(near.gap) <= close * std::abs(slope_)) return keep(near, slope_, along);
  // One side of the root, then the other: a step that goes a little too far.
  double slope = slope_, reach = 1.02;
  Probe far = near;
  for (int tries = 0; (far.gap > 0.0) == (near.gap > 0.0); ++tries) {
    near = far;
    const double step = std::clamp(-reach * near.gap / slope, -0.3 * guess, 0.3 * guess);
    const double bed = near.bed + step + (near.gap > 0.0 ? 0.5 * close : -0.5 * close);
    if (tries == 6 || !(bed > 0.05 * guess && bed < 4.0 * guess)) return search(source, fan, along);
    far = probe(bed, source, fan);
    const double seen = (far.gap - near.gap) / (far.bed - near.bed);
    if (seen < 0.0) slope = seen;
    reach *= 1.5;
  }
  for (int i = 0; i < 60; ++i) {
    slope = (far.gap - near.gap) / (far.bed - near.bed);
    const Probe& best = std::abs(near.gap) < std::abs(far.gap) ? near : far;
    if (std::abs(best.gap) <= close * std::abs(slope)) return keep(best, slope, along);
    // The secant, and a halving now and then against a bracket that shrinks from one side only.
    const double cut = i % 4 == 3 ? 0.5 * (near.bed + far.bed) : near.bed - near.gap / slope;
    const Probe middle = probe(cut, source, fan);
    ((middle.gap > 0.0) == (near.gap > 0.0) ? near : far) = middle;
    if (std::abs(far.bed - near.bed) <= close) return keep(middle, slope, along);
  }
  return search(source, fan, along);
}
}  // namespace lumwright::boiler
