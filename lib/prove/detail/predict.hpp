// What the instruments would show on a unit that was solved.
#pragma once
#include "data/proofs.hpp"
#include "draught/fan.hpp"
#include "model/solved.hpp"
#include "prove/detail/suppose.hpp"
#include <limits>
#include <optional>
#include <vector>

namespace lumwright::prove {
constexpr double not_predicted = std::numeric_limits<double>::quiet_NaN();

/// Free area of the fan's outlet: as measured, else by the table of fans; nothing where neither knows it.
std::optional<Area> outlet_of(const model::Solved& solved, std::optional<Area> measured);

struct PredictionOf {
  const model::Solved& solved;
  const Supposed& supposed;
  std::optional<Area> outlet;
  double unevenness;  // of the cells, 0 to 1 of what is usual; zero: all alike
};
/// SI, in the order of data::proofs(); of the paper the suction of the firebox. What cannot be told is not_predicted.
/// Without the raise there is no gas.
std::vector<double> predicted(const PredictionOf& of);

/// Suction behind a cap over the tube, the fan at that speed and the bleed holes taped: what the fan holds while the
/// air that it draws comes in through `leak`, as through a sharp-edged hole. Area not below zero.
Pressure capped_suction(const draught::RunningFan& fan, Area leak, Density density);

/// Why a reading of the unit as planned is not predicted, with the key that would change it; of a predicted one
/// nothing.
std::string why_not_predicted(const data::ProofRow& row, const PredictionOf& planned);
}  // namespace lumwright::prove
