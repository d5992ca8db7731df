#include "workshop/fit_limits.hpp"
#include "data/fits.hpp"
#include "quantity/errors.hpp"
#include "workshop/stock.hpp"
#include <algorithm>
#include <cmath>
#include <mutex>

namespace lumwright::workshop {
namespace {
constexpr int rounds = 4;  // what heat asks for changes by a hundredth of what the size changes

double usual_leak() { return data::number_rule("leak share").value.value; }
// d of (D^2 - d^2) / (d - 2 w)^2 = s
Length tube_that_leaks(Length bore, Length wall, double share) {
  const Area under = 4.0 * share * share * wall * wall - (1.0 + share) * (4.0 * share * wall * wall - bore * bore);
  return (2.0 * share * wall + square_root(under)) / (1.0 + share);
}
Length bore_that_leaks(Length outside, Length wall, double share) {
  const Length within = outside - 2.0 * wall;
  return square_root(Area(outside * outside + share * within * within));
}

std::optional<Limits> tube_limits(const FitInput& input) {
  FitInput tried = input;
  for (int i = 0; i < rounds; ++i) {
    const Length next = i == 0 ? input.outside.value : tried.outside.value + fit(tried).margin;
    if (next <= 2.0 * input.tube_wall) return std::nullopt;
    tried.outside = exactly(next);
  }
  const Length most = tried.outside.value;
  for (const double share : {usual_leak(), most_leak_share()}) {
    const Length least = tube_that_leaks(input.bore.value, input.tube_wall, share);
    if (least < most) return Limits{least, most};
  }
  return std::nullopt;
}
std::optional<Limits> bore_limits(const FitInput& input, const Fit& as_it_is) {
  if (!input.chimney_wall || !as_it_is.skim.wall_needed) return std::nullopt;
  FitInput tried = input;
  tried.seam_ridge = 0.0 * mm;  // it goes with the first cut
  tried.bore = exactly(as_it_is.skim.bore);
  for (int i = 1; i < rounds; ++i) tried.bore = exactly(Length(tried.bore.value - fit(tried).margin));
  const Length off = 2.0 * (*input.chimney_wall - *as_it_is.skim.wall_needed) - input.bore_measured_within;
  const Length most_metal = input.bore.low + std::min(off, data::length_rule("heavy skim").value.value);
  for (const double share : {usual_leak(), most_leak_share()}) {
    const Limits found{tried.bore.value,
                       std::min(most_metal, bore_that_leaks(input.outside.value, input.tube_wall, share))};
    if (found.least < found.most) return found;
  }
  return std::nullopt;
}
}  // namespace

FitLimits fit_limits(const FitInput& input, const Fit& fit) {
  const bool too_tight = fit.margin < 0.0 * mm && fit.skim.on_diameter > 0.0 * mm;
  if (too_tight)
    if (const auto bore = bore_limits(input, fit)) return {std::nullopt, bore};
  return {tube_limits(input), std::nullopt};
}

struct LimitsWhenAsked::Asked {
  Asked(const FitInput& of, const Fit& found_fit) : input(of), fit(found_fit) {}
  FitInput input;
  Fit fit;
  std::once_flag once;
  FitLimits found;
};
LimitsWhenAsked::LimitsWhenAsked(const FitInput& input, const Fit& fit) : asked_(std::make_shared<Asked>(input, fit)) {}
const FitLimits& LimitsWhenAsked::operator()() const {
  static const FitLimits neither;
  if (!asked_) return neither;
  std::call_once(asked_->once, [this] {
    try {
      asked_->found = fit_limits(asked_->input, asked_->fit);
    } catch (const ModelError&) {  // no size to be tried has an answer: then none can be told
    }
  });
  return asked_->found;
}

Length may_stray(const ScrewHole& hole) {
  return std::max(hole.hole - hole.screw, 0.0 * mm) * (hole.into_thread ? 0.25 : 0.5);
}

Length told_in_steps(Length size, const Limits& limits, std::initializer_list<Length> steps) {
  for (const Length& step : steps) {
    const Length told = std::round(in(size, step)) * step;
    if (told >= limits.least && told <= limits.most) return told;
  }
  return size;
}
}  // namespace lumwright::workshop
