#include "boiler/light_ups_lived.hpp"
#include "numeric/root.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <array>
#include <cmath>

namespace lumwright::boiler {
namespace {
constexpr double one_by_one = 4.5;  // so many light-ups, and fewer, are raised each
constexpr double alike = 10000.0;   // so many, and more, are counted as if all were like the first
constexpr double hardly_slower = 0.08;

std::optional<LivedLightUp> lived(const Raise& raise, RaiseEventKind goal, Charge from, Charge full) {
  const RaiseEvent* reached = raise.find(goal);
  if (reached == nullptr || !reached->at.supply) return std::nullopt;
  return LivedLightUp{.time = reached->at.time, .used = (1.0 - reached->at.supply->charge_left) * full - from};
}

class Living {
 public:
  Living(const RaiseInput& input, RaiseEventKind goal, std::optional<Duration> within)
      : input_(input), goal_(goal), within_(within), full_(input.battery->pack.full) {
    input_.points_per_step = 1;
    if (goal == RaiseEventKind::own_blower) input_.working.reset();
    const auto* draught = std::get_if<FanDraught>(&input.draught);
    const BatteryDraw draw(*input.battery, draught ? std::optional(draught->motor) : std::nullopt);
    start_ = draw.start_charge();
    stop_ = draw.stop_charge();
  }
  LightUpsLived run(const LivedLightUp& first) {
    const double expected = in(stop_ - start_, first.used);
    if (!(first.used > Charge()) || expected > alike) return all_like(first, expected);
    if (expected > one_by_one && follow(first)) return walk(first, [&](Charge from) { return at(from); });
    return walk(first, [&](Charge from) { return raised(from); });
  }

 private:
  /// A raise that begins with this charge drawn.
  std::optional<LivedLightUp> raised(Charge from) {
    input_.battery->pack.drawn = from;
    try {
      return lived(raise(input_), goal_, from, full_);
    } catch (const ModelError&) {  // what is left cannot even carry the fan
      return std::nullopt;
    }
  }
  bool too_slow(const LivedLightUp& one) const { return within_ && one.time > *within_; }

  LightUpsLived all_like(const LivedLightUp& first, double expected) const {
    if (too_slow(first)) return {.each = {}, .end = LightUpsEnd::too_slow};
    const double most = std::min(expected, 1e6);
    return {.each = std::vector<LivedLightUp>(static_cast<std::size_t>(most), first), .end = LightUpsEnd::pack_stops};
  }
  template <class Next>
  LightUpsLived walk(LivedLightUp one, const Next& next) {
    LightUpsLived out{.each = {}, .end = LightUpsEnd::pack_stops};
    for (Charge from = start_;;) {
      if (from + one.used > stop_ * (1.0 + 1e-12)) return out;
      if (too_slow(one)) {
        out.end = LightUpsEnd::too_slow;
        return out;
      }
      out.each.push_back(one);
      from += one.used;
      if (!(from < stop_)) return out;
      const std::optional<LivedLightUp> after = next(from);
      if (!after) return out;
      one = *after;
    }
  }

  // The parabola: nodes of open-circuit voltage half-way, and the logarithms of time and charge there.
  struct Node {
    double emf, time, used;
  };
  double emf(Charge drawn) const {
    const power::OpenCircuit& curve = input_.battery->pack.curve;
    return in(curve.at(std::clamp(drawn, curve.drawn.front(), curve.drawn.back())), V);
  }
  Node node(Charge from, const LivedLightUp& one) const {
    return {emf(from + 0.5 * one.used), std::log(in(one.time, s)), std::log(in(one.used, Ah))};
  }
  /// False where the voltage hardly falls, or no late light-up comes to pressure.
  bool follow(const LivedLightUp& first) {
    nodes_[0] = node(start_, first);
    std::optional<LivedLightUp> last;
    Charge from;
    for (double room = 1.3; !last && room < 4.0; room += 0.9) last = raised(from = stop_ - room * first.used);
    if (!last) return false;
    nodes_[2] = node(from, *last);
    const double middle = 0.5 * (nodes_[0].emf + nodes_[2].emf);
    if (!(nodes_[0].emf - nodes_[2].emf > 1e-3 * nodes_[0].emf)) return false;
    if (std::abs(nodes_[2].time - nodes_[0].time) < hardly_slower) {  // a straight line will do
      nodes_[1] = {middle, 0.5 * (nodes_[0].time + nodes_[2].time), 0.5 * (nodes_[0].used + nodes_[2].used)};
      return true;
    }
    const double q = numeric::bracketed_root([&](double x) { return emf(x * Ah) - middle; }, in(start_, Ah),
                                             in(stop_, Ah), "charge half-way down", 20);
    const Charge begins = std::max(start_, q * Ah - 0.5 * first.used);
    const std::optional<LivedLightUp> between = raised(begins);
    if (!between) return false;
    nodes_[1] = node(begins, *between);
    return nodes_[0].emf > nodes_[1].emf && nodes_[1].emf > nodes_[2].emf;
  }
  double parabola(double e, double Node::*of) const {
    const auto& [a, b, c] = nodes_;
    const double ab = (a.*of - b.*of) / (a.emf - b.emf), bc = (b.*of - c.*of) / (b.emf - c.emf);
    return b.*of + (e - b.emf) * (bc + (e - c.emf) * (ab - bc) / (a.emf - c.emf));
  }
  LivedLightUp at(Charge from) const {
    Charge used = std::exp(nodes_[1].used) * Ah;
    for (int i = 0; i < 4; ++i) used = std::exp(parabola(emf(from + 0.5 * used), &Node::used)) * Ah;
    return {.time = std::exp(parabola(emf(from + 0.5 * used), &Node::time)) * s, .used = used};
  }

  RaiseInput input_;
  RaiseEventKind goal_;
  std::optional<Duration> within_;
  Charge full_, start_, stop_;
  std::array<Node, 3> nodes_{};
};
}  // namespace

LightUpsLived live_through(const RaiseInput& input, const Raise& first, RaiseEventKind goal,
                           std::optional<Duration> within) {
  if (!input.battery) throw ModelError("light-ups on one charge need a battery");
  const auto one = lived(first, goal, input.battery->pack.drawn, input.battery->pack.full);
  if (!one) return {.each = {}, .end = LightUpsEnd::never};
  return Living(input, goal, within).run(*one);
}
}  // namespace lumwright::boiler
