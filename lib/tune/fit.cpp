#include "quantity/format.hpp"
#include "tune/detail/parts.hpp"
#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::tune {
namespace {
constexpr double difference_step = 0.1;  // prior sigmas: far above the solver's noise, little curvature
constexpr double no_hold = 0.01;         // squared sensitivity below which a factor stays out of the search
constexpr double weak_hold = 0.1;        // of a reading that tells nothing of the factors
constexpr double beyond_rescue = 3.0;    // misfit in sigmas, root mean square
constexpr double by_chance = 0.999;      // misfits beyond this quantile widen the uncertainty

class LogFit {
 public:
  LogFit(const description::Build& build, const description::Log& log)
      : model_(build, log),
        factors_(factors_of(model_)),
        untuned_(model_.predict({})),
        readings_(readings_of(log, model_.build(), untuned_)) {
    for (std::size_t i = 0; i < readings_.size(); ++i)
      if (readings_[i].left_out.empty()) used_.push_back(i);
    if (used_.empty()) throw ModelError(nothing_used());
  }

  TuneFit run() {
    u_.assign(factors_.size(), 0.0);
    jacobian_ = numeric::slopes([this](const std::vector<double>& u) { return misfits(u); }, u_, misfits(u_),
                                std::vector<double>(u_.size(), difference_step));
    for (std::size_t k = 0; k < factors_.size(); ++k)
      if (pull(k) > no_hold) free_.push_back(k);
    if (free_.empty()) refuse_all();
    search();
    while (drop_undetermined()) {
      if (free_.empty()) refuse_all();
      search();
    }
    if (widened() > beyond_rescue) refuse_contradictions();
    refuse_pairs();
    return result();
  }

 private:
  std::string nothing_used() const {
    return "no reading of the log can be used: " + (readings_.empty() ? "it has none" : readings_.front().left_out);
  }
  double residual(const TunedReading& reading, const Prediction& prediction) const {
    double value = prediction.at(reading.observable, reading.time);
    if (reading.observable == Observable::gauge && reading.measured.si == 0.0) value = std::max(value, 0.0);
    return (value - reading.measured.si) / reading.sigma;
  }
  /// Misfits of the readings used, in sigmas.
  std::vector<double> misfits(const std::vector<double>& u) const {
    ++evaluations_;
    const Prediction prediction = model_.predict(tuning_at(factors_, u));
    std::vector<double> out;
    for (const std::size_t i : used_) out.push_back(residual(readings_[i], prediction));
    return out;
  }
  double pull(std::size_t k) const {
    double sum = 0.0;
    for (const auto& row : jacobian_) sum += row[k] * row[k];
    return sum;
  }
  std::vector<double> all_of(const std::vector<double>& of_free) const {
    std::vector<double> u(factors_.size(), 0.0);  // the others stay at their prior
    for (std::size_t k = 0; k < free_.size(); ++k) u[free_[k]] = of_free[k];
    return u;
  }
  numeric::Matrix columns(const std::vector<std::size_t>& which) const {
    numeric::Matrix out;
    for (const auto& row : jacobian_) {
      auto& line = out.emplace_back();
      for (const std::size_t k : which) line.push_back(row[k]);
    }
    return out;
  }

