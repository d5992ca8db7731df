#include "model/detail/tube_hole.hpp"
#include "data/fillers.hpp"
#include <algorithm>

namespace lumwright::model {
namespace {
TubeHole brazed(const TubeToJoin& joint, const ShopSteps& steps) {
  workshop::BrazedJoint parts{joint.outside, joint.outside, joint.tube, joint.flange, data::filler("Ag 155")};
  const auto hole_for = [&](Length outside) {
    workshop::BrazedJoint one = parts;
    one.tube = one.hole = exactly(outside);
    return workshop::braze_gap(one).hole_to_bore;
  };
  // It must go in cold with room for the flux, whatever heat opens.
  const Length enters = data::shop_length("flux gap").value.value;
  const auto wanted = [&](Length outside, Length asked) { return std::max(asked, outside + 2.0 * enters); };
  const workshop::Limits limits{wanted(joint.outside.high, hole_for(joint.outside.high).low),
                                hole_for(joint.outside.low).high};
  const Length usual = wanted(joint.outside.value, hole_for(joint.outside.value).value);
  const bool told = limits.least < limits.most;  // else the tube is not known well enough for one hole
  const Length hole =
      told ? workshop::told_in_steps(std::clamp(usual, limits.least, limits.most), limits, {steps.turned, steps.fitted})
           : in_steps(usual, steps.fitted);
  parts.hole = exactly(hole);
  parts.tube = exactly(joint.outside.value);
  return {hole, told ? std::optional(limits) : std::nullopt, workshop::braze_gap(parts)};
}
TubeHole within(const workshop::Limits& limits, const ShopSteps& steps) {
  if (!(limits.least < limits.most))
    return {in_steps(0.5 * (limits.least + limits.most), steps.fitted), std::nullopt, {}};
  return {
      workshop::told_in_steps(0.5 * (limits.least + limits.most), limits, {steps.turned, steps.fitted}), limits, {}};
}
}  // namespace

TubeHole tube_hole(const TubeToJoin& joint, const ShopSteps& steps) {
  const Band<Length>& outside = joint.outside;
  if (joint.joint == "silver braze") return brazed(joint, steps);
  if (joint.joint == "soft solder")
    return within({outside.high + 2.0 * data::shop_length("solder gap least").value.value,
                   outside.low + 2.0 * data::shop_length("solder gap most").value.value},
                  steps);
  if (joint.joint == "press fit")
    return within({outside.high * (1.0 - data::shop_number("press most").value.value),
                   outside.low * (1.0 - data::shop_number("press least").value.value)},
                  steps);
  return {outside.value, {}, {}};  // a thread is cut to the tube in hand
}
}  // namespace lumwright::model
