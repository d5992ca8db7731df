// Carbon monoxide by the depth of the fire, and which depths a fire should have.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
struct MonoxideRow {
  double lumps;       // depth of the fire over the size of its lumps
  Band<double> loss;  // share of the heat
  Basis basis{};
};
/// By rising depth.
const std::vector<MonoxideRow>& monoxide_shares();

struct OverFireAir {
  double leak;   // share of the engine's air past the bed for which the rows stand
  double power;  // with another they go with the bed's share of the air to this
  double most;   // of the heat
  Basis basis{};
};
const OverFireAir& over_fire_air();

struct DepthInLumps {
  double thin, least, good, most, deep;
  Basis basis{};
};
const DepthInLumps& depth_in_lumps();
}  // namespace lumwright::data
