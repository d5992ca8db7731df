#include "model/solved_raise.hpp"
#include "plan/check.hpp"
#include "plan/detail/rules.hpp"
#include "plan/detail/two_limits.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
const char* const more_water =
    "more water before anything is lit, to the mark of the engine's maker; never light with less";

// The sides of one question; the graver one is what is shown.
struct WaterSide {
  model::Measure value;
  TwoLimits limits;
  std::string unit;  // of the limits
  std::string why;
};
std::optional<WaterSide> by_share(const model::Solved& solved, std::vector<Term>& terms) {
  const model::Input* water = solved.inputs.find("engine.boiler.water");
  const model::Input* holds = solved.inputs.find("engine.boiler.volume");
  if (water == nullptr || holds == nullptr) return std::nullopt;
  const Rule least = rule<double>("rule.water_share_least"), low = rule<double>("rule.water_share_low");
  const double share = water->value.si / holds->value.si;
  terms.insert(terms.end(), {least.term("x_fail", "too little below this"), low.term("x_low", "to watch below this")});
  return WaterSide{{AnyQuantity(share), "%"},
                   {Bound::at_least, low.input.value, least.input.value},
                   "%",
                   fmt::format("the water fills {} of what the boiler holds", percent(share))};
}
std::optional<WaterSide> by_time(const model::Solved& solved, std::vector<Term>& terms) {
  if (!solved.raise) return std::nullopt;
  const model::SolvedRaise& r = *solved.raise;
  const boiler::RaiseEvent* event = r.raise.find(boiler::RaiseEventKind::working);
  if (event == nullptr) event = r.raise.find(boiler::RaiseEventKind::own_blower);
  if (event == nullptr) return std::nullopt;
  const MassFlow steam = boiler::evaporation(event->at);
  if (steam <= 0.0 * g_per_s) return std::nullopt;
  const Rule least = rule<Duration>("rule.water_time_least"), low = rule<Duration>("rule.water_time_low");
  const Duration half = 0.5 * r.input.boiler.water / steam;
  terms.insert(terms.end(), {computed(solved, "m", "steam with the fan left on", steam),
                             least.term("t_fail", "too little below this"), low.term("t_low", "to watch below this")});
  return WaterSide{measure(solved, half),
                   {Bound::at_least, low.input.value, least.input.value},
                   low.input.unit,
                   fmt::format("with the fan left on, this fire boils half of it away in {}", say(solved, half))};
}
std::optional<Finding> judge_raise_water(const model::Solved& solved) {
  Finding f;
  const auto share = by_share(solved, f.terms), time = by_time(solved, f.terms);
  if (!share && !time) {
    if (solved.build.engine.boiler.water && !solved.raise.missing.empty())
      return lacking(solved.build.engine.boiler.volume);
    return std::nullopt;
  }
  f.verdict = Verdict::pass;
  if (share) and_by(f, share->value, share->limits, share->unit);
  const bool too_full =
      share && and_by(f, share->value, {Bound::at_most, AnyQuantity(1.0), AnyQuantity(1.0)}, share->unit);
  const bool time_decides = time && and_by(f, time->value, time->limits, time->unit);
  f.why = time_decides ? time->why : share->why;
  if (share && time) f.why += "; " + (time_decides ? share->why : time->why);
  if (f.verdict != Verdict::pass)
    f.action =
        too_full && !time_decides ? "no boiler holds that: measure the water and the boiler once more" : more_water;
  f.basis.source =
      "share of the boiler: common practice, no source; time: heat of the fire over the latent heat of steam";
  f.basis.standing = data::Standing::estimate;
  f.formula = "x = V / V_boiler; t = M / (2 m)";
  if (share)
    f.terms.insert(f.terms.begin(),
                   term(solved, "V_boiler", "what the boiler holds", solved.build.engine.boiler.volume));
  f.terms.insert(f.terms.begin(), term(solved, "V", "water", solved.build.engine.boiler.water));
  return f;
}
}  // namespace

Check raise_water() {
  return {"raise.water", "Enough water", "Is there enough water over the fire?", judge_raise_water};
}
}  // namespace lumwright::plan
