#include "workshop/brazing.hpp"
#include "data/shop_rules.hpp"
#include "matter/metal.hpp"
#include "quantity/require.hpp"
#include <algorithm>

namespace lumwright::workshop {
namespace {
Gap judged(const Band<Length>& hot, Length least, Length most) {
  if (hot.low < 0.0 * mm) return Gap::interference;
  if (hot.low < least) return Gap::too_tight;
  return hot.high > most ? Gap::too_wide : Gap::right;
}
}  // namespace

BrazeGap braze_gap(const BrazedJoint& joint) {
  require_band("tube outside diameter", joint.tube, "mm");
  require_band("hole for the tube", joint.hole, "mm");
  const Temperature at = joint.filler.liquidus;
  const double tube = 1.0 + matter::linear_strain(joint.tube_metal, at),
               plate = 1.0 + matter::linear_strain(joint.plate_metal, at);
  const matter::StrainRange tubes = matter::strain(joint.tube_metal, at),
                            plates = matter::strain(joint.plate_metal, at);
  const Band<Length> cold = {0.5 * (joint.hole.value - joint.tube.value), 0.5 * (joint.hole.low - joint.tube.high),
                             0.5 * (joint.hole.high - joint.tube.low)};
  const Band<Length> hot = {0.5 * (joint.hole.value * plate - joint.tube.value * tube),
                            0.5 * (joint.hole.low * (1.0 + plates.least) - joint.tube.high * (1.0 + tubes.most)),
                            0.5 * (joint.hole.high * (1.0 + plates.most) - joint.tube.low * (1.0 + tubes.least))};
  const Length least = data::shop_length("braze gap least").value.value,
               most = data::shop_length("braze gap most").value.value;
  const auto hole_for = [&](Length gap) -> Length { return (joint.tube.value * tube + 2.0 * gap) / plate; };
  return {.cold = cold,
          .hot = hot,
          .closes = 2.0 * (cold.value - hot.value),
          .least = least,
          .most = most,
          .hole_to_bore = {hole_for(0.5 * (least + most)), hole_for(least), hole_for(most)},
          .gap = judged(hot, least, most)};
}
}  // namespace lumwright::workshop
