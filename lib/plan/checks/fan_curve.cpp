#include "plan/check.hpp"
#include <fmt/format.h>

namespace lumwright {
namespace {
std::optional<Finding> judge_fan_curve(const Solved& solved) {
  if (solved.draught && solved.draught->measured && !solved.fan) return std::nullopt;
  if (!solved.fan) return unsolved(solved.fan);
  const SolvedFan& fan = *solved.fan;
  Finding f;
  f.source = fan.curve.basis().sentence;
  f.standing = fan.curve.basis().standing;
  const bool sheet = fan.curve.basis().origin == CurveOrigin::data_sheet;
  f.verdict = sheet ? Verdict::pass : Verdict::watch;
  f.why =
      sheet ? "its curve is from a data sheet" : "its curve is an estimate: the pressure may be a third off either way";
  if (!sheet)
    f.action =
        "measure it: hold the fan over a box with a U-tube and read the suction with the box shut; give the points as "
        "fan.curve";
  if (fan.label.frame <= 0.0 * mm || !fan.label.rated_speed) return f;
  const FanCoefficients c = coefficients({fan.label.kind, fan.label.frame, fan.label.thickness, *fan.label.rated_speed,
                                          fan.curve.shut_off(), fan.curve.free_air()});
  const data::FanCredibility& usual = data::fan_credibility(fan.label.kind);
  f.value = measure(solved, c.psi);
  f.limit = Measure{AnyQuantity(usual.psi_reject), ""};
  f.formula = "psi = p0 / (1.2 kg/m3 u^2 / 2), u = pi n D";
  f.terms = {term(solved, "n", "rated speed", "fan.rated.speed"),
             term(solved, "frame", "frame", "fan.frame"),
             computed(solved, "u", "tip speed", c.tip_speed),
             computed(solved, "p0", "shut-off pressure", fan.curve.shut_off()),
             computed(solved, "V0", "free-air flow", fan.curve.free_air()),
             computed(solved, "psi", "pressure coefficient", c.psi),
             computed(solved, "phi", "flow coefficient", c.phi)};
  f.source += "; " + usual.source;
  if (c.verdict == Credibility::not_credible) {
    f.verdict = Verdict::fail;
    f.why = fmt::format(
        "no fan of this size and speed holds {}: its pressure coefficient would be {}, and {} is the most one can "
        "believe",
        say(solved, fan.curve.shut_off()), format_number(c.psi), format_number(usual.psi_reject));
    f.action = "check the data sheet's units and the speed, or measure the shut-off pressure";
  } else if (c.verdict == Credibility::unusual) {
    f.verdict = Verdict::watch;
    f.why += fmt::format("; its coefficients (pressure {}, flow {}) lie outside what fans of this kind usually reach",
                         format_number(c.psi), format_number(c.phi));
    if (f.action.empty()) f.action = "check the data sheet's units and the speed";
  }
  return f;
}
}  // namespace

Check fan_curve() {
  return {"fan.curve", "Can the fan's curve be believed",
          "Is the fan curve measured, and is it possible for that size and speed?", 150, judge_fan_curve};
}
}  // namespace lumwright
