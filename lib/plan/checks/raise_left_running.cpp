#include "model/solved_raise.hpp"
#include "plan/check.hpp"
#include "plan/detail/rules.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
const boiler::RaiseEvent* last_reached(const boiler::Raise& raise) {
  const boiler::RaiseEvent* working = raise.find(boiler::RaiseEventKind::working);
  return working ? working : raise.find(boiler::RaiseEventKind::own_blower);
}
std::optional<Finding> judge_raise_left_running(const model::Solved& solved) {
  if (!solved.raise) return unsolved(solved.raise);
  const model::SolvedRaise& r = *solved.raise;
  const boiler::RaiseEvent* event = last_reached(r.raise);
  if (!event) return std::nullopt;
  const MassFlow steam = boiler::evaporation(event->at);
  const Mass water = r.input.boiler.water;
  const Rule least = rule<Duration>("rule.water_watch");
  Finding f;
  f.basis.source = "heat that the fire then gives over the latent heat of steam; half gone in under " +
             format(least.input.value, least.input.unit) + " is to watch";
  f.basis.standing = data::Standing::estimate;
  f.formula = "m = (firebox + tubes - room) / (h_steam - h_water); t = water / (2 m)";
  f.terms = {term(solved, "M", "water", solved.build.engine.boiler.water),
             computed(solved, "p", "gauge pressure", event->at.gauge),
             computed(solved, "H", "heat to the water", event->at.heat.absorbed),
             computed(solved, "H_o", "lost to the room", event->at.heat.outside),
             computed(solved, "m", "steam", steam),
             least.term("t_min", "half of the water should last")};
  if (steam <= 0.0 * g_per_s) {
    f.verdict = Verdict::pass;
    f.why = "with the fan alone the boiler loses what it gets: no steam is made";
    return f;
  }
  const Duration half = 0.5 * water / steam;
  judge_by(f, measure(solved, half), {Bound::at_least, least.input.value, std::nullopt}, least.input.unit);
  f.why = fmt::format(
      "a fan that is left running at {} boils off {} of water: half of the {} is gone in {}, whatever the engine uses "
      "on top",
      say(solved, event->at.gauge), say(solved, steam), say(solved, water / (1000.0 * kg_per_m3)), say(solved, half));
  if (f.verdict == Verdict::watch)
    f.action = "stop the fan as soon as the engine's own blower draws, and watch the water glass until then";
  return f;
}
}  // namespace

Check raise_left_running() {
  return {"raise.left_running", "Fan left running", "How fast does the water go if nobody stops the fan?",
          judge_raise_left_running};
}
}  // namespace lumwright::plan
