// The solved model that every check looks at: draught, supply and fit, each as far as the description allows.
#pragma once
#include "boiler/fill.hpp"
#include "boiler/light_ups_lived.hpp"
#include "boiler/raise.hpp"
#include "description/build.hpp"
#include "description/page_units.hpp"
#include "draught/duty.hpp"
#include "draught/fan_estimate.hpp"
#include "draught/fan_speed.hpp"
#include "model/fan_unit.hpp"
#include "model/inputs.hpp"
#include "model/result.hpp"
#include "power/discharge.hpp"
#include "power/fuse.hpp"
#include "power/light_ups.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "workshop/stock.hpp"

namespace lumwright {
/// A part that cannot be, in its owner's words: the check that asks after it says so, and all others wait for that one.
struct Refused : ModelError {
  std::string told_by, action;  // id of the check, and what to do
  Refused(std::string check, const std::string& why, std::string what_to_do)
      : ModelError(why), told_by(std::move(check)), action(std::move(what_to_do)) {}
};
/// A part of the model: solved, or what is missing, or why there is no physical answer.
template <class T>
struct Outcome {
  std::optional<T> value{};
  std::vector<std::string> missing{};  // keys
  std::string impossible{};            // why there is no answer
  std::string told_by{}, action{};     // of that: the check that says so, and what to do
  explicit operator bool() const { return value.has_value(); }
  const T* operator->() const { return &*value; }
  const T& operator*() const { return *value; }
};

struct SolvedFan {
  FanLabel label;                   // as printed
  std::optional<Length> thickness;  // as printed, or taken where something asks for it
  FanCurve curve;
  std::optional<MotorLaw> motor;   // nothing without a rated voltage and speed
  std::optional<Current> current;  // rated
  Temperature gas_limit;
  bool inside;  // the box, in the gas
};

struct SolvedSupply {
  PackInput pack_input;
  Pack pack;
  FanSupply feed;
  std::optional<Voltage> stop_at;
  Run run;
  SupplyState start;               // at the fresh pack's terminals
  std::optional<SupplyState> end;  // at the end of the run
  Resistance leads;                // both wires; zero when they are not described
  std::optional<data::StepUpRow> module;
  std::optional<Current> input_limit;
  std::optional<Voltage> input_most, output_most;  // of the step-up
  // For packs of several cells that can be driven backwards, or are spoilt when driven too far: one cell weaker than
  // the rest.
  std::optional<Run> with_weak_cell;
  double weakest;  // its capacity over that of the others
};

struct SolvedDraught {
  Ambient ambient;
  GasPath path;                     // with the leaks as shares
  GasPath cold_path;                // with the leaks as the openings that they are
  std::optional<Duty> hot, cold;    // with a fan
  PathFlow hot_flow, cold_flow;     // with or without one
  std::optional<PathFlow> fan_off;  // fire alight, fan standing; not in samples
  Rotation fan_speed;               // zero without a fan
  Voltage fan_voltage;              // zero without a fan
  std::optional<Density> fuel_piece;
  std::optional<Fire> fire;
  std::optional<Boiler> boiler;
  std::optional<Burning> burning;  // fire well alight
  Temperature water;               // at own-blower pressure: the hot fire is judged there
  bool measured;                   // the air flow was given
};

struct SolvedFit {
  FitInput input;
  Fit fit;
  std::vector<StockTube> stock;
};

/// From cold to pressure, everything coupled.
struct SolvedRaise {
  RaiseInput input;
  Raise raise;
  Fill fill;        // how much of the boiler the water takes
  Duration within;  // that the owner will wait
};

/// Light-ups of one charge, one after the other.
struct SolvedLightUps {
  int count;
  Duration first, last;        // how long they take; alike where the fan's voltage is held
  LightUpsEnd end;             // why there is no further one
  std::vector<Duration> ends;  // of the fan's running time, of the first ones of them
};
constexpr int most_light_ups_kept = 400;

struct Solved {
  const Build& build;
  Inputs inputs;
  UnitSystem units = UnitSystem::as_written;  // for the sentences of the checks
  PageUnits page{};                           // the same, kind by kind; samples do without
  std::vector<Result> results{};              // of the page, with their bands, once they are known
  bool spread_tried = false;  // every spread is tried in many samples: checks keep no reserve of their own for it
  Outcome<SolvedFan> fan{};
  Outcome<SolvedSupply> supply{};
  Outcome<SolvedDraught> draught{};
  Outcome<SolvedFit> fit{};
  Outcome<SolvedRaise> raise{};
  std::optional<SolvedLightUps> light_ups{};  // with a supply
  Outcome<FanUnit> unit{};                    // of the build as it stands; samples do without
  Duration light_up =
      0.0 *
      unit::s;  // one, from cold to own-blower pressure; as long as the owner will wait where the raise is not known
};

/// Solves everything that can be solved, in the order in which the parts need each other.
/// A tuning must outlive it.
Solved solve(const Build& build, Draw draw = {}, const Tuning* tuning = nullptr);

/// The same without the raise and the light-ups, which are most of the work.
Solved solve_cold(const Build& build, const Tuning* tuning = nullptr);

// The parts, for solve() alone.
Outcome<SolvedFan> solve_fan(const Build& build, Inputs& inputs);
Outcome<SolvedSupply> solve_supply(const Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan);
Outcome<SolvedDraught> solve_draught(const Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan,
                                     const Outcome<SolvedSupply>& supply);
/// How far the tube goes in: as written, else as far as tube and chimney allow; nothing where those are not known.
std::optional<Length> engaged_length(const Build& build, Inputs& inputs);
Outcome<SolvedFit> solve_fit(const Build& build, Inputs& inputs, const Outcome<SolvedDraught>& draught);
Outcome<SolvedRaise> solve_raise(const Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan,
                                 const Outcome<SolvedSupply>& supply, const Outcome<SolvedDraught>& draught);
Outcome<FanUnit> solve_unit(const Build& build, Inputs& inputs);
/// Lives through the light-ups of one charge; nothing without a supply. Everything else must be solved.
std::optional<SolvedLightUps> solve_light_ups(const Solved& solved);
/// What the raise of a solved draught is made of. The description must state the water.
RaiseInput raise_input(const Build& build, Inputs& inputs, const SolvedDraught& draught, const Outcome<SolvedFan>& fan,
                       const Outcome<SolvedSupply>& supply);

/// What a part is called to its owner; the check that says so where it cannot be worked out, and what to do then.
struct PartName {
  std::string_view words, told_by, action;
};
constexpr std::string_view look_for_a_slip = "look for a slipped decimal point or unit in what is named here";
inline PartName part_name(const Outcome<SolvedFan>&) { return {"the fan", "fan.curve", look_for_a_slip}; }
inline PartName part_name(const Outcome<SolvedSupply>&) {
  return {"the supply", "power.light_ups", "more or better cells, or a fan that asks less"};
}
inline PartName part_name(const Outcome<SolvedDraught>&) {
  return {"the draught", "draught.flow",
          "look for a slipped decimal point or unit along the way of the gas; else shorten or widen it, or take a fan "
          "with more pressure"};
}
inline PartName part_name(const Outcome<SolvedFit>&) { return {"the fit in the chimney", "fit.cold", look_for_a_slip}; }
inline PartName part_name(const Outcome<SolvedRaise>&) { return {"steam raising", "raise.time", look_for_a_slip}; }
inline PartName part_name(const Outcome<FanUnit>&) { return {"the unit", "make.lid", look_for_a_slip}; }

/// Runs a part's solve: what it lacks goes to `missing`, why it cannot be to `impossible`. An equation that refuses its
/// inputs speaks of itself: the part is named before it.
template <class T, class F>
Outcome<T> attempt(F&& solve_part) {
  Outcome<T> outcome;
  const PartName part = part_name(outcome);
  try {
    outcome.value = solve_part(outcome.missing);
  } catch (const Refused& e) {
    outcome.impossible = e.what();
    outcome.told_by = e.told_by;
    outcome.action = e.action;
  } catch (const ModelError& e) {
    outcome.impossible = std::string(part.words) + " cannot be worked out from these sizes: " + e.what();
    outcome.told_by = part.told_by;
    outcome.action = part.action;
  }
  return outcome;
}
/// Throws why another part, which this one needs, cannot be.
template <class T>
[[noreturn]] void refuse_with(const Outcome<T>& part) {
  throw Refused(part.told_by, part.impossible, part.action);
}
/// Runs `make`; what it refuses is told by that check, after `before`.
template <class F>
auto told_by(std::string_view check, std::string_view before, std::string_view action, F&& make) {
  try {
    return make();
  } catch (const Refused&) {
    throw;
  } catch (const ModelError& e) {
    throw Refused(std::string(check), std::string(before) + e.what(), std::string(action));
  }
}
/// The value of a key that a part cannot do without; a missing one is noted.
template <class Q>
std::optional<Q> needed(Inputs& inputs, const Given<Q>& given, std::vector<std::string>& missing) {
  std::optional<Q> value = inputs.known(given);
  if (!value) missing.emplace_back(given.key.text());
  return value;
}
}  // namespace lumwright
