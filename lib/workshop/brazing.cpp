#include "workshop/brazing.hpp"
#include "data/shop_rules.hpp"
#include "matter/metal.hpp"
#include "workshop/require.hpp"
#include <algorithm>

namespace lumwright {
namespace {
bool is_iron(const data::MetalRow& metal) {
  constexpr std::string_view irons[] = {"steel", "stainless", "ferritic stainless", "cast iron", "tinplate"};
  return std::find(std::begin(irons), std::end(irons), metal.name) != std::end(irons);
}
// the tin coat is meant to run when it is soft-soldered: the sheet under it counts
Temperature solidus(const data::MetalRow& of, data::FillerKind kind) {
  const data::MetalRow& metal =
      of.name == "tinplate" && kind == data::FillerKind::soft ? lumwright::metal("steel") : of;
  if (!metal.solidus) throw ModelError("the solidus of `" + metal.name + "` is not known");
  return *metal.solidus;
}
Gap judged(const Band<Length>& hot, Length least, Length most) {
  if (hot.low < 0.0 * mm) return Gap::interference;
  if (hot.low < least) return Gap::too_tight;
  return hot.high > most ? Gap::too_wide : Gap::right;
}
}  // namespace

BrazeGap braze_gap(const BrazedJoint& joint) {
  require_band("tube outside diameter", joint.tube);
  require_band("hole for the tube", joint.hole);
  const Temperature at = joint.filler.liquidus;
  const double tube = 1.0 + linear_strain(joint.tube_metal, at), plate = 1.0 + linear_strain(joint.plate_metal, at);
  const StrainRange tubes = strain(joint.tube_metal, at), plates = strain(joint.plate_metal, at);
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

Length gap_closed_by_heat(const SharedHeat& heat) {
  require_above_zero("diameter of the joint", heat.diameter);
  return heat.diameter * (linear_strain(heat.tube_metal, heat.at) - linear_strain(heat.plate_metal, heat.at));
}

JointVerdict joint_verdict(const JointHeat& heat) {
  const TemperatureRise needed = data::shop_rise("filler below parent").value.value;
  const Temperature limit = heat.filler.solidus - data::shop_rise("solder below solidus").value.value;
  const Temperature work =
      std::min(solidus(heat.tube_metal, heat.filler.kind), solidus(heat.plate_metal, heat.filler.kind));
  const TemperatureRise reserve = work - heat.filler.liquidus;
  return {.melt_reserve = reserve,
          .melt_reserve_needed = needed,
          .limit = limit,
          .use_reserve = limit - heat.in_use,
          .melts_the_work = reserve < needed,
          .eaten_by_sulphur = heat.filler.not_in_sulphur && heat.sulphurous_gas,
          .brittle_on_iron = heat.filler.not_on_iron && (is_iron(heat.tube_metal) || is_iron(heat.plate_metal)),
          .too_hot_in_use = heat.in_use > limit};
}

Length least_lap(const LapOf& lap) {
  require_above_zero("tube wall", lap.tube_wall);
  require_above_zero("thickness of the plate", lap.plate);
  return data::shop_number("lap over wall").value.value * std::min(lap.tube_wall, lap.plate);
}
}  // namespace lumwright
