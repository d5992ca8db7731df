#include "boiler/fill.hpp"
#include "matter/water.hpp"
#include "model/solved_raise.hpp"
#include "plan/check.hpp"
#include "plan/detail/water_level.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_raise_trapped_air(const model::Solved& solved) {
  if (!solved.raise) return unsolved(solved.raise);
  const model::SolvedRaise& r = *solved.raise;
  const bool own = r.input.own_blower.has_value();
  const char* key = own ? "engine.boiler.own_blower_from" : "engine.boiler.working";
  const GaugePressure reading = own ? *r.input.own_blower : *r.input.working;
  const Temperature shown_at = boiler::false_reading(r.fill, reading);
  const Temperature steam_at = matter::saturation_temperature(reading.above_barometer + r.fill.barometer);
  Finding f;
  f.verdict = Verdict::pass;
  f.value = measure(solved, shown_at);
  f.why = fmt::format(
      "with air left in the boiler, {} full of water at {}, the gauge would show {} at {} already; steam has that "
      "pressure at {}. Such a pressure falls away as soon as the blower is opened: keep blower or vent a little open "
      "until steam comes out of it, then close it",
      percent(r.fill.water_share, 2), say(solved, r.fill.cold), say(solved, reading), say(solved, shown_at),
      say(solved, steam_at));
  f.basis.source =
      "steam after IAPWS-IF97 and the air that was shut in, squeezed as the water swells; times here are with "
      "the air driven out";
  f.basis.standing = data::Standing::derived;
  f.formula = "p = p_sat(T) + p_air (T/T_0) (V_0/V) - barometer";
  f.terms = {
      fill_term(solved),
      computed(solved, "T_0", "water when the boiler is shut", r.fill.cold),
      term(solved, "p", "own blower from", key),
      computed(solved, "T", "where the gauge shows it with air left in", shown_at),
      computed(solved, "T_sat", "where steam alone has it", steam_at),
      computed(solved, "x_T", "share of the boiler that water fills there", boiler::water_share_at(r.fill, shown_at))};
  return f;
}
}  // namespace

Check raise_trapped_air() {
  return {"raise.trapped_air", "Air left in the boiler", "What does the gauge show if the air is not let out?",
          judge_raise_trapped_air};
}
}  // namespace lumwright::plan
