#include "model/fan_unit.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
/// Under the lid, or under the fan that hangs there.
Length room_inside(const model::FanUnit& unit) {
  const bool hangs = unit.fan && unit.fan->inside && unit.fan->thickness;
  return unit.box->height - (hangs ? *unit.fan->thickness : 0.0 * mm);
}
std::optional<Finding> judge_make_tube(const model::Solved& solved) {
  if (!solved.unit || !solved.unit->tube || !solved.unit->tube->engaged || !solved.unit->box) return std::nullopt;
  const model::FanUnit& unit = *solved.unit;
  const model::MadeTube& tube = *unit.tube;
  const Length under = model::box_levels(unit).inside, room = room_inside(unit);
  const Length stands = tube.length - *tube.engaged - under;
  if (stands <= 0.0 * mm) return std::nullopt;
  const bool inside = unit.fan && unit.fan->inside;
  Finding f;
  const AnyQuantity most(room);
  judge_by(f, measure(solved, stands), {Bound::at_most, most, most});
  f.why = fmt::format("{} of the tube stand up inside the box, where {} are free below the {}", say(solved, stands),
                      say(solved, room), inside ? "fan" : "lid");
  if (f.verdict == Verdict::fail)
    f.action =
        fmt::format("cut the tube to less than {}, or make the box higher", say(solved, *tube.engaged + under + room));
  f.basis = {data::Standing::derived, "what is described: lengths of tube, flange and box"};
  f.formula = "length - engaged - flange - sheet <= height of the box, less a fan that hangs in it";
  f.terms = {
      computed(solved, "l", "length of the tube", tube.length), computed(solved, "e", "in the chimney", *tube.engaged),
      computed(solved, "u", "flange and bottom of the box", under), computed(solved, "h", "free in the box", room)};
  return f;
}
}  // namespace

Check make_tube() {
  return {"make.tube", "The tube in the box", "Does the tube end below the lid and the fan?", judge_make_tube};
}
}  // namespace lumwright::plan
