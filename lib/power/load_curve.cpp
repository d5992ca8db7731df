#include "power/load_curve.hpp"
#include "numeric/root.hpp"
#include "power/detail/load_regimes.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/tools/minima.hpp>
#include <cmath>

namespace lumwright::power {
namespace {
double on_share(const Load& load) {
  const auto* supply = std::get_if<FanSupply>(&load);
  const bool chopped = supply != nullptr && !supply->step_up && supply->control.kind == Control::Kind::chopped_supply;
  return chopped ? supply->control.duty : 1.0;
}

/// The first minimum met when `emf` is followed down from `top`, or nothing if it falls all the way to `bottom`.
/// The grid of 64 steps finds it, Brent's method (Boost.Math) refines it; the value is then exact to rounding.
template <class F>
std::optional<Voltage> fold(const F& emf, Voltage bottom, Voltage top) {
  const auto f = [&](double v) { return in(emf(v * V), V); };
  const auto refine = [&](double a, double b) { return boost::math::tools::brent_find_minima(f, a, b, 40).first * V; };
  const double low = in(bottom, V), high = in(top, V), step = (high - low) / 64;
  double above = f(high);
  for (int i = 1; i <= 64; ++i) {
    const double v = i == 64 ? low : high - i * step, here = f(v);
    if (here > above) return refine(v, std::min(high, v + 2 * step));
    above = here;
  }
  const double inch_up = low + 1e-7 * (high - low);
  if (f(inch_up) < above) return refine(low, low + step);
  return std::nullopt;
}
}  // namespace

LoadCurve::LoadCurve(const Load& load, Resistance resistance, Voltage floor, Voltage highest)
    : pulse_resistance_(resistance / on_share(load)), highest_(highest) {
  require_not_negative("pack resistance", resistance, "ohm");
  require_not_negative("switch-off voltage", floor, "V");
  for (const LoadRegime& regime : regimes(load, highest))
    if (!done_) add(regime, floor);
  if (!done_ && !stretches_.empty()) {  // the last regime ended above the floor: below it the load has no answer
    collapses_ = true;
    end_emf_ = stretches_.back().emf;
    end_ = solve(stretches_.back().regime, end_emf_);
  }
}

Voltage LoadCurve::emf_for(const LoadRegime& regime, Voltage v) const {
  return v + pulse_resistance_ * regime.current(v);
}

// Current falls with voltage only where power is constant or nearly so: there, and only there, is a fold.
void LoadCurve::add(const LoadRegime& whole, Voltage floor) {
  if (floor >= whole.to) {  // the floor lies in the regime above, or above the charged pack
    end_emf_ = stretches_.empty() ? highest_ : stretches_.back().emf;
    end_ = stretches_.empty() ? WorkingPoint{.voltage = whole.to, .current = whole.current(whole.to)}
                              : solve(stretches_.back().regime, end_emf_);
    done_ = true;
    return;
  }
  LoadRegime regime = whole;
  regime.from = std::max(whole.from, floor);
  std::optional<Voltage> turn;
  if (regime.power) {
    const Voltage v = collapse_voltage(pulse_resistance_, *regime.power);
    if (v > regime.to)
      turn = regime.to;
    else if (v > regime.from)
      turn = v;
  } else if (pulse_resistance_ > Resistance()) {
    turn = fold([&](Voltage v) { return emf_for(regime, v); }, regime.from, regime.to);
  }
  if (turn) regime.from = *turn;
  const Voltage emf = emf_for(regime, regime.from);
  const Voltage ceiling = stretches_.empty() ? emf : stretches_.back().emf;
  stretches_.push_back({.regime = regime, .emf = std::min(emf, ceiling)});
  if (!turn && !(floor > Voltage() && floor >= whole.from)) return;
  done_ = true;
  collapses_ = turn.has_value();
  end_emf_ = stretches_.back().emf;
  end_ = {.voltage = regime.from, .current = regime.current(regime.from)};
}

WorkingPoint LoadCurve::solve(const LoadRegime& regime, Voltage emf) const {
  if (regime.power) {
    const PowerDraw draw{.emf = emf, .resistance = pulse_resistance_, .power = *regime.power};
    const Voltage v = terminal_voltage(draw);
    if (v <= regime.to) return {.voltage = v, .current = current(draw)};
  }
  const auto excess = [&](double v) { return in(emf_for(regime, v * V) - emf, V); };
  const double low = in(regime.from, V), high = std::min(in(regime.to, V), in(emf, V));
  const auto point = [&](double v) { return WorkingPoint{.voltage = v * V, .current = regime.current(v * V)}; };
  if (high <= low || excess(low) >= 0.0) return point(low);
  // A step-up that takes less where it boosts than where it passes through rests at the change-over.
  if (excess(high) <= 0.0)
    return {
        .voltage = high * V,
        .current = pulse_resistance_ > Resistance() ? (emf - high * V) / pulse_resistance_ : regime.current(high * V)};
  return point(numeric::bracketed_root(excess, low, high, "working point"));
}

const LoadCurve::Stretch& LoadCurve::stretch(Voltage emf) const {
  const auto below = [&](const Stretch& s) { return emf >= s.emf; };
  const auto found = std::find_if(stretches_.begin(), stretches_.end(), below);
  return found == stretches_.end() ? stretches_.back() : *found;
}
WorkingPoint LoadCurve::at(Voltage emf) const { return emf > end_emf_ ? solve(stretch(emf).regime, emf) : end_; }

std::vector<Voltage> LoadCurve::bends() const {
  std::vector<Voltage> out;
  for (std::size_t i = 0; i + 1 < stretches_.size(); ++i) out.push_back(stretches_[i].emf);
  return out;
}

std::optional<Power> LoadCurve::constant_power() const {
  return stretches_.size() == 1 ? stretches_.front().regime.power : std::nullopt;
}

Duration LoadCurve::time_to_draw(const StraightPiece& piece, const Drain& drain) const {
  const LoadRegime& regime = stretch(0.5 * (piece.from + piece.to)).regime;
  const Voltage fall = piece.from - piece.to;
  // On a nearly level piece the two ends cancel; the value at its middle is then exact to (fall/E)^2.
  if (fall < 1e-6 * piece.from) return piece.charge / drain.of(solve(regime, piece.to + 0.5 * fall).current);
  const WorkingPoint high = solve(regime, piece.from), low = solve(regime, piece.to);
  const auto inverse = [&](double v) { return 1.0 / in(drain.of(regime.current(v * V)), A); };
  double by_voltage = 0;  // V/A
  if (high.voltage > low.voltage)
    by_voltage = boost::math::quadrature::gauss_kronrod<double, 15>::integrate(inverse, in(low.voltage, V),
                                                                               in(high.voltage, V), 8, 1e-10);
  const Resistance sum = by_voltage * ohm + pulse_resistance_ * drain.inverse_integral(low.current, high.current);
  return piece.charge * (sum / fall);
}

Current Drain::of(Current i) const {
  if (exponent == 1.0 || i <= rated) return i;
  return i * std::pow(in(i, rated), exponent - 1.0);
}
double Drain::inverse_integral(Current low, Current high) const {
  const auto from_rated = [this](Current i) {
    const double log = std::log(in(i, rated));
    const double k = exponent - 1.0;
    return log <= 0.0 || k == 0.0 ? log : -std::expm1(-k * log) / k;  // of u^-k from 1
  };
  return from_rated(high) - from_rated(low);
}
}  // namespace lumwright::power
