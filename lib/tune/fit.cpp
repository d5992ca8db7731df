#include "data/tuning.hpp"
#include "numeric/statistics.hpp"
#include "quantity/format.hpp"
#include "tune/detail/outcome.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::tune {
namespace {
constexpr double beyond_rescue = 3.0;  // misfit in sigmas: no factors bring the model near

class Telling {
 public:
  Telling(const SeasonFit& fit, const description::Season& season)
      : fit_(fit), season_(season), posterior_(fit.posterior()) {}

  TuneFit tell() const {
    if (fit_.size() > beyond_rescue || half_wrong()) refuse_contradictions();
    TuneFit out{{}, {}, fit_.size(), 1.0, fit_.evaluations()};
    std::size_t determined = 0;
    for (std::size_t k = 0; k < fit_.factors().size(); ++k) {
      out.factors.push_back(factor(k));
      determined += out.factors.back().determined;
    }
    if (determined == 0) refuse_all();
    out.cover = cover(determined);
    for (TunedFactor& f : out.factors)
      if (!f.determined) f.settled_by = settled_by(static_cast<std::size_t>(&f - out.factors.data()));
    out.days = days();
    return out;
  }

 private:
  /// Factor k, with nothing of the others.
  Functional alone(std::size_t k, bool scattered) const {
    Vector of_day(fit_.factors().size(), 0.0);
    of_day[k] = 1.0;
    return {of_day, fit_.next_counts(), scattered};
  }
  static std::size_t place_in(const std::vector<std::size_t>& list, std::size_t k) {
    return static_cast<std::size_t>(std::find(list.begin(), list.end(), k) - list.begin());
  }
  TunedFactor factor(std::size_t k) const {
    const Factor& f = fit_.factors()[k];
    TunedFactor out{.key = f.key,
                    .name = f.name,
                    .kind = f.kind,
                    .unit = f.unit,
                    .prior = f.prior,
                    .prior_sigma = f.sigma,
                    .value = f.prior,
                    .sigma = f.sigma,
                    .determined = false,
                    .settled_by = ""};
    const Mixture now = posterior_.of(alone(k, false)), next = posterior_.of(alone(k, true));
    out.engine = {f.at(now.quantile(0.5)), f.at(now.quantile(0.1)), f.at(now.quantile(0.9))};
    out.determined = now.sigma() * f.log_sigma() < determined_below * f.usual_log_sigma;
    if (out.determined) {
      out.value = f.at(next.mean());
      out.sigma = next.sigma() * f.log_sigma() * out.value;
    }
    const Law& law = fit_.law();
    if (const std::size_t i = place_in(law.scattering, k); i < law.scattering.size()) {
      const Mixture log = posterior_.log_scatter(i);
      const auto at = [&](double share) { return f.log_sigma() * std::exp(log.quantile(share)); };
      out.scatter = Span{at(0.5), at(0.1), at(0.9)};
    }
    if (const std::size_t j = place_in(law.drifting, k); j < law.drifting.size()) out.drift = drift(k, j);
    return out;
  }
  Drift drift(std::size_t k, std::size_t j) const {
    const Factor& f = fit_.factors()[k];
    const Mixture each = posterior_.drift(j);
    const auto at = [&](double share) { return f.log_sigma() * each.quantile(share); };
    return {{at(0.5), at(0.1), at(0.9)}, std::max(each.share_below(0.0), 1.0 - each.share_below(0.0)), f.anew};
  }
  std::vector<LitDay> days() const {
    std::vector<LitDay> out;
    for (std::size_t i = 0; i < season_.lighting_ups.size(); ++i) out.push_back({i, ""});
    for (const auto& [log, why] : fit_.left_out()) out[log].left_out = why;
    for (std::size_t d = 0; d < fit_.days().size(); ++d) {
      const Day& day = fit_.days()[d];
      LitDay& told = out[fit_.log_of(d)];
      told.readings = day.readings();
      for (std::size_t k = 0; k < day.factors().size(); ++k) told.factors.push_back(day.factors()[k].at(day.at()[k]));
      const Prediction tuned = *day.prediction();
      for (TunedReading& reading : told.readings)
        if (tuned.tells(reading.observable) && reading.time <= tuned.end())
          reading.after = tuned.at(reading.observable, reading.time);
      for (std::size_t i = 0; i < day.used().size(); ++i) told.readings[day.used()[i]].wrong = fit_.wrong(d, i);
    }
    return out;
  }

  /// Readings of all days that the factors take hold of, with their weights.
  numeric::Matrix stacked() const {
    numeric::Matrix out;
    for (const Day& day : fit_.days()) out.insert(out.end(), day.jacobian().begin(), day.jacobian().end());
    return out;
  }
  std::string settled_by(std::size_t wanted) const {
    try {
      const Day& last = fit_.days().back();
      return ReadingAdvice(last.model(), last.factors(), last.at(), stacked(), last.readings().back().time)
          .settles({wanted});
    } catch (const ModelError&) {  // advice near an edge is not worth a refusal
      return "";
    }
  }
  [[noreturn]] void refuse_all() const {
    std::string names;
    for (const Factor& f : fit_.factors()) names += (names.empty() ? "" : ", ") + f.name;
    const std::string help = settled_by(0);
    throw ModelError(fmt::format("the readings determine none of the factors: {}{}", names,
                                 help.empty() ? "" : fmt::format(". Take {}", help)));
  }
  bool half_wrong() const {
    double all = 0.0, wrong = 0.0;
    for (std::size_t d = 0; d < fit_.days().size(); ++d)
      for (std::size_t i = 0; i < fit_.days()[d].used().size(); ++i)
        if (fit_.held(d, i)) all += 1.0, wrong += fit_.wrong(d, i);
    return wrong > 0.5 * all;
  }
  /// What keeps the model from more heat where a reading asks for it; else where the search was barred.
  static std::string why_not_more(const Day& day, double misfit) {
    Vector u = day.at();
    for (std::size_t k = 0; misfit < 0.0 && k < u.size(); ++k)
      if (const Factor& f = day.factors()[k]; f.key == "tuned.heat")
        u[k] = std::log(0.99 * f.most / f.prior) / f.log_sigma();
    try {
      day.model().predict(tuning_at(day.factors(), u));
    } catch (const ModelError& e) {
      return e.what();
    }
    return day.edge();
  }
  [[noreturn]] void refuse_contradictions() const {
    const Day* where = nullptr;
    std::size_t worst = 0;
    double most = -1.0;
    for (const Day& day : fit_.days())
      for (std::size_t i = 0; i < day.used().size(); ++i)
        if (const double miss = std::abs(day.misfits_here()[i]); miss > most) most = miss, worst = i, where = &day;
    const std::string edge = why_not_more(*where, where->misfits_here()[worst]);
    throw ModelError(fmt::format(
        "no values of the factors bring the model near most of the readings{}. Worst is the {}. Look for a slip there, "
        "or in what the description says of water, fuel, air and leaks",
        edge.empty() ? "" : ": " + edge,
        missed(where->readings()[where->used()[worst]], where->misfits_here()[worst])));
  }
  /// Of independent factors; where they hang together it is a little more than 95 % (Sidak, 1967).
  static double cover(std::size_t factors) {
    const double each = std::pow(0.9545, 1.0 / static_cast<double>(factors));
    return numeric::normal_score(0.5 * (1.0 + each));
  }

  const SeasonFit& fit_;
  const description::Season& season_;
  const Posterior& posterior_;
};
}  // namespace

TuneFit outcome_of(const SeasonFit& fit, const description::Season& season) { return Telling(fit, season).tell(); }
}  // namespace lumwright::tune
