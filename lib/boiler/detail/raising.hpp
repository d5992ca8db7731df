// The raise at work: its states, phases and events. Only the files of the raise include it.
#pragma once
#include "boiler/detail/instant.hpp"
#include "boiler/detail/integrator.hpp"
#include "boiler/raise.hpp"
#include "numeric/root.hpp"
#include <cstddef>
#include <optional>
#include <vector>

namespace lumwright::boiler {
/// One raise from start to end; raise() makes one and runs it. Keeps a reference.
class Raising {
 public:
  explicit Raising(const RaiseInput& input);
  Raise run();

 private:
  // The states of the differential equations, each scaled to about one.
  enum Index : std::size_t {
    water,
    charge,
    fuel,
    chemical,
    monoxide,
    bed,
    absorbed,
    stack,
    astray,
    outside,
    steam,
    states
  };
  using Steps = Integrator<states>;
  using State = Steps::State;
  static constexpr TemperatureRise water_scale = 100.0 * K;
  static constexpr Energy energy_scale = 100.0 * kJ;
  static constexpr Mass mass_scale = 10.0 * g;
  struct Phase {
    bool fully_lit;
    bool smouldering;  // kindling takes all the heat there is
    bool venting;      // water stays at the boil while steam drives the air out
  };
  /// A moment within a step at which something happens.
  struct Crossing {
    double time;  // s
    RaiseEventKind kind;
    bool silent;  // a corner of the rates that is no event
  };

  void check_input() const;
  void set_goals();
  Temperature water_of(const State& x) const { return kelvin(x[water] * in(water_scale, K)); }
  RaiseInstant instant(double t, const State& x, const Phase& phase);
  RaiseInstant instant(double t, const State& x) { return instant(t, x, phase_); }
  void rates(const State& x, State& rate, double t);
  double limit() const;
  std::vector<Crossing> crossings(const RaiseInstant& end);
  void add_supply_crossings(const RaiseInstant& end, std::vector<Crossing>& found);
  void add_fire_crossings(const RaiseInstant& end, std::vector<Crossing>& found);
  bool pass(const Crossing& crossing, const RaiseInstant& here);
  void record_series(double until, const RaiseInstant& last, const Phase& phase);
  RaiseAccount account(const State& x) const;
  void begin(double t, const State& x);
  /// Where a quantity that ends the step above zero passed it; `begun` and `ended` are its values at the step's ends.
  template <class F>
  double moment(const char* what, double begun, double ended, const F& f, int bits) const {
    const double from = steps_.from(), to = steps_.to();
    if (!(begun < 0.0)) return from;  // a rounding error above zero, where the last step left it at zero
    return numeric::bracketed_root([&](double t) { return t == from ? begun
                                                          : t == to ? ended
                                                                    : f(t); }, from, to, what,
                                   bits);
  }
  /// The same of a quantity that the state itself tells.
  template <class F>
  double moment(const char* what, const F& of_state) const {
    const auto f = [&](double t) { return of_state(steps_.at(t)); };
    return moment(what, f(steps_.from()), f(steps_.to()), f, 40);
  }

  const RaiseInput& input_;
  InstantSolver solver_;
  Steps steps_;
  Phase phase_;
  Mass water_left_;
  Temperature boiling_;
  double kindled_;  // s
  struct Goal {
    Temperature water;
    RaiseEventKind kind;
    bool passed;
  };
  std::vector<Goal> goals_;
  RaiseEventKind last_goal_ = RaiseEventKind::working;
  bool too_hot_ = false, done_ = false;
  std::optional<RaiseInstant> newest_, before_;  // at the latest rates; at the start of the step
  Raise out_;
};
}  // namespace lumwright::boiler
