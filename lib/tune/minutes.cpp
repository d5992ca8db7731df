#include "tune/detail/outcome.hpp"
#include <cmath>

namespace lumwright::tune {
namespace {
constexpr double minutes_step = 0.25;  // prior sigmas: the spread of a time, not its slope at a point
double log_time(const LightingUp& model, const std::vector<Factor>& factors, const Vector& u, GaugePressure gauge) {
  const auto reached = model.time_to(gauge, tuning_at(factors, u));
  if (!reached) throw ModelError("the pressure is not reached");
  return std::log(in(*reached, s));
}
}  // namespace

Minutes::Minutes(const LightingUp& model, const std::vector<Factor>& factors, const Vector& about, GaugePressure gauge)
    : about_(about), here_(0.0 * s) {
  const auto f = [&](const Vector& u) { return Vector{log_time(model, factors, u, gauge)}; };
  const Vector here = f(about);
  here_ = std::exp(here[0]) * s;
  slope_ = numeric::slopes(f, about, here, Vector(about.size(), minutes_step)).front();
}
Span Minutes::band(const Mixture& law) const {
  double offset = std::log(in(here_, s));
  for (std::size_t k = 0; k < slope_.size(); ++k) offset -= slope_[k] * about_[k];
  const auto at = [&](double share) { return std::exp(offset + law.quantile(share)); };
  return {at(0.5), at(0.1), at(0.9)};
}
}  // namespace lumwright::tune
