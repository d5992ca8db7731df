// How full of water the boiler is when the fire is lit, as checks show it.
#pragma once
#include "model/solved_raise.hpp"
#include "plan/check.hpp"

namespace lumwright::plan {
/// The share that cold water takes: of what the boiler holds where that is written, else a usual glass.
/// The raise must be solved.
inline Term fill_term(const model::Solved& solved) {
  const char* const meaning = "water in the cold boiler, of what it holds";
  if (solved.inputs.find("engine.boiler.volume") == nullptr) return term(solved, "x", meaning, "raise.fill");
  return {"x", meaning, {AnyQuantity(solved.raise->fill.water_share), "%"}};
}
}  // namespace lumwright::plan