  static numeric::Matrix with_priors(numeric::Matrix jacobian) {
    const std::size_t n = jacobian.front().size();
    for (std::size_t k = 0; k < n; ++k) jacobian.emplace_back(n, 0.0).at(k) = 1.0;
    return jacobian;
  }
  void search() {
    std::vector<double> start;
    for (const std::size_t k : free_) start.push_back(u_[k]);
    const numeric::LeastSquaresFit fit =
        numeric::least_squares({.residuals =
                                    [&](const std::vector<double>& x) {
                                      std::vector<double> r = misfits(all_of(x));
                                      r.insert(r.end(), x.begin(), x.end());  // the priors
                                      return r;
                                    },
                                .start = start,
                                .step = std::vector<double>(free_.size(), difference_step),
                                .jacobian = with_priors(columns(free_))});
    if (!fit.edge.empty()) refuse_edge(fit);
    u_ = all_of(fit.x);
    for (std::size_t i = 0; i < used_.size(); ++i)
      for (std::size_t k = 0; k < free_.size(); ++k) jacobian_[i][free_[k]] = fit.jacobian[i][k];
    misfits_.assign(fit.residuals.begin(), fit.residuals.begin() + static_cast<std::ptrdiff_t>(used_.size()));
    covariance_ = covariance();
  }
  [[noreturn]] void refuse_edge(const numeric::LeastSquaresFit& fit) const {
    std::size_t hardest = 0;
    for (std::size_t i = 1; i < used_.size(); ++i)
      if (std::abs(fit.residuals[i]) > std::abs(fit.residuals[hardest])) hardest = i;
    throw ModelError(fmt::format(
        "the readings pull the model over an edge: {}. What pulls hardest is the {}. Look for a slip there, or in what "
        "the description says of water, fuel, air and leaks",
        fit.edge, missed(readings_[used_[hardest]], fit.residuals[hardest])));
  }
  /// Of the free factors: from the readings, and from what is not known of the factors that stay (Schmidt, 1966).
  numeric::Matrix covariance() const {
    const numeric::Matrix own = columns(free_);
    const numeric::Matrix p = posterior(own);
    numeric::Matrix c = p;
    for (std::size_t k = 0; k < factors_.size(); ++k) {
      if (std::find(free_.begin(), free_.end(), k) != free_.end()) continue;
      std::vector<double> moved(free_.size(), 0.0);  // by one sigma of this factor
      for (std::size_t a = 0; a < free_.size(); ++a)
        for (std::size_t b = 0; b < free_.size(); ++b)
          for (std::size_t i = 0; i < used_.size(); ++i) moved[a] += p[a][b] * own[i][b] * jacobian_[i][k];
      for (std::size_t a = 0; a < free_.size(); ++a)
        for (std::size_t b = 0; b < free_.size(); ++b) c[a][b] += moved[a] * moved[b];
    }
    return c;
  }
  bool drop_undetermined() {
    const double wide = widened();
    std::vector<std::size_t> kept;
    for (std::size_t k = 0; k < free_.size(); ++k)
      if (wide * std::sqrt(covariance_[k][k]) < determined_below) kept.push_back(free_[k]);
    if (kept.size() == free_.size()) return false;
    if (kept.empty() && wide > 1.0) refuse_contradictions();
    if (kept.empty()) refuse_all();
    free_ = kept;
    return true;
  }

  std::string settled_by(const std::vector<std::size_t>& wanted) const {
    try {
      const Duration until = readings_.back().time;
      return ReadingAdvice(model_, factors_, u_, jacobian_, until).settles(wanted);
    } catch (const ModelError&) {  // advice near an edge is not worth a refusal
      return "";
    }
  }
  [[noreturn]] void refuse_pair(std::size_t i, std::size_t j, double how_alike) const {
    const std::string help = settled_by({i, j});
    throw ModelError(
        fmt::format("the readings cannot tell two factors apart (correlation {:.3f}): {} ({}) and {} ({}). {}",
                    how_alike, factors_[i].name, factors_[i].key, factors_[j].name, factors_[j].key,
                    help.empty() ? "Write a narrower spread for one of them in the description"
                                 : fmt::format("Take {} as well, or write a narrower spread for one of them", help)));
  }
  /// Nothing is determined: because two factors hide behind each other, or because the readings say too little.
  [[noreturn]] void refuse_all() const {
    const numeric::Matrix joint = posterior(jacobian_);
    const auto alone = [&](std::size_t k) { return 1.0 / std::sqrt(1.0 + pull(k)) < determined_below; };
    double most = 0.0;
    std::size_t first = 0, second = 0;
    for (std::size_t i = 0; i < factors_.size(); ++i)
      for (std::size_t j = i + 1; j < factors_.size(); ++j)
        if (const double rho = correlation(joint, i, j); alone(i) && alone(j) && std::abs(rho) > std::abs(most))
          most = rho, first = i, second = j;
    if (first != second) refuse_pair(first, second, most);
    const std::string help = settled_by({0});
    throw ModelError(fmt::format("the readings determine none of the factors: {}{}", factor_names(),
                                 help.empty() ? "" : fmt::format(". Take {}", help)));
  }
  std::string factor_names() const {
    std::string text;
    for (const Factor& f : factors_) text += (text.empty() ? "" : ", ") + f.name;
    return text;
  }
  void refuse_pairs() const {
    for (std::size_t i = 0; i < free_.size(); ++i)
      for (std::size_t j = i + 1; j < free_.size(); ++j)
        if (const double rho = correlation(covariance_, i, j); std::abs(rho) > told_apart_below)
          refuse_pair(free_[i], free_[j], rho);
  }

