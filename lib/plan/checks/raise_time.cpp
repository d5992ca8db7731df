#include "model/solved_raise.hpp"
#include "plan/check.hpp"
#include "plan/detail/never_reached.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
// The model's own error, a judgement: +-35 % without a timed lighting-up, +-10 % with one.
bool tuned(const model::Solved& solved) {
  const model::Input* heat = solved.inputs.find("tuned.heat");
  return heat != nullptr && heat->origin == model::Origin::tuned;
}
double doubt(const model::Solved& solved) { return tuned(solved) ? 0.10 : 0.35; }

std::string ended(const boiler::Raise& raise) {
  if (raise.end == boiler::RaiseEnd::pack_stopped) return "the pack stops before that pressure is reached";
  return "that pressure is not reached in four hours";
}
std::vector<Term> working(const model::Solved& solved) {
  const model::SolvedRaise& r = *solved.raise;
  const boiler::RaiseEvent* event = r.raise.find(boiler::RaiseEventKind::own_blower);
  const boiler::RaiseAccount& sums = event ? event->account : r.raise.account;
  std::vector<Term> terms = {term(solved, "V", "water", solved.build.engine.boiler.water),
                             term(solved, "p", "own blower from", solved.build.engine.boiler.own_blower_from),
                             term(solved, "t_k", "time until the whole bed burns", solved.build.fuel.catches_in),
                             computed(solved, "H", "heat of the fuel burnt", sums.chemical),
                             computed(solved, "H_co", "lost as carbon monoxide", sums.carbon_monoxide),
                             computed(solved, "H_bed", "in the glowing bed", sums.bed),
                             computed(solved, "H_w", "taken up by water and metal", sums.absorbed),
                             computed(solved, "H_s", "gone up the chimney", sums.stack),
                             computed(solved, "H_o", "lost to the room meanwhile", sums.outside),
                             computed(solved, "m_f", "fuel burnt", sums.fuel)};
  if (event) {
    terms.push_back(computed(solved, "m", "air then", event->at.air));
    terms.push_back(computed(solved, "T_fb", "gas in the firebox then", event->at.heat.firebox.gas));
    terms.push_back(computed(solved, "T_e", "gas at the end of the tubes then", event->at.heat.tubes.exit));
  }
  return terms;
}
std::optional<Finding> judge_raise_time(const model::Solved& solved) {
  if (!solved.raise) return unsolved(solved.raise);
  const model::SolvedRaise& r = *solved.raise;
  if (!r.input.own_blower) return lacking(solved.build.engine.boiler.own_blower_from);
  Finding f;
  f.basis.source = fmt::format(
      "fire, boiler, gas path, fan and pack solved together at every instant; good to about {}{}",
      percent(doubt(solved), 2), tuned(solved) ? ", for it is tuned" : " until it is tuned to one timed lighting-up");
  f.basis.standing = data::Standing::estimate;
  f.formula =
      "d(heat in water and metal)/dt = firebox + tubes - room - steam; air, gas temperatures and fan speed at every "
      "instant";
  f.terms = working(solved);
  const auto time = r.raise.time_of(boiler::RaiseEventKind::own_blower);
  if (!time) {
    f.verdict = Verdict::fail;
    f.why = ended(r.raise);
    f.action = never_reached_advice(r.raise);
    return f;
  }
  const double reserve = solved.spread_tried ? 0.0 : doubt(solved);
  judge_by(f, measure(solved, *time), {Bound::at_most, AnyQuantity(r.within / (1.0 + reserve)), AnyQuantity(r.within)});
  f.why = fmt::format(
      "from cold to the engine's own blower it takes {} and {} of fuel; {} of the fuel's heat reaches the water",
      roughly(solved, *time), roughly(solved, r.raise.find(boiler::RaiseEventKind::own_blower)->account.fuel),
      say_share(solved, r.raise.find(boiler::RaiseEventKind::own_blower)->account.efficiency(), 2));
  if (const auto working = r.raise.time_of(boiler::RaiseEventKind::working))
    f.why += fmt::format("; working pressure after {}", roughly(solved, *working));
  if (f.verdict == Verdict::fail)
    f.action =
        "see where the pressure goes ({way losses}): a wider or shorter tube, a shallower bed, fewer leaks, "
        "or a fan with more shut-off pressure";
  if (f.verdict == Verdict::watch)
    f.action = tuned(solved)
                   ? "it may take a tenth longer than worked out: start the fan in good time"
                   : "it may take a third longer than worked out: time one lighting-up and tune the model to it";
  return f;
}
}  // namespace

Check raise_time() {
  return {"raise.time", "Minutes to steam", "How long from cold until the engine's own blower takes over?",
          judge_raise_time};
}
}  // namespace lumwright::plan
