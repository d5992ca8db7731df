// Ordinary differential equations with error control and a solution between the steps (Boost.Odeint, Dormand and
// Prince); where that takes many steps, with Rosenbrock's.
#pragma once
#include "boiler/detail/stiff_step.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <array>
#include <boost/numeric/odeint/stepper/controlled_runge_kutta.hpp>
#include <boost/numeric/odeint/stepper/runge_kutta_dopri5.hpp>
#include <cmath>
#include <functional>
#include <string>

namespace lumwright::boiler {
/// Dormand and Prince, order 5(4), with their fourth-order solution within a step (Hairer, Norsett and Wanner, Solving
/// Ordinary Differential Equations I, II.6). States should be scaled to about one: a step is accepted when its error is
/// below tolerance (1 + |x|) in each. A sum of states that the rates leave alone stays alone to rounding, between steps
/// as well. Rates that turn round quickly bind the length of these steps: after `patience` of them the rest is stepped
/// by StiffStep, if the states that the rates feel are given.
template <std::size_t N>
class Integrator {
 public:
  using State = std::array<double, N>;
  using Rates = std::function<void(const State&, State&, double)>;

  static constexpr int patience = 30;  // a raise takes 10 to 20
  Integrator(Rates rates, double tolerance, std::vector<std::size_t> felt = {})
      : rates_(std::move(rates)),
        stepper_(typename Stepper::error_checker_type(tolerance, tolerance, 1.0, 0.0)),
        may_be_stiff_(!felt.empty()),
        stiff_(std::move(felt), tolerance) {}

  /// Begins a smooth stretch.
  void start(double t, const State& x, double first_step) {
    from_ = to_ = t;
    x_new_ = x;
    next_ = first_step;
    call(x_new_, rate_new_, t);
  }
  /// One accepted step that ends at `limit` at the latest. A trial state for which the rates have no answer shortens
  /// the step; throws their ModelError, or one of its own, if the steps shrink to nothing.
  void step(double limit) {
    from_ = to_;
    x_old_ = x_new_;
    rate_old_ = rate_new_;
    stiffly_ = may_be_stiff_ && steps_ >= patience;
    for (int tries = 0; tries < 100; ++tries) {
      const bool cut = next_ >= limit - from_;
      const double tried = cut ? limit - from_ : next_;
      double dt = tried;
      const bool accepted = attempt(dt);
      if (!std::isfinite(dt) || dt < 1e-12 * (1.0 + std::abs(from_))) break;
      if (accepted) {
        next_ = cut ? std::max(next_, dt) : dt;
        to_ = cut ? limit : from_ + tried;
        ++steps_;
        return;
      }
      next_ = dt;
      ++rejected_;
    }
    throw ModelError("no step is small enough at " + std::to_string(from_) + " s");
  }
  double from() const { return from_; }
  double to() const { return to_; }
  const State& end() const { return x_new_; }
  const State& end_rates() const { return rate_new_; }
  /// Within the last step, both ends included.
  State at(double t) const {
    if (t >= to_) return x_new_;
    if (t <= from_) return x_old_;
    if (stiffly_) return stiff_.within((t - from_) / (to_ - from_), x_old_, x_new_);
    State x;
    stepper_.stepper().calc_state(t, x, x_old_, rate_old_, from_, x_new_, rate_new_, to_);
    return x;
  }
  double next_step() const { return next_; }
  void limit_next(double step) { next_ = std::min(next_, step); }
  int rates_called() const { return called_; }
  int steps() const { return steps_; }
  int rejected() const { return rejected_; }

 private:
  using Stepper = boost::numeric::odeint::controlled_runge_kutta<boost::numeric::odeint::runge_kutta_dopri5<State>>;
  /// True if a step of `dt` is good enough; `dt` then becomes the next step to try, else a shorter one.
  bool attempt(double& dt) {
    const double shortest = 1e-6 * (1.0 + std::abs(from_));
    double t = from_;
    const auto system = [this](const State& x, State& rate, double at) { call(x, rate, at); };
    try {
      if (stiffly_) return attempt_stiffly(dt);
      return stepper_.try_step(system, x_old_, rate_old_, t, x_new_, rate_new_, dt) == boost::numeric::odeint::success;
    } catch (const ModelError&) {
      if (dt < shortest) throw;
      dt *= 0.25;
      return false;
    }
  }
  bool attempt_stiffly(double& dt) {
    const auto rates = [this](const State& x, State& rate, double at) { call(x, rate, at); };
    const double end = from_ + dt, error = stiff_.attempt(rates, x_old_, rate_old_, from_, dt, x_new_);
    dt *= std::isfinite(error) ? StiffStep<N>::stretch(error) : 0.2;
    if (!(error <= 1.0)) return false;
    call(x_new_, rate_new_, end);
    return true;
  }
  void call(const State& x, State& rate, double t) {
    ++called_;
    rates_(x, rate, t);
  }

  Rates rates_;
  Stepper stepper_;
  bool may_be_stiff_, stiffly_ = false;
  StiffStep<N> stiff_;
  State x_old_{}, x_new_{}, rate_old_{}, rate_new_{};
  double from_ = 0.0, to_ = 0.0, next_ = 1.0;
  int called_ = 0, steps_ = 0, rejected_ = 0;
};
}  // namespace lumwright::boiler