  /// Some factor takes hold of this reading; one that none does cannot tell whether they are right.
  bool held(std::size_t i) const {
    double sum = 0.0;
    for (const double x : jacobian_[i]) sum += x * x;
    return sum > weak_hold;
  }
  double misfit() const {
    double sum = 0.0;
    for (std::size_t i = 0; i < misfits_.size(); ++i)
      if (held(i)) sum += misfits_[i] * misfits_[i];
    return sum;
  }
  /// Readings less what the free factors take up.
  double freedom() const {
    const numeric::Matrix own = columns(free_);
    const numeric::Matrix p = posterior(own);
    double taken = 0.0;
    for (const auto& row : own)
      for (std::size_t a = 0; a < row.size(); ++a)
        for (std::size_t b = 0; b < row.size(); ++b) taken += row[a] * p[a][b] * row[b];
    double held_ones = 0.0;
    for (std::size_t i = 0; i < used_.size(); ++i) held_ones += held(i) ? 1.0 : 0.0;
    return std::max(held_ones - taken, 1.0);
  }
  double widened() const {
    const boost::math::chi_squared chance(freedom());
    return misfit() > quantile(chance, by_chance) ? std::sqrt(misfit() / freedom()) : 1.0;
  }
  /// Of independent factors; where they hang together it is a little more than 95 % (Sidak, 1967).
  static double cover(std::size_t factors) {
    const double each = std::pow(0.9545, 1.0 / static_cast<double>(factors));
    return quantile(boost::math::normal(), 0.5 * (1.0 + each));
  }
  TuneFit result() {
    const Prediction tuned = model_.predict(tuning_at(factors_, u_));
    for (TunedReading& reading : readings_)
      if (tuned.tells(reading.observable) && reading.time <= tuned.end())
        reading.after = tuned.at(reading.observable, reading.time);
    refuse_beyond_end(tuned);
    const double wide = widened();
    for (auto& row : covariance_)
      for (double& x : row) x *= wide * wide;
    TuneFit fit{.factors = {},
                .readings = readings_,
                .misfit = misfit(),
                .freedom = freedom(),
                .widened = wide,
                .cover = cover(free_.size()),
                .covariance = covariance_,
                .evaluations = evaluations_};
    for (std::size_t k = 0; k < factors_.size(); ++k) fit.factors.push_back(told(k));
    advise(fit);
    return fit;
  }
  void advise(TuneFit& fit) const {
    if (free_.size() == factors_.size()) return;
    try {
      const ReadingAdvice advice(model_, factors_, u_, jacobian_, readings_.back().time);
      for (std::size_t k = 0; k < factors_.size(); ++k)
        if (!fit.factors[k].determined) fit.factors[k].settled_by = advice.settles({k});
    } catch (const ModelError&) {  // a fit this near an edge does without
    }
  }
  TunedFactor told(std::size_t k) const {
    const Factor& f = factors_[k];
    TunedFactor out{.key = f.key,
                    .name = f.name,
                    .kind = f.kind,
                    .unit = f.unit,
                    .prior = f.prior,
                    .prior_sigma = f.sigma,
                    .value = f.at(u_[k]),
                    .sigma = f.sigma,
                    .determined = false,
                    .settled_by = ""};
    const auto found = std::find(free_.begin(), free_.end(), k);
    if (found == free_.end()) return out;
    const auto at = static_cast<std::size_t>(found - free_.begin());
    out.sigma = std::sqrt(covariance_[at][at]) * f.sigma;
    out.determined = true;
    return out;
  }
  /// A reading for which the search had to go beyond what the raise tells.
  void refuse_beyond_end(const Prediction& tuned) const {
    for (const std::size_t i : used_)
      if (!readings_[i].after)
        throw ModelError(
            fmt::format("reading {} of the log, at {}, lies behind the end of steam raising as the model "
                        "has it, at {}: leave it out, or look for a slip in the description",
                        readings_[i].item, format(readings_[i].time, "min"), format(tuned.end(), "min")));
  }
  [[noreturn]] void refuse_contradictions() const {
    std::size_t worst = 0;
    for (std::size_t i = 1; i < misfits_.size(); ++i)
      if (held(i) && std::abs(misfits_[i]) > std::abs(misfits_[worst])) worst = i;
    throw ModelError(fmt::format(
        "no values of the factors bring the model near all readings (sum of squares {:.3g}, {:.3g} would do). Worst is "
        "the {}. Look for a slip there, or in the description",
        misfit(), freedom(), missed(readings_[used_[worst]], misfits_[worst])));
  }

  LightingUp model_;
  std::vector<Factor> factors_;
  Prediction untuned_;
  std::vector<TunedReading> readings_;
  std::vector<std::size_t> used_, free_;
  std::vector<double> u_, misfits_;
  numeric::Matrix jacobian_, covariance_;
  mutable int evaluations_ = 0;
};
}  // namespace

TuneFit fit_log(const description::Build& build, const description::Log& log) { return LogFit(build, log).run(); }
}  // namespace lumwright::tune
