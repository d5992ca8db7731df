#include "tune/season_story.hpp"
#include "data/tuning.hpp"
#include "numeric/statistics.hpp"
#include "tune/detail/outcome.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::tune {
namespace {
constexpr double told_within = 0.15;  // of the minutes, one sigma: a day whose readings say less is not told

class Narrator {
 public:
  Narrator(const description::Build& build, const description::Season& season, const model::Tuning* usual)
      : build_(build), season_(season), fit_(build, season, usual) {
    fit_.search();
  }
  SeasonStory tell() {
    SeasonStory story{told_by(fit_, build_, season_), pressure(), {}, {}, {}};
    for (std::size_t i = 0; i < season_.lighting_ups.size(); ++i) story.days.push_back({i});
    for (const auto& [log, why] : fit_.left_out()) story.days[log].left_out = why;
    for (std::size_t d = 0; d < fit_.days().size(); ++d) tell_day(story.days[fit_.log_of(d)], d, story.gauge);
    story.next = next_minutes(story.gauge, fit_.next_counts());
    for (const TunedFactor& f : story.result.fit.factors)
      if (f.drift) wear(story, f);
    if (story.result.pack) cells(story);
    return story;
  }

 private:
  GaugePressure pressure() const {
    const description::part::Boiler& boiler = build_.engine.boiler;
    if (boiler.own_blower_from) return *boiler.own_blower_from;
    if (boiler.working) return *boiler.working;
    throw ModelError(
        "the description gives no pressure that minutes could be told to: write "
        "`engine.boiler.own_blower_from` or `engine.boiler.working`");
  }
  void tell_day(DayStory& told, std::size_t d, GaugePressure gauge) const {
    const Day& day = fit_.days()[d];
    for (std::size_t k = 0; k < day.factors().size(); ++k)
      if (const Factor& f = day.factors()[k]; f.key == "tuned.heat") {
        Vector of_day(day.factors().size(), 0.0);
        of_day[k] = 1.0;
        const Mixture then = fit_.posterior().of({of_day, fit_.evidence()[d].counts, false});
        told.heat = f.at(day.at()[k]);
        told.heat_of_engine = {f.at(then.quantile(0.5)), f.at(then.quantile(0.1)), f.at(then.quantile(0.9))};
      }
    try {
      const Minutes minutes(day.model(), day.factors(), day.at(), gauge);
      const Posterior before(fit_.law(), fit_.evidence(), d);
      const Functional number = minutes.functional(fit_.evidence()[d].counts, true);
      told.expected = minutes.band(before.of(number));
      const double sigma = own_sigma(fit_.evidence()[d], number.of_day), value = in(minutes.here(), s);
      const double reach = numeric::normal_score(0.9) * sigma;
      if (sigma < told_within) told.was = Span{value, value * std::exp(-reach), value * std::exp(reach)};
    } catch (const ModelError& e) {
      told.left_out = e.what();
    }
  }
  /// Of a number of one day, by its own readings and the priors alone.
  static double own_sigma(const DayEvidence& day, const Vector& slope) {
    numeric::Matrix precision = day.information;
    for (std::size_t k = 0; k < precision.size(); ++k) precision[k][k] += 1.0;
    const numeric::Matrix c = numeric::inverse(precision);
    double variance = 0.0;
    for (std::size_t i = 0; i < slope.size(); ++i)
      for (std::size_t j = 0; j < slope.size(); ++j) variance += slope[i] * c[i][j] * slope[j];
    return std::sqrt(variance);
  }
  std::optional<Span> next_minutes(GaugePressure gauge, const Vector& counts) const {
    Vector about(fit_.factors().size(), 0.0);
    for (std::size_t k = 0; k < about.size(); ++k) {
      Vector of_day(about.size(), 0.0);
      of_day[k] = 1.0;
      about[k] = fit_.posterior().of({of_day, counts, false}).mean();
    }
    try {
      const Minutes minutes(LightingUp(build_, {}), fit_.factors(), about, gauge);
      return minutes.band(fit_.posterior().of(minutes.functional(counts, true)));
    } catch (const ModelError&) {
      return std::nullopt;
    }
  }
  /// Steps until something that changes by `each` (logarithm) has changed by `limit`; both of one sign.
  static double steps_to(double limit, double each) {
    return each == 0.0 || (each > 0.0) != (limit > 0.0) ? HUGE_VAL : limit / each;
  }
  void wear(SeasonStory& story, const TunedFactor& f) const {
    const bool heat = f.key == "tuned.heat";
    const double sure = data::season_constant("sure_at");
    Vector anew = fit_.next_counts();
    std::size_t j = 0;
    for (const TunedFactor& other : story.result.fit.factors) {
      if (&other == &f) break;
      j += other.drift.has_value();
    }
    const double count = anew[j];
    anew[j] = 0.0;
    Due due{heat ? Due::What::sweep : Due::What::reseat, false};
    // what is left until the limit: heat over that with swept tubes, a leak over its own value
    const double limit = heat ? std::log(data::season_constant("sweep_at")) - count * f.drift->each.value
                              : std::log(data::season_constant("reseat_at") / f.engine.value);
    due.now = heat ? limit >= 0.0 && f.drift->sure >= sure : f.determined && limit <= 0.0;
    const bool worse = heat ? f.drift->each.value < 0.0 : f.drift->each.value > 0.0;
    if (!due.now && (f.drift->sure < sure || !worse)) return;
    if (!due.now) {
      const double fast = steps_to(limit, heat ? f.drift->each.low : f.drift->each.high),
                   slow = steps_to(limit, heat ? f.drift->each.high : f.drift->each.low);
      due.later = Span{steps_to(limit, f.drift->each.value), fast, slow};
    }
    if (count > 0.0) due.brings = next_minutes(story.gauge, anew);
    story.due.push_back(due);
  }
  void cells(SeasonStory& story) const {
    const PackState& pack = *story.result.pack;
    const double limit = std::log(data::season_constant("cells_at")), gone = std::log(pack.share_of_new.value);
    if (pack.sure < data::season_constant("sure_at") || pack.each_month.value >= 0.0) return;
    Due due{Due::What::cells, gone <= limit};
    if (!due.now)
      due.later = Span{steps_to(limit - gone, pack.each_month.value), steps_to(limit - gone, pack.each_month.low),
                       steps_to(limit - gone, pack.each_month.high)};
    story.due.push_back(due);
  }

  const description::Build& build_;
  const description::Season& season_;
  SeasonFit fit_;
};
}  // namespace

SeasonStory season_story(const description::Build& build, const description::Season& season,
                         const model::Tuning* usual) {
  return Narrator(build, season, usual).tell();
}
}  // namespace lumwright::tune
