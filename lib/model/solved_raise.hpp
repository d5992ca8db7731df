// From cold to pressure.
#pragma once
#include "boiler/fill.hpp"
#include "boiler/raise.hpp"
#include "description/build.hpp"
#include "model/inputs.hpp"
#include "model/outcome.hpp"

namespace lumwright::model {
/// From cold to pressure, everything coupled.
struct SolvedRaise {
  boiler::RaiseInput input;
  boiler::Raise raise;
  boiler::Fill fill;  // how much of the boiler the water takes
  Duration within;  // that the owner will wait
};

Outcome<SolvedRaise> solve_raise(const description::Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan,
                                 const Outcome<SolvedSupply>& supply, const Outcome<SolvedDraught>& draught);
/// What the raise of a solved draught is made of. The description must state the water.
boiler::RaiseInput raise_input(const description::Build& build, Inputs& inputs, const SolvedDraught& draught,
                               const Outcome<SolvedFan>& fan, const Outcome<SolvedSupply>& supply);
}  // namespace lumwright::model
