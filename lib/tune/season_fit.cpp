#include "tune/detail/season_fit.hpp"
#include "data/tuning.hpp"
#include "tune/detail/robust.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::tune {
namespace {
constexpr int most_lines = 12, most_weighings = 40;
constexpr double line_holds = 0.03;     // prior sigmas: nearer than this a line need not be drawn anew
constexpr double weight_holds = 1e-3;   // of a reading, between two weighings
constexpr double chance_of_size = 2.6;  // a robust size of n readings is off by about 1.2 / root n: this many by chance
constexpr double weak_hold = 0.1;       // squared sensitivity of a reading that tells nothing of the factors

Law law_of(const std::vector<Factor>& factors) {
  Law law{factors.size(), {}, {}, data::season_constant("scatter_spread"), {}, {}};
  for (std::size_t k = 0; k < factors.size(); ++k) {
    const Factor& f = factors[k];
    if (f.day_to_day > 0.0) {
      law.scattering.push_back(k);
      law.usual_scatter.push_back(f.day_to_day / f.log_sigma());
    }
    if (f.drift > 0.0) {
      law.drifting.push_back(k);
      law.drift_sigma.push_back(f.drift / f.log_sigma());
    }
  }
  return law;
}
bool begins_anew(const description::Log& log, const std::string& key) {
  return (key == "swept" && description::part::says_yes(log.done.swept)) ||
         (key == "reseated" && description::part::says_yes(log.done.reseated));
}
}  // namespace

std::vector<Vector> counts_of(const description::Season& season, const std::vector<Factor>& factors) {
  std::vector<Vector> all;
  Vector count;
  for (const Factor& f : factors)
    if (f.drift > 0.0) count.push_back(0.0);
  for (const description::Log& log : season.lighting_ups) {
    std::size_t j = 0;
    for (const Factor& f : factors)
      if (f.drift > 0.0) {
        if (begins_anew(log, f.anew)) count[j] = 0.0;
        ++j;
      }
    all.push_back(count);
    for (double& one : count) one += 1.0;
  }
  all.push_back(count);
  return all;
}

SeasonFit::SeasonFit(const description::Build& build, const description::Season& season, const model::Tuning* usual) {
  factors_ = factors_of(LightingUp(build, {}), usual);
  law_ = law_of(factors_);
  scatter_ = law_.usual_scatter;
  counts_ = counts_of(season, factors_);
  const Duration lag = season.probe_lag ? *season.probe_lag : 0.0 * s;
  std::string why;
  for (std::size_t i = 0; i < season.lighting_ups.size(); ++i) {
    const description::Log& log = season.lighting_ups[i];
    try {
      if (log.readings.empty()) throw ModelError("it has no readings");
      Day day(build, log, lag, factors_, usual);
      if (day.used().empty()) throw ModelError("no reading of the log can be used: " + day.readings().front().left_out);
      day.draw_line(Vector(factors_.size(), 0.0));
      days_.push_back(std::move(day));
      logs_.push_back(i);
    } catch (const ModelError& e) {
      left_out_.emplace_back(i, e.what());
      why = why.empty() ? e.what() : why;
    }
  }
  if (days_.empty()) throw ModelError(why.empty() ? "there is no lighting-up to learn from" : why);
  at_.assign(days_.size(), Vector(factors_.size(), 0.0));
}

Vector SeasonFit::all_misfits() const {
  Vector all;
  for (std::size_t d = 0; d < days_.size(); ++d)
    for (const double miss : days_[d].misfits(at_[d])) all.push_back(miss);
  return all;
}
/// Weights by what every reading misses along the lines, and the evidence of each day with them.
void SeasonFit::weigh() {
  const Vector all = all_misfits();
  const double robust = robust_size(all);
  const bool by_chance = robust < 1.0 + chance_of_size / std::sqrt(static_cast<double>(all.size()));
  size_ = settling_ ? std::max(1.0, robust) : by_chance ? 1.0 : robust;
  weights_.clear(), wrong_.clear(), evidence_.clear();
  for (std::size_t d = 0; d < days_.size(); ++d) {
    Vector weights, wrong;
    for (const double miss : days_[d].misfits(at_[d])) {
      const Belief one = belief(miss / size_);
      weights.push_back(one.weight), wrong.push_back(one.wrong);
    }
    evidence_.push_back(days_[d].evidence(weights, size_, counts_[logs_[d]]));
    weights_.push_back(std::move(weights)), wrong_.push_back(std::move(wrong));
  }
}
/// Engine, days and weights by turns, along the lines, until the weights hold.
void SeasonFit::settle() {
  for (int i = 0; i < most_weighings; ++i) {
    const std::vector<Vector> before = weights_;
    weigh();
    const Vector engine = engine_mean(law_, evidence_, scatter_);
    for (std::size_t d = 0; d < days_.size(); ++d) at_[d] = day_factors(law_, evidence_[d], scatter_, engine);
    double most = before.empty() ? 1.0 : 0.0;
    for (std::size_t d = 0; d < before.size(); ++d)
      for (std::size_t k = 0; k < before[d].size(); ++k) most = std::max(most, std::abs(before[d][k] - weights_[d][k]));
    if (most < weight_holds) break;
  }
  weigh();
}
bool SeasonFit::moved(std::size_t day) const {
  for (std::size_t k = 0; k < factors_.size(); ++k)
    if (std::abs(at_[day][k] - days_[day].at()[k]) > line_holds) return true;
  return false;
}
void SeasonFit::search() {
  for (int line = 0; line < most_lines; ++line) {
    settling_ = line < 2;  // the first lines miss by their own bend: no reading is called wrong for that
    settle();
    posterior_.emplace(law_, evidence_, evidence_.size());
    scatter_ = posterior_->scatters();
    bool any = false;
    for (std::size_t d = 0; d < days_.size(); ++d) {
      if (!moved(d)) continue;
      any = true;
      days_[d].draw_line(at_[d]);
      at_[d] = days_[d].at();
      evaluations_ += 1 + 2 * static_cast<int>(factors_.size());
    }
    if (!settling_ && !any) break;
  }
}
bool SeasonFit::held(std::size_t day, std::size_t reading) const {
  double sum = 0.0;
  for (const double x : days_[day].jacobian()[reading]) sum += x * x;
  return sum > weak_hold;
}
}  // namespace lumwright::tune
