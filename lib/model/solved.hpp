// The solved model that every check looks at: each part as far as the description allows. What a part holds is in a header
// of its own: a check includes those that it asks.
#pragma once
#include "description/build.hpp"
#include "description/page_units.hpp"
#include "model/inputs.hpp"
#include "model/outcome.hpp"
#include "model/result.hpp"
#include "quantity/format.hpp"

namespace lumwright::model {
struct Solved {
  const description::Build& build;
  Inputs inputs;
  UnitSystem units = UnitSystem::as_written;  // for the sentences of the checks
  description::PageUnits page{};              // the same, kind by kind; samples do without
  std::vector<Result> results{};              // of the page, with their bands, once they are known
  bool spread_tried = false;  // every spread is tried in many samples: checks keep no reserve of their own for it
  Outcome<SolvedFan> fan{};
  Outcome<SolvedSupply> supply{};
  Outcome<SolvedDraught> draught{};
  Outcome<SolvedFit> fit{};
  Outcome<SolvedRaise> raise{};
  Part<SolvedLightUps> light_ups{};  // with a supply
  Outcome<FanUnit> unit{};                    // of the build as it stands; samples do without
  Duration light_up =
      0.0 *
      unit::s;  // one, from cold to own-blower pressure; as long as the owner will wait where the raise is not known
};

/// Solves everything that can be solved, in the order in which the parts need each other.
/// A tuning must outlive it.
Solved solve(const description::Build& build, Draw draw = {}, const Tuning* tuning = nullptr);

/// One of many samples, without the light-ups; without the raise, too, where only what is cold is asked.
enum class SampleReach { cold, fire };
Solved solve_sample(const description::Build& build, Draw draw, SampleReach reach, const Tuning* tuning = nullptr);

/// The same without the raise and the light-ups, which are most of the work.
Solved solve_cold(const description::Build& build, const Tuning* tuning = nullptr);
}  // namespace lumwright::model
