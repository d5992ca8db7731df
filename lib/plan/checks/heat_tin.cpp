#include "draught/cooling.hpp"
#include "matter/metal.hpp"
#include "model/solved_draught.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
bool of_tinplate(const description::part::Box& box) {
  return box.material ? matter::metal(*box.material).name == "tinplate" : box.diameter || box.height || box.sheet;
}
std::optional<Finding> judge_heat_tin(const model::Solved& solved) {
  const description::part::Box& box = solved.build.adapter.box;
  if (!of_tinplate(box)) return std::nullopt;
  if (!solved.draught) return unsolved(solved.draught);
  const model::SolvedDraught& d = *solved.draught;
  if (!d.path.adapter) return lacking(solved.build.adapter.tube.outside, solved.build.adapter.tube.length);
  if (!d.path.box) {
    std::vector<std::string> missing;
    note_missing(box.diameter, missing);
    note_missing(box.height, missing);
    return lacking_keys(std::move(missing));
  }
  const data::MetalRow& tin = matter::metal("tinplate");
  const Temperature runs = *tin.solidus, gas = d.hot_flow.adapter_exit_gas;
  const Temperature wall = draught::box_conductance(*d.path.box->wall, d.hot_flow.fan_gas, d.ambient.temperature).wall;
  Finding f;
  judge_by(f, measure(solved, gas), {Bound::at_most, AnyQuantity(runs), std::nullopt});
  and_by(f, measure(solved, wall), {Bound::at_most, AnyQuantity(runs), AnyQuantity(runs)});
  f.why = fmt::format("gas enters the box at {} and the walls of the box come to {}; the coat of tin melts at {}",
                      say(solved, gas), say(solved, wall), say(solved, runs));
  if (f.verdict == Verdict::watch)
    f.action =
        "keep the tin off the tube: let a flange of bare metal carry it, with a ring of gasket between, and burn the "
        "lacquer off out of doors first";
  if (f.verdict == Verdict::fail) f.action = "make the box of brass, bare steel or stainless";
  f.basis.source = tin.basis.source + "; wall between free convection inside and out and radiation, a factor of two";
  f.basis.standing = tin.basis.standing;
  f.formula = "wall: h_in (T_gas - T_w) = (h_out + h_rad) (T_w - T_room)";
  f.terms = {computed(solved, "T_t", "gas at the end of the adapter tube", gas),
             computed(solved, "T_gas", "gas in the box", d.hot_flow.fan_gas),
             computed(solved, "T_w", "wall of the box", wall), term(solved, "T_room", "air", solved.build.place.air)};
  return f;
}
}  // namespace

Check heat_tin() { return {"heat.tin", "Tin coat of the box", "Does the tin on the box melt?", judge_heat_tin}; }
}  // namespace lumwright::plan
