#include "model/solved_raise.hpp"
#include "plan/check.hpp"
#include "plan/detail/never_reached.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
const char* const running_reserve =
    "What the engine then makes and uses as it runs is another matter, which lumwright does not look into";

void not_reached(const model::Solved& solved, Finding& f) {
  const model::SolvedRaise& r = *solved.raise;
  const bool taken_over = r.raise.time_of(boiler::RaiseEventKind::own_blower).has_value();
  f.why =
      fmt::format("the fan does not bring the boiler to {} by itself: {}", say(solved, *r.input.working),
                  r.raise.end == boiler::RaiseEnd::pack_stopped ? "the pack stops before" : "not within four hours");
  if (taken_over)
    f.why += fmt::format("; it need not, for the engine's own blower has taken over by then. {}", running_reserve);
  f.verdict = taken_over ? Verdict::pass : Verdict::watch;
  if (!taken_over) f.action = never_reached_advice(r.raise);
}
std::optional<Finding> judge_raise_working(const model::Solved& solved) {
  if (!solved.raise) return unsolved(solved.raise);
  const model::SolvedRaise& r = *solved.raise;
  if (!r.input.working) return lacking(solved.build.engine.boiler.working);
  Finding f;
  f.verdict = Verdict::pass;
  f.basis.source = "the same solution as the time to own-blower pressure, carried on with the fan";
  f.basis.standing = data::Standing::estimate;
  f.formula = "d(heat in water and metal)/dt = firebox + tubes - room - steam, until p_sat(T) = p_w + barometer";
  f.terms = {term(solved, "p_w", "working pressure", solved.build.engine.boiler.working)};
  const boiler::RaiseEvent* event = r.raise.find(boiler::RaiseEventKind::working);
  if (!event) {
    not_reached(solved, f);
    return f;
  }
  f.value = measure(solved, event->at.time);
  f.why = fmt::format(
      "with the fan left on, {} is reached after {} and {} of fuel; by then the engine's own blower has taken over. {}",
      say(solved, *r.input.working), roughly(solved, event->at.time), roughly(solved, event->account.fuel),
      running_reserve);
  f.terms.push_back(computed(solved, "T", "water then", event->at.water));
  f.terms.push_back(computed(solved, "m_f", "fuel burnt", event->account.fuel));
  f.terms.push_back(computed(solved, "H_w", "taken up by water and metal", event->account.absorbed));
  return f;
}
}  // namespace

Check raise_working() {
  return {"raise.working", "Minutes to working pressure", "How long until the boiler stands at working pressure?",
          judge_raise_working};
}
}  // namespace lumwright::plan
