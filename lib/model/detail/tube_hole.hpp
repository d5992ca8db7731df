// The hole of the flange for the tube, by the way they are joined.
#pragma once
#include "model/fan_unit.hpp"
#include "model/shop_steps.hpp"

namespace lumwright::model {
struct TubeHole {
  Length hole;
  std::optional<workshop::Limits> limits;  // nothing for a thread
  std::optional<workshop::BrazeGap> gap;   // when silver brazed
};
struct TubeToJoin {
  Band<Length> outside;
  data::MetalRow tube, flange;
  std::string joint;
};
/// Silver braze by `workshop::braze_gap`, soft solder and press fit by the shop's rules, told in the steps of the
/// lathe. Throws as `braze_gap` does.
TubeHole tube_hole(const TubeToJoin& joint, const ShopSteps& steps);
}  // namespace lumwright::model
