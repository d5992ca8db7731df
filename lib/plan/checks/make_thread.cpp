#include "model/fan_unit.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_make_thread(const model::Solved& solved) {
  if (!solved.unit.impossible.empty()) return unsolved(solved.unit);  // on behalf of every check of the unit
  if (!solved.unit || !solved.unit->flange || !solved.unit->flange->screws) return std::nullopt;
  const model::MadeFlange& flange = *solved.unit->flange;
  const model::FlangeScrews& screws = *flange.screws;
  const workshop::ThreadHold& hold = screws.hold;
  Finding f;
  f.verdict = Verdict::pass;  // nuts hold in any plate
  const Length enough = hold.prefer * (1.0 - 1e-9);  // a plate cut to the very size must not fail by the last bit
  if (screws.tapped)
    judge_by(f, measure(solved, flange.thickness), {Bound::at_least, AnyQuantity(enough), std::nullopt});
  f.why = fmt::format("{} in {} of {} has {} full threads and is {} diameters long; {} {}", screws.thread.name,
                      say(solved, flange.thickness), flange.metal.name, format_number(hold.full_threads, 2),
                      format_number(hold.over_major, 2), say(solved, hold.prefer),
                      flange.thickness < enough ? "would be better" : "is enough");
  if (screws.tapped) f.why += fmt::format("; drill {} to tap", say(solved, screws.drill));
  if (!screws.tapped) f.why += "; that is too little to tap";
  if (!screws.tapped)
    f.action = fmt::format("do not tap it: drill {} right through and use nuts", say(solved, screws.drill));
  else if (f.verdict == Verdict::watch)
    f.action = "tap it with care and do not force the screws, or use nuts behind the flange";
  f.basis = hold.basis;
  f.formula = "plate / pitch, at least three threads; plate / major diameter by metal";
  f.terms = {computed(solved, "t", "plate", flange.thickness), computed(solved, "p", "pitch", screws.thread.pitch),
             computed(solved, "d", "major diameter", screws.thread.major),
             computed(solved, "L_s", "length that breaks the screw before it strips", hold.strip_safe)};
  return f;
}
}  // namespace

Check make_thread() {
  return {"make.thread",
          "Threads of the flange",
          "Does the flange give its screws enough thread?",
          judge_make_thread,
          nullptr,
          false};
}
}  // namespace lumwright::plan
