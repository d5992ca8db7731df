// The gas path with its flows, cold and with the fire well alight.
#pragma once
#include "boiler/boiler.hpp"
#include "description/build.hpp"
#include "draught/duty.hpp"
#include "fire/fire.hpp"
#include "model/inputs.hpp"
#include "model/outcome.hpp"

namespace lumwright::model {
struct SolvedDraught {
  draught::Ambient ambient;
  draught::GasPath path;                     // with the leaks as shares
  draught::GasPath cold_path;                // with the leaks as the openings that they are
  std::optional<draught::Duty> hot, cold;    // with a fan
  draught::PathFlow hot_flow, cold_flow;     // with or without one
  std::optional<draught::PathFlow> fan_off;  // fire alight, fan standing; not in samples
  Rotation fan_speed;               // zero without a fan
  Voltage fan_voltage;              // zero without a fan
  std::optional<Density> fuel_piece;
  std::optional<fire::Fire> fire;
  std::optional<boiler::Boiler> boiler;
  std::optional<fire::Burning> burning;  // fire well alight
  Temperature water;               // at own-blower pressure: the hot fire is judged there
  bool measured;                   // the air flow was given
};

Outcome<SolvedDraught> solve_draught(const description::Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan,
                                     const Outcome<SolvedSupply>& supply);
}  // namespace lumwright::model
