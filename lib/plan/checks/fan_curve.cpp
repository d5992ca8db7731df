#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright::plan {
namespace {
std::string where_from(draught::CurveOrigin origin) {
  switch (origin) {
    case draught::CurveOrigin::data_sheet:
      return "its curve is from a data sheet";
    case draught::CurveOrigin::bench:
      return "its curve was measured on a bench";
    case draught::CurveOrigin::not_said:
      return "its curve was given, and `fan.curve_from` does not say where it comes from";
    case draught::CurveOrigin::label:
      return "its curve is worked out from its label";
    case draught::CurveOrigin::guess:
      return "its curve is a guess";
  }
  throw std::logic_error("a curve from nowhere");
}
std::string what_to_measure(const model::SolvedFan& fan, bool given) {
  const std::string box =
      "hold the fan over a box with a U-tube and read the suction with the box shut; give the points as `fan.curve`, "
      "with `curve_from: bench`";
  if (fan.label.rated_speed || given) return "measure it: " + box;
  return "measure its speed first and write `fan.rated.speed`: that alone brings the pressure from a factor of 1.7 "
         "either way to 1.2. With a lamp that flashes at a known rate (one mark on the hub must stand still, and not "
         "at "
         "twice the rate), by the pitch of the blades' sound (turns a second times blades), or with a tachometer. Then "
         "measure the curve: " +
         box;
}
// A guess is to be watched whatever its coefficients: they are shown where they decide.
void judge_coefficients(Finding& f, const model::Solved& solved, const draught::FanCoefficients& c,
                        const data::FanCredibility& usual) {
  const model::Measure psi = measure(solved, c.psi), phi = measure(solved, c.phi);
  and_by(f, psi, {Bound::at_most, AnyQuantity(usual.psi.high), AnyQuantity(usual.psi_reject)});
  and_by(f, psi, {Bound::at_least, AnyQuantity(usual.psi.low), std::nullopt});
  and_by(f, phi, {Bound::at_most, AnyQuantity(usual.phi.high), std::nullopt});
  and_by(f, phi, {Bound::at_least, AnyQuantity(usual.phi.low), std::nullopt});
}
std::optional<Finding> judge_fan_curve(const model::Solved& solved) {
  if (solved.draught && solved.draught->measured && !solved.fan) return std::nullopt;
  if (!solved.fan) return unsolved(solved.fan);
  const model::SolvedFan& fan = *solved.fan;
  Finding f;
  f.basis.source = fan.curve.basis().sentence;
  f.basis.standing = fan.curve.basis().standing;
  const draught::CurveOrigin origin = fan.curve.basis().origin;
  const bool believed = origin != draught::CurveOrigin::label && origin != draught::CurveOrigin::guess;
  f.verdict = believed ? Verdict::pass : Verdict::watch;
  f.why = where_from(origin);
  if (!believed) f.action = what_to_measure(fan, static_cast<bool>(solved.build.fan.curve));
  if (fan.label.frame <= 0.0 * mm || !fan.label.rated_speed) return f;
  const draught::FanCoefficients c = draught::coefficients(
      {fan.label.kind, fan.label.frame, *fan.label.rated_speed, fan.curve.shut_off(), fan.curve.free_air()});
  const data::FanCredibility& usual = data::fan_credibility(fan.label.kind);
  judge_coefficients(f, solved, c, usual);
  f.formula = "psi = p0 / (1.2 kg/m3 u^2 / 2), u = pi n D";
  f.terms = {term(solved, "n", "rated speed", solved.build.fan.rated.speed),
             term(solved, "frame", "frame", solved.build.fan.frame),
             computed(solved, "u", "tip speed", c.tip_speed),
             computed(solved, "p0", "shut-off pressure", fan.curve.shut_off()),
             computed(solved, "V0", "free-air flow", fan.curve.free_air()),
             computed(solved, "psi", "pressure coefficient", c.psi),
             computed(solved, "phi", "flow coefficient", c.phi)};
  f.basis.source += "; " + usual.basis.source;
  if (c.verdict == draught::Credibility::not_credible) {
    f.why = fmt::format(
        "no fan of this size and speed develops {}: its pressure coefficient would be {}, and {} is the most one can "
        "believe",
        say(solved, fan.curve.shut_off()), format_number(c.psi), format_number(usual.psi_reject));
    f.action = "check the data sheet's units and the speed, or measure the shut-off pressure";
  } else if (c.verdict == draught::Credibility::unusual) {
    f.why += fmt::format("; its coefficients (pressure {}, flow {}) lie outside what fans of this kind usually reach{}",
                         format_number(c.psi), format_number(c.phi),
                         fan.label.kind == data::FanKind::centrifugal && c.psi > usual.psi.high
                             ? ", which is possible: shut, such a wheel speeds up beyond its printed speed"
                             : "");
    if (f.action.empty()) f.action = "check the data sheet's units and the speed";
  }
  return f;
}
}  // namespace

Check fan_curve() {
  return {"fan.curve", "Can the fan's curve be believed",
          "Is the fan curve measured, and is it possible for that size and speed?", judge_fan_curve};
}
}  // namespace lumwright::plan
