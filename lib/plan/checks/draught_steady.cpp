#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::string why(const model::Solved& solved, const draught::Duty& duty) {
  const std::string at =
      fmt::format("the fan works at {} of its free-air flow", say_share(solved, duty.free_air_share));
  if (duty.several)
    return at + fmt::format(", and {} flows satisfy the balance: it may settle at a lower one", duty.crossings.size());
  if (duty.stall == draught::StallZone::unsteady)
    return at + ", where an axial fan stalls and recovers: expect noise and a wandering U-tube";
  if (duty.stall == draught::StallZone::stalled)
    return at +
           ", where an axial fan is stalled: steady but noisy, and only the shut-off pressure of the sheet can be "
           "trusted";
  return at + ", clear of stall";
}
std::optional<Finding> judge_draught_steady(const model::Solved& solved) {
  if (!solved.draught) return unsolved(solved.draught);
  if (!solved.draught->hot) return std::nullopt;  // the flow was measured: there is no fan to judge
  const draught::Duty& duty = *solved.draught->hot;
  Finding f;
  f.value = measure(solved, duty.free_air_share);
  f.value->unit = "%";
  if (const data::FanStall* stall = data::fan_stall(solved.fan->label.kind)) {
    judge_by(f, *f.value, {Bound::at_least, AnyQuantity(stall->to), std::nullopt});
    f.terms.push_back(computed(solved, "q_1", "stall begins below this share", stall->from));
    f.terms.push_back(computed(solved, "q_2", "clear of stall above this share", stall->to));
    f.basis = stall->basis;
  } else {
    f.basis.source = "centrifugal fans keep a falling curve";
    f.basis.standing = data::Standing::memory;
    f.verdict = Verdict::pass;
  }
  if (duty.several && f.verdict == Verdict::pass) {  // clear of stall, and yet it may settle elsewhere
    f.verdict = Verdict::watch;
    f.limit.reset();
  }
  f.why = why(solved, duty);
  if (f.verdict == Verdict::watch)
    f.action = "count on the shut-off pressure alone; a centrifugal fan of the same power is steadier on this duty";
  f.formula = "share = flow at the fan / free-air flow at the same speed";
  f.terms.push_back(computed(solved, "V", "flow at the fan", duty.flow.fan_volume));
  f.terms.push_back(computed(solved, "q", "share of free-air flow", duty.free_air_share));
  return f;
}
}  // namespace

Check draught_steady() {
  return {"draught.steady", "Is the fan steady there",
          "Does the fan work in its stalled region, or at one of several points?", judge_draught_steady};
}
}  // namespace lumwright::plan
