#include "data/fire.hpp"
#include "data/limits.hpp"
#include "fire/burning_bed.hpp"
#include "model/solved_draught.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {

std::optional<Finding> judge_fire_flux(const model::Solved& solved) {
  if (!solved.draught) return unsolved(solved.draught);
  const model::SolvedDraught& d = *solved.draught;
  const Temperature glow = data::glowing_bed().temperature.value;
  const MassFlux floats = fire::lifting_flux({d.path.bed->particle, *d.fuel_piece}, glow);
  static const double advised = data::limit<double>("fire.flux share");
  const MassFlux flux = d.hot_flow.bed / d.path.grate->area, limit = advised * floats;
  Finding f;
  judge_by(f, measure(solved, flux), {Bound::at_most, AnyQuantity(limit), AnyQuantity(floats)});
  f.why = fmt::format("{} of air goes up through the grate, and {} would float lumps of {}", say(solved, flux),
                      say(solved, floats), say(solved, d.path.bed->particle));
  if (f.verdict != Verdict::pass) f.action = "slow the fan, or burn larger lumps until the engine's own blower is on";
  f.basis.source = "minimum fluidization after Wen and Yu 1966, 25 %; advise below 70 % of it";
  f.basis.standing = data::Standing::secondary;
  f.formula = "G_mf = mu/d (sqrt(33.7^2 + 0.0408 Ar) - 33.7); G = m_bed / A_grate <= 0.7 G_mf";
  f.terms = {computed(solved, "m_bed", "air through the bed", d.hot_flow.bed),
             computed(solved, "A_grate", "area of the grate", d.path.grate->area),
             term(solved, "d", "lump", solved.build.fuel.lump),
             computed(solved, "rho", "density of a piece of fuel", *d.fuel_piece),
             computed(solved, "T", "gas in the glowing bed", glow),
             computed(solved, "G_mf", "flux that floats a lump", floats)};
  return f;
}
}  // namespace

Check fire_flux() {
  return {"fire.flux", "Air through the grate", "Does the air float the lumps, or make the bed dance?",
          judge_fire_flux};
}
}  // namespace lumwright::plan
