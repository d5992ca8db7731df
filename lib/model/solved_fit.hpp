// How the tube sits in the chimney, cold and hot, and what stock would.
#pragma once
#include "description/build.hpp"
#include "model/inputs.hpp"
#include "model/outcome.hpp"
#include "workshop/fit_limits.hpp"
#include "workshop/stock.hpp"

namespace lumwright::model {
struct SolvedFit {
  workshop::FitInput input;
  workshop::Fit fit;
  std::vector<workshop::StockTube> stock;  // samples do without
  workshop::FitLimits limits{};            // of what is still to be made; samples do without
};

/// How far the tube goes in: as written, else as far as tube and chimney allow; nothing where those are not known.
std::optional<Length> engaged_length(const description::Build& build, Inputs& inputs);
Outcome<SolvedFit> solve_fit(const description::Build& build, Inputs& inputs, const Outcome<SolvedDraught>& draught);
}  // namespace lumwright::model
