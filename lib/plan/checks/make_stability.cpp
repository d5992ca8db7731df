#include "data/shop_rules.hpp"
#include "model/fan_unit.hpp"
#include "model/solved_fan.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
/// A number that stands beside its limit reads here as it does there; others more roughly.
int figures(const Finding& f, double number) { return f.value && f.value->quantity.si == number ? 3 : 2; }
std::string chimney_words(const Finding& f, const workshop::ChimneyLoad& load) {
  if (!load.reserve || !load.allowed) return "";
  const char* knock = "; a knock on top, as heavy as half a kilogram, strains the chimney to ";
  return *load.reserve >= 1.0
             ? fmt::format("{}1/{} of what it stands hot", knock,
                           format_number(*load.reserve, figures(f, *load.reserve)))
             : fmt::format("{}{} times what it stands hot", knock, format_number(1.0 / *load.reserve, 2));
}
std::string lean_words(const model::Solved& solved, const workshop::Stability& s) {
  if (s.lean <= 1e-6) return "";
  if (s.lean >= no_stand) return "; the tube cannot stand in a bore so wide: it falls over until it jams";
  return fmt::format("; the tube can tip 1 in {}, which takes the top {} sideways", format_number(1.0 / s.lean, 2),
                     say(solved, s.top_offset));
}
std::string weight_words(const Finding& f, const workshop::Stability& s) {
  if (!s.free_reserve) return "";
  return *s.free_reserve >= 1.0
             ? fmt::format("; its weight holds it up {} times over",
                           format_number(*s.free_reserve, figures(f, *s.free_reserve)))
             : fmt::format("; its weight gives only {} of what would hold it up", percent(*s.free_reserve, 2));
}
std::optional<Finding> judge_make_stability(const model::Solved& solved) {
  if (!solved.unit) return std::nullopt;
  const model::FanUnit& unit = *solved.unit;
  if (!unit.stability) {
    if (!unit.tube || !unit.flange || !unit.box || !unit.fan) return std::nullopt;
    return unit.fan->mass ? std::nullopt : std::optional(lacking(solved.build.fan.mass));
  }
  const workshop::Stability& s = *unit.stability;
  if (s.lean < 0.0) return std::nullopt;  // the tube does not enter: fit.cold says so
  const double reserve_asked = data::shop_number("strength reserve").value.value,
               tipping_asked = data::shop_number("tipping reserve").value.value;
  Finding f;
  judge_by(f, {AnyQuantity(s.lean), ""},
           {Bound::at_most, AnyQuantity(data::shop_number("tilt").value.value), std::nullopt});
  if (s.free_reserve)
    and_by(f, {AnyQuantity(*s.free_reserve), ""}, {Bound::at_least, AnyQuantity(tipping_asked), std::nullopt});
  const bool weak = s.chimney.reserve && and_by(f, {AnyQuantity(*s.chimney.reserve), ""},
                                                {Bound::at_least, AnyQuantity(reserve_asked), std::nullopt});
  f.why = fmt::format("{} stand on the chimney with their middle {} above its mouth", say(solved, s.mass),
                      say(solved, s.centre));
  f.why += lean_words(solved, s) + weight_words(f, s) + chimney_words(f, s.chimney);
  if (f.verdict == Verdict::watch)
    f.action = weak ? "the chimney is thin for this: lead the cable away loosely, and never lift the engine by the fan"
                    : "a longer tube in the chimney, a closer fit, or a lower box";
  f.basis.source = "statics of a rigid stack in its bore; the rules for lean, knock and reserve are estimates";
  f.basis.standing = data::Standing::estimate;
  f.formula = "tip = clearance / engaged length";
  f.terms = {computed(solved, "m", "mass of the unit", s.mass),
             computed(solved, "h", "its middle above the mouth", s.centre),
             computed(solved, "lean", "clearance over engaged length", s.lean),
             computed(solved, "p", "pressure on the bore at the mouth", s.chimney.bearing)};
  if (s.chimney.ring_stress)
    f.terms.push_back(computed(solved, "s_r", "stress that presses the mouth out of round", *s.chimney.ring_stress));
  return f;
}
}  // namespace

Check make_stability() {
  return {"make.stability",
          "The stack on the chimney",
          "Does the fan unit stand well on its chimney?",
          judge_make_stability,
          nullptr,
          false};
}
}  // namespace lumwright::plan
