// Fan and gas path as curves over the flow, cold and hot: the picture in which the operating point lies.
#pragma once
#include "draught/gas_path.hpp"
#include "model/solved.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include <vector>

namespace lumwright::plan {
struct FlowPoint {
  VolumeFlow flow;  // at the fan's inlet
  Pressure pressure;
};
/// Between which pressures eight samples of ten lie at one flow. `high` is missing where more than one sample in ten
/// asks for more than the picture shows.
struct FlowBand {
  VolumeFlow flow;
  Pressure low;
  std::optional<Pressure> high;
};
struct DraughtState {
  Temperature gas;                  // at the fan
  std::vector<FlowPoint> fan;       // what the fan holds; empty without a fan
  std::vector<FlowPoint> path;      // what the gas path asks for
  FlowPoint at;                     // where the two meet
  std::vector<FlowPoint> others;    // where they meet besides: the fan may settle there
  std::vector<draught::ElementLoss> losses;  // in the order of the flow
  Pressure natural_draught;
};
struct StallFlows {
  VolumeFlow from, to;  // between these an axial fan stalls and recovers; below, it is stalled
};
struct DraughtCurves {
  DraughtState hot, cold;
  std::optional<StallFlows> stall;
  VolumeFlow widest;                          // flow up to which the curves reach: free air, where there is a fan
  Pressure highest;                           // pressure up to which they matter
  std::vector<FlowBand> fan_band, path_band;  // hot; empty when no samples were tried
};

/// Follows the gas path at prescribed flows; some 5 ms. The hot fan curve is that of the gas at the operating point.
/// Throws ModelError as the gas path does.
DraughtCurves draught_curves(const model::SolvedDraught& draught, const model::Outcome<model::SolvedFan>& fan);
}  // namespace lumwright::plan
