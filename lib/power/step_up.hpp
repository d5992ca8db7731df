// A step-up converter as a load on its pack: what it takes in for what it gives out, where it stops, how warm it gets.
#pragma once
#include "data/step_ups.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <variant>
#include <vector>

namespace lumwright::power {
/// Losses in the parts, as data sheets give them.
struct StepUpLosses {
  Resistance switch_resistance;
  Resistance coil_resistance;
  Voltage diode_drop;                       // zero in a synchronous type
  std::optional<Resistance> second_switch;  // of a synchronous type
  Duration switching_time;
  Rotation frequency;
  Current quiescent;
};
/// One measured efficiency.
struct EfficiencyPoint {
  Voltage input;
  Power output;
  double share;
};
struct StepUp {
  Voltage output;  // as set
  std::variant<StepUpLosses, std::vector<EfficiencyPoint>, double> efficiency;
  Voltage passing_drop;  // from input to output when it only passes current through
  Voltage input_min;     // real: see real_minimum()
  bool runs_away;        // below input_min the output can rise far above its setting
};

/// A module's row as a step-up.
StepUpLosses losses_of(const data::StepUpRow& row);
StepUp step_up_of(const data::StepUpRow& row, Voltage output, Voltage input_min);

/// The input below which a board of this class really fails: the label's or the class's, whichever is higher.
/// An input that the user has measured stands for itself and needs no rule.
Voltage real_minimum(const data::StepUpRow& row, std::optional<Voltage> label);

/// What the step-up is asked for.
struct StepUpDuty {
  Voltage input;
  Current output;
};
struct StepUpState {
  Current input;
  Voltage output;     // above the setting when the input passes through
  double efficiency;  // 0 to 1
  Power loss;
  bool passes_through;  // input less diode drop is above the setting
  bool beyond_points;   // the table of efficiencies was carried on level past its ends
};
/// True while a set output voltage is above what the input would pass through.
bool boosts(const StepUp& step_up, Voltage input);
/// The state while boosting, or nothing when it cannot deliver that current from that input.
/// Losses: V I = (Vo+Vf) Io + I^2 (Rc + D Rs) + (Vo+Vf) t f I/2 + V Iq with D = 1 - V/(Vo+Vf): conduction and switching
/// terms of the usual first-order power stage (Erickson and Maksimovic, Fundamentals of Power Electronics, ch. 3-4).
/// Within 1 point of measured boards when fitted, 3 points with the values of a type. Table: straight between the
/// points.
std::optional<StepUpState> boosted(const StepUp& step_up, StepUpDuty duty);
/// The state with the input passed through: the output follows the input.
StepUpState passed_through(const StepUp& step_up, StepUpDuty duty);
/// Either of the two. Throws ModelError that names input and output current when it cannot deliver.
StepUpState step_up_state(const StepUp& step_up, StepUpDuty duty);

/// Heat in the board. The thermal resistance is of one small board in free air: +-30 % for others.
struct StepUpHeat {
  Temperature around;
  ThermalResistance hot_spot_per_loss;
};
Temperature hot_spot(const StepUpHeat& heat, Power loss);
}  // namespace lumwright::power
