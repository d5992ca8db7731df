#include "data/limits.hpp"
#include "model/solved_draught.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "plan/figures.hpp"
#include "plan/u_tube.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
// Half a millimetre is what a U-tube can be read to: below four times that the reading says little.
// An inclined one, 1 in 10, reads a tenth of that.
constexpr double inclined = 0.1;

std::optional<Finding> judge_draught_cold(const model::Solved& solved) {
  if (!solved.draught) return unsolved(solved.draught);
  const draught::PathFlow &cold = solved.draught->cold_flow, &hot = solved.draught->hot_flow;
  Finding f;
  static const Pressure readable = data::limit<Pressure>("draught.cold readable");
  judge_by(f, on_u_tube(cold.smokebox_suction, solved.page), {Bound::at_least, AnyQuantity(readable), std::nullopt});
  const auto read = [&](Pressure suction) {
    const model::Measure reading = on_u_tube(suction, solved.page);
    return u_tube_reading(reading, solved.units, figures_of(solved.results, reading, solved.units));
  };
  f.why = fmt::format(
      "before the fire is lit a U-tube on the smokebox should read {} with {} of air; alight, {} with {}, for hot "
      "gas is thin",
      read(cold.smokebox_suction), say(solved, cold.engine), read(hot.smokebox_suction), say(solved, hot.engine));
  if (f.verdict != Verdict::pass)
    f.action = cold.smokebox_suction < inclined * readable
                   ? "too little for any U-tube: hold a strip of paper to the fire-door, it must be drawn in"
                   : "use an inclined U-tube (1 in 10): a straight one reads to about half a millimetre";
  f.basis.source = "same gas path with everything at room temperature, leaks as the openings they are";
  f.basis.standing = data::Standing::derived;
  f.formula = "suction = sum of losses from ash-pan to smokebox, less natural draught";
  f.terms = {Term{"p_c", "smokebox suction, cold", on_u_tube(cold.smokebox_suction, solved.page)},
             computed(solved, "m_c", "air, cold", cold.engine),
             Term{"p_h", "smokebox suction, fire alight", on_u_tube(hot.smokebox_suction, solved.page)},
             computed(solved, "m_h", "air, fire alight", hot.engine),
             computed(solved, "V_c", "fan's flow, cold", cold.fan_volume)};
  return f;
}
}  // namespace

Check draught_cold() {
  return {"draught.cold", "The cold test", "What should a U-tube read before the fire is lit?", judge_draught_cold};
}
}  // namespace lumwright::plan
