// How long a pack carries a load, and why it stops.
#pragma once
#include "power/fan_supply.hpp"
#include "power/pack.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <variant>
#include <vector>

namespace lumwright::power {
/// What hangs on the pack: a power that does not depend on voltage, or a fan with what feeds it.
using Load = std::variant<Power, FanSupply>;

enum class StopReason {
  stop_at,          // the voltage at which the owner or a cut-out switches off
  collapse,         // the load asks more than the pack can give
  step_up_minimum,  // the step-up's real least input
  empty             // the charge is used up
};
const char* name(StopReason reason);  // as in the JSON contract

struct Sample {
  Duration time;
  Voltage open_circuit;
  Voltage voltage;      // at the load, behind leads and fuse; while on, if the lead is chopped
  Current current;      // mean
  double charge_share;  // left of a full charge
};
/// What becomes of the weakest cell.
struct WeakCellFate {
  std::optional<Duration> reversed_from;  // its own voltage passes zero
  Duration in_reversal;
  Voltage voltage_end;
};
struct Run {
  Duration runtime;
  StopReason reason;
  bool starts;   // false: the load cannot run even on the charged pack; runtime is then zero
  Sample start;  // if it does not start for want of power: the most that the pack can give, at half its voltage
  Sample end;
  Current most_current;
  std::optional<double> step_up_efficiency_start;
  double charge_left_share;
  std::vector<Sample> series;
  std::optional<WeakCellFate> weak;
};

/// Runs the pack down. Constant power with a capacity that holds: in closed form. Any other load: dt = dq/I(q) is
/// separable, so each straight piece of the curve is one integral (LoadCurve::time_to_draw); no time steps. A current
/// above the rated one draws charge (I/Ir)^(k-1) times as fast: Peukert's law applied at each moment.
///
/// Error of the model, not of the arithmetic: a voltage behind one resistance promises too much by 3 to 10 % for a new
/// lithium cell at 0.5 to 2 It unless the rate exponent is applied. Plan with -15/+5 % (new cells), -40 % (salvaged).
///
/// Throws ModelError for a load that is not positive or a stop voltage that is not.
Run discharge(const Pack& pack, const Load& load, std::optional<Voltage> stop_at);

/// The state at one time within the run. Throws ModelError outside 0 .. runtime.
Sample state_after(const Pack& pack, const Load& load, std::optional<Voltage> stop_at, Duration time);
}  // namespace lumwright::power
