#include "data/monoxide.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_raise.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
/// Nothing without a fire.
std::optional<double> lumps_of(const model::Solved& solved) {
  const model::Input *bed = solved.inputs.find("fuel.bed"), *lump = solved.inputs.find("fuel.lump");
  if (!solved.draught || !solved.draught->fire || bed == nullptr || lump == nullptr) return std::nullopt;
  return bed->value.si / lump->value.si;
}
TwoLimits limits_of(double lumps) {
  const data::DepthInLumps& depth = data::depth_in_lumps();
  return lumps < depth.good ? TwoLimits{Bound::at_least, AnyQuantity(depth.least), AnyQuantity(depth.thin)}
                            : TwoLimits{Bound::at_most, AnyQuantity(depth.most), AnyQuantity(depth.deep)};
}
bool depth_holds(const model::Solved& solved) {
  const auto lumps = lumps_of(solved);
  if (!lumps) return solved.draught.missing.empty() && solved.draught.impossible.empty();
  Finding f;
  judge_by(f, model::Measure{AnyQuantity(*lumps), ""}, limits_of(*lumps));
  return f.verdict != Verdict::fail;
}
/// What a fire of the advised depth would do, solved again with nothing else changed.
std::string good_depth(const model::Solved& solved) {
  const data::DepthInLumps& depth = data::depth_in_lumps();
  const Length lump = solved.inputs.find("fuel.lump")->value.si * m, bed = solved.inputs.find("fuel.bed")->value.si * m;
  const Length better = depth.good * lump;
  std::string words = fmt::format("make the fire {} deep, {} lumps, or burn lumps of {}", say(solved, better),
                                  format(AnyQuantity(depth.good), "", 2), say(solved, bed / depth.good));
  const model::Input* heat = solved.inputs.find("tuned.heat");
  if (!solved.raise || heat == nullptr || heat->origin == model::Origin::tuned) return words;
  description::Build changed = solved.build;
  changed.fuel.bed = {.band = exactly(better)};
  changed.fuel.bed_mass = {};  // it was that of the other depth
  const auto before = solved.raise->raise.time_of(boiler::RaiseEventKind::own_blower);
  const model::Solved again = model::solve(changed);
  const auto after = again.raise ? again.raise->raise.time_of(boiler::RaiseEventKind::own_blower) : std::nullopt;
  if (before && after)
    words += fmt::format("; with that depth steam takes {} in place of {}", say(solved, *after), say(solved, *before));
  return words;
}
std::optional<Finding> judge_fire_depth(const model::Solved& solved) {
  if (!solved.draught) return unsolved(solved.draught);
  const data::DepthInLumps& depth = data::depth_in_lumps();
  const auto found = lumps_of(solved);
  if (!found) return std::nullopt;
  const double lumps = *found;
  Finding f;
  judge_by(f, model::Measure{AnyQuantity(lumps), ""}, limits_of(lumps));
  f.why = fmt::format("the fire is {} lumps deep", format_number(lumps));
  if (lumps < depth.least)
    f.why += ": oxygen slips through between the lumps, and the gas is cold";
  else if (lumps > depth.most)
    f.why += ": carbon monoxide takes over in the upper part, which is heat lost and a poison";
  else
    f.why += "; the air's oxygen is used up in two or three, and carbon monoxide takes over beyond five or six";
  if (f.verdict != Verdict::pass) f.action = good_depth(solved);
  f.basis = depth.basis;
  f.formula = "N = H / d";
  f.terms = {term(solved, "H", "depth of the fire", solved.build.fuel.bed),
             term(solved, "d", "lump", solved.build.fuel.lump),
             term(solved, "L", "heat lost with carbon monoxide", solved.build.fuel.carbon_monoxide_share)};
  return f;
}
}  // namespace

Check fire_depth() {
  return {"fire.depth", "Depth of the fire in lumps", "Is the fire too thin for the air, or deep enough to make gas?",
          judge_fire_depth, depth_holds};
}
}  // namespace lumwright::plan
