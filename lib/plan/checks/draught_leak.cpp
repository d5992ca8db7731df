#include "data/limits.hpp"
#include "model/solved_draught.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "plan/u_tube.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
std::optional<Finding> judge_draught_leak(const model::Solved& solved) {
  if (!solved.draught) return unsolved(solved.draught);
  const draught::PathFlow& hot = solved.draught->hot_flow;
  if (!solved.draught->path.annulus) return std::nullopt;
  const double share = hot.annulus / hot.chimney;
  static const double usual = data::limit<double>("draught.leak usual"),
                      heavy = data::limit<double>("draught.leak heavy");
  Finding f;
  judge_by(f, {AnyQuantity(share), "%"}, {Bound::at_most, AnyQuantity(usual), AnyQuantity(heavy)});
  f.why = fmt::format(
      "{} of cold air leaks in round the tube, {} of what the fan draws up the chimney; it bypasses the fire",
      say(solved, hot.annulus), say_share(solved, share));
  if (f.verdict != Verdict::pass)
    f.action = "a closer tube, a longer engaged length, or a turn of heat-proof cord round the tube at the chimney top";
  f.basis.source =
      "ring gap with inlet, exit and laminar friction losses (plane Poiseuille flow), driven by the smokebox suction";
  f.basis.standing = data::Standing::derived;
  f.formula = "dp = rho v^2/2 (1.5 + f L / 2c), f = 96/Re eased by 1 + 1.5 e^2";
  f.terms = {computed(solved, "2c", "diametral gap, cold", 2.0 * solved.draught->path.annulus->radial_gap),
             computed(solved, "L", "engaged length", solved.draught->path.annulus->engaged),
             term(solved, "e", "eccentricity", "gas.annulus_eccentricity"),
             Term{"dp", "smokebox suction", on_u_tube(hot.smokebox_suction, solved.page)},
             computed(solved, "m", "leak", hot.annulus),
             computed(solved, "m_c", "gas up the chimney", hot.chimney)};
  return f;
}
}  // namespace

Check draught_leak() {
  return {"draught.leak", "Air that leaks in round the tube",
          "How much of the draught does the gap round the tube waste?", judge_draught_leak};
}
}  // namespace lumwright::plan
