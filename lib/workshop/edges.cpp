#include "workshop/edges.hpp"
#include "data/shop_rules.hpp"
#include "quantity/require.hpp"
#include "workshop/hole_circle.hpp"

namespace lumwright::workshop {
namespace {
// source and standing are those of the limit that is broken, or of the wish that is met
template <class Q>
MetalLeft judged(Length has, Length unit, const data::Rule<Q>& low, const data::Rule<Q>& wish, Q one) {
  const Length least = low.value.value / one * unit, prefer = wish.value.value / one * unit;
  // a hole set out exactly at the limit must not fail by the last bit
  const auto below = [&](Length limit) { return has < limit - 1e-9 * mm; };
  const Room room = below(least) ? Room::too_little : below(prefer) ? Room::tight : Room::enough;
  const auto& rule = room == Room::too_little ? low : wish;
  return {room, has, least, prefer, rule.basis};
}
MetalLeft by_diameters(Length has, Length hole, const char* least, const char* preferred) {
  require_above_zero("hole", hole, "mm");
  return judged(has, hole, data::shop_number(least), data::shop_number(preferred), 1.0);
}
}  // namespace

Length edge_to_rim(const RimEdge& plate) { return 0.5 * (plate.outside - plate.pitch_circle); }
Length web_to_opening(const OpeningWeb& web) { return web.from_centre - 0.5 * web.opening - 0.5 * web.hole; }

MetalLeft judge_edge(Length centre_to_edge, Length hole) {
  return by_diameters(centre_to_edge, hole, "edge least", "edge preferred");
}
MetalLeft judge_pitch(Length centre_to_centre, Length hole) {
  return by_diameters(centre_to_centre, hole, "pitch least", "pitch preferred");
}
MetalLeft judge_web(Length web) {
  return judged(web, 1.0 * mm, data::shop_length("web least"), data::shop_length("web preferred"), 1.0 * mm);
}
}  // namespace lumwright::workshop
