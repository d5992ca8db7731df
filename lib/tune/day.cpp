#include "tune/detail/day.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::tune {
namespace {
constexpr double difference_step = 0.1;  // prior sigmas: far above the solver's noise, little curvature

/// This day's own priors for the factors of the season.
std::vector<Factor> own_priors(const LightingUp& model, const std::vector<Factor>& factors,
                               const model::Tuning* usual) {
  std::vector<Factor> own = factors;
  for (const Factor& here : factors_of(model, usual))
    for (Factor& one : own)
      if (one.key == here.key) one = here;
  return own;
}
}  // namespace

Day::Day(const description::Build& build, const description::Log& log, Duration probe_lag,
         const std::vector<Factor>& factors, const model::Tuning* usual)
    : model_(build, log, probe_lag), factors_(own_priors(model_, factors, usual)) {
  readings_ = readings_of(log, model_.build(), model_.predict({}));
  for (std::size_t i = 0; i < readings_.size(); ++i)
    if (readings_[i].left_out.empty()) used_.push_back(i);
}

Vector Day::exact_misfits(const Vector& u) const {
  const Prediction prediction = model_.predict(tuning_at(factors_, u));
  Vector out;
  for (const std::size_t i : used_) {
    const TunedReading& reading = readings_[i];
    double value = prediction.at(reading.observable, reading.time);
    if (reading.observable == Observable::gauge && reading.measured.si == 0.0) value = std::max(value, 0.0);
    out.push_back((value - reading.measured.si) / reading.sigma);
  }
  return out;
}
void Day::draw_line(const Vector& u) {
  const Vector from = at_.empty() ? Vector(u.size(), 0.0) : at_;
  for (double share = 1.0;; share *= 0.5) {
    const bool last = share < 0.05;
    Vector to = from;
    for (std::size_t k = 0; !last && k < to.size(); ++k) to[k] += share * (u[k] - from[k]);
    try {
      here_ = exact_misfits(to);
      jacobian_ = numeric::slopes([this](const Vector& x) { return exact_misfits(x); }, to, here_,
                                  Vector(to.size(), difference_step));
      at_ = to;
      return;
    } catch (const ModelError& e) {
      edge_ = e.what();
      if (last) throw;
    }
  }
}
Vector Day::misfits(const Vector& u) const {
  Vector out = here_;
  for (std::size_t i = 0; i < out.size(); ++i)
    for (std::size_t k = 0; k < u.size(); ++k) out[i] += jacobian_[i][k] * (u[k] - at_[k]);
  return out;
}
DayEvidence Day::evidence(const Vector& weights, double size, const Vector& counts) const {
  const std::size_t n = factors_.size();
  DayEvidence out{numeric::Matrix(n, Vector(n, 0.0)), Vector(n, 0.0), counts};
  for (std::size_t i = 0; i < here_.size(); ++i) {
    const double weight = weights[i] / (size * size);
    double aim = -here_[i];  // what the line wants of J u
    for (std::size_t k = 0; k < n; ++k) aim += jacobian_[i][k] * at_[k];
    for (std::size_t k = 0; k < n; ++k) {
      out.pull[k] += weight * jacobian_[i][k] * aim;
      for (std::size_t l = 0; l < n; ++l) out.information[k][l] += weight * jacobian_[i][k] * jacobian_[i][l];
    }
  }
  return out;
}
std::optional<Prediction> Day::prediction() const {
  if (at_.empty()) return std::nullopt;
  return model_.predict(tuning_at(factors_, at_));
}
}  // namespace lumwright::tune
