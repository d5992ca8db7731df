// The light-ups that one charge gives.
#pragma once
#include "boiler/light_ups_lived.hpp"
#include "model/outcome.hpp"

namespace lumwright::model {
/// Light-ups of one charge, one after the other.
struct SolvedLightUps {
  int count;
  Duration first, last;        // how long they take; alike where the fan's voltage is held
  boiler::LightUpsEnd end;     // why there is no further one
  std::vector<Duration> ends;  // of the fan's running time, of the first ones of them
};
constexpr int most_light_ups_kept = 400;

struct Solved;
/// Lives through the light-ups of one charge; nothing without a supply. Everything else must be solved.
Part<SolvedLightUps> solve_light_ups(const Solved& solved);
}  // namespace lumwright::model
