// Steam raising through time: fire, boiler, gas path, fan and pack solved together at every instant, from cold to
// pressure.
#pragma once
#include "boiler/raise_event.hpp"
#include "boiler/battery.hpp"
#include "boiler/boiler.hpp"
#include "draught/fan.hpp"
#include "draught/fan_speed.hpp"
#include "draught/gas_path.hpp"
#include "fire/fire.hpp"
#include "quantity/kind.hpp"
#include <functional>
#include <optional>
#include <variant>
#include <vector>

namespace lumwright::boiler {
/// A flow of air through the engine that somebody measured. It stands for the fan.
struct MeasuredAir {
  MassFlow engine;  // through the bed and past it; above zero
  double past_bed;  // share of it that misses the bed, 0 to below 1; with a path, the path's own leak counts
};
/// A fan on the gas path.
struct FanDraught {
  std::function<draught::RunningFan(Rotation)> fan;  // the fan at a speed: running(curve, speed), two in a row, ...
  draught::MotorLaw motor;
  std::optional<Voltage> voltage;  // held by a mains supply; without it the battery drives the fan
};

struct RaiseInput {
  fire::Fire fire;  // its air temperature is that of the place
  Boiler boiler;
  draught::Ambient ambient;
  Temperature water;  // at the start; 0.01 degC or more
  std::variant<MeasuredAir, FanDraught> draught;
  std::optional<draught::GasNetwork> path;  // needed by a fan; with measured air it tells the gas at the fan
  std::optional<Battery> battery;
  std::optional<GaugePressure> own_blower;  // where the engine's own blower takes over
  std::optional<GaugePressure> working;     // one of the two at least
  Mass purge;                               // steam let out at the boil to drive the air from the boiler; may be zero
  std::optional<Volume> inside;  // of the whole boiler, water and steam: for the false reading with air left in
  std::optional<Temperature> fan_gas_limit;
  Duration give_up;     // above zero
  int points_per_step;  // of the series; 1 and above. A raise has some ten steps
};

/// Everything at one time.
struct RaiseInstant {
  Duration time;
  Temperature water;
  GaugePressure gauge;  // of a boiler free of air; zero until the water boils
  double lit;           // share of the bed
  MassFlow air;         // through bed and leaks past it
  fire::Burning burning;
  BoilerHeat heat;
  std::optional<draught::PathFlow> path;
  std::optional<SupplyPoint> supply;
};
/// Sums since the start. chemical = carbon_monoxide + bed + absorbed + stack + astray, to rounding; and
/// absorbed = outside + what water, metal and the steam let out hold, to the tolerance of the steps.
struct RaiseAccount {
  Mass fuel;
  Energy chemical, carbon_monoxide, bed, absorbed, stack, astray, outside;
  Mass steam;  // let out
  double efficiency() const { return in(absorbed, chemical); }
};
struct RaiseEvent {
  RaiseEventKind kind;
  RaiseInstant at;
  RaiseAccount account;
};
enum class RaiseEnd { pressure, pack_stopped, out_of_time };
/// What the solving took.
struct RaiseEffort {
  int rates;           // right-hand sides evaluated
  int instants;        // all states solved, those of events and series included
  int paths_followed;  // walks along the gas path
  int full_searches;   // for the operating point from nothing
  int steps, rejected;
};
struct Raise {
  RaiseEnd end;
  std::optional<SupplyEnd> supply_end;
  std::vector<RaiseEvent> events;  // in the order of time
  std::vector<RaiseInstant> series;
  RaiseAccount account;  // to the end
  RaiseEffort effort;

  /// The first event of a kind, or null.
  const RaiseEvent* find(RaiseEventKind kind) const;
  std::optional<Duration> time_of(RaiseEventKind kind) const;
};

/// From cold to the higher of the pressures given, to the end of the pack or to `give_up`. The fan runs all the time.
/// States: water temperature, charge drawn, and the sums of the account. Dormand and Prince (Rosenbrock where the water
/// settles, as a boiler that loses much does) with a tolerance of 1e-5 of 100 K (a few milliseconds in time), events on the solution between the steps to 1e-6 of the time, kindling's corners
/// at the ends of steps; within 0.1 % of a fine fixed-step solution. The model's own error is +-35 % without a timed
/// lighting-up, +-10 % with one (judgement). Throws ModelError for input out of range, water hotter than the goal, a
/// fan that does not turn, or as the parts do.
Raise raise(const RaiseInput& input);

/// Steam that the heat makes at this instant's temperature with feed and valves shut off from it: net heat over latent
/// heat. Below zero if the boiler loses more than it takes.
MassFlow evaporation(const RaiseInstant& instant);
}  // namespace lumwright::boiler
