#include "data/kindling.hpp"
#include "plan/check.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_fire_start(const model::Solved& solved) {
  const description::part::Fuel& fuel = solved.build.fuel;
  if (!fuel.kind || !data::needs_bright_charcoal(*fuel.kind)) return std::nullopt;
  const bool bright = fuel.started_on && *fuel.started_on == data::bright_charcoal;
  Finding f;
  f.verdict = bright ? Verdict::pass : fuel.started_on ? Verdict::fail : Verdict::watch;
  f.why = fmt::format("{} does not light from cold, and put on too early it kills the fire; ", *fuel.kind);
  if (bright)
    f.why += "it is to be put on charcoal that glows bright";
  else if (fuel.started_on)
    f.why += fmt::format("you light it on {}, which does not glow long and hot enough", *fuel.started_on);
  else
    f.why += "what it is lit on is not said, and bright charcoal is taken";
  if (!bright)
    f.action =
        "raise a bed of charcoal until it glows bright all over, then put the fuel on thinly, a little at a time, and "
        "write `fuel.started_on: bright charcoal`";
  f.basis.source = "common practice, no source";
  f.basis.standing = data::Standing::practice;
  if (solved.inputs.find("fuel.catches_in"))
    f.terms = {term(solved, "t_k", "time until the whole bed burns", solved.build.fuel.catches_in)};
  return f;
}
}  // namespace

Check fire_start() {
  return {"fire.start", "What the fire is lit on", "Does this fuel catch on what it is started on?", judge_fire_start};
}
}  // namespace lumwright::plan
