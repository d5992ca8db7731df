// Pack, leads, step-up and control, with the run of one charge.
#pragma once
#include "data/step_ups.hpp"
#include "description/build.hpp"
#include "model/inputs.hpp"
#include "model/outcome.hpp"
#include "power/discharge.hpp"
#include "power/fan_supply.hpp"

namespace lumwright::model {
struct SolvedSupply {
  power::PackInput pack_input;
  power::Pack pack;
  power::FanSupply feed;
  std::optional<Voltage> stop_at;
  power::Run run;
  power::SupplyState start;               // at the fresh pack's terminals
  std::optional<power::SupplyState> end;  // at the end of the run
  Resistance leads;                // both wires; zero when they are not described
  std::optional<data::StepUpRow> module;
  std::optional<Current> input_limit;
  std::optional<Voltage> input_most, output_most;  // of the step-up
  // For packs of several cells that can be driven backwards, or are spoilt when driven too far: one cell weaker than
  // the rest.
  std::optional<power::Run> with_weak_cell;
  double weakest;  // its capacity over that of the others
};

Outcome<SolvedSupply> solve_supply(const description::Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan);
}  // namespace lumwright::model
