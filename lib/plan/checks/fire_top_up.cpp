#include "data/limits.hpp"
#include "fire/burning_bed.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_raise.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_fire_top_up(const model::Solved& solved) {
  if (!solved.draught) return unsolved(solved.draught);
  if (!solved.raise) return unsolved(solved.raise);
  const model::SolvedRaise& r = *solved.raise;
  static const double share = data::limit<double>("fire.top_up share");
  const Mass bed = r.input.fire.input().bed;
  const MassFlow burning = solved.draught->burning->fuel;
  const Duration interval = fire::top_up_interval(bed, burning);
  const boiler::RaiseEvent* over = r.raise.find(boiler::RaiseEventKind::own_blower);
  const Mass burnt = (over ? over->account : r.raise.account).fuel;
  if (!over && r.raise.end != boiler::RaiseEnd::pressure) return std::nullopt;  // it is fed for nothing
  const char* until = over ? "until the engine's own blower takes over" : "until there is working pressure";
  Finding f;
  judge_by(f, measure(solved, burnt), {Bound::at_most, AnyQuantity(share * bed), std::nullopt});
  const std::string burns =
      fmt::format("well alight the fire burns {} of the {} on the grate, half of it in {}; {} {} is burnt",
                  say(solved, burning), say(solved, bed), roughly(solved, interval), until, say(solved, burnt));
  f.why = burns + (burnt > bed           ? ", more than lies there at first"
                   : burnt > share * bed ? ", more than half, and a bed of under half its depth lets air slip through"
                                         : ": it lasts without topping up");
  if (f.verdict == Verdict::watch)
    f.action = fmt::format("put on half a bed, {}, every {} once the fire is bright, a little at a time",
                           say(solved, share * bed), roughly(solved, interval));
  f.basis.source = "fuel that the air can burn, well alight; top up when half of the bed is gone (common practice)";
  f.basis.standing = data::Standing::derived;
  f.formula = "t = m_bed / (2 m_f)";
  f.terms = {term(solved, "m_bed", "fuel on the grate", solved.build.fuel.bed_mass),
             computed(solved, "m_f", "fuel burnt in time, well alight", burning),
             computed(solved, "t", "half of it is gone in", interval),
             computed(solved, "m", std::string("burnt ") + until, burnt)};
  return f;
}
}  // namespace

Check fire_top_up() {
  return {"fire.top_up", "How often to top up the fire", "Does the fire last until the engine's own blower takes over?",
          judge_fire_top_up};
}
}  // namespace lumwright::plan
