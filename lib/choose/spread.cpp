#include "choose/detail/parts.hpp"
#include "choose/detail/rank.hpp"
#include "data/choosing.hpp"
#include "model/solved_fan.hpp"
#include "numeric/statistics.hpp"
#include "plan/draws.hpp"
#include "plan/samples.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::choose {
namespace {
constexpr std::size_t curves_drawn = 128;

// A fan whose curve is p times the pressure at f times the flow does on one gas path, whose pressure goes with the square
// of the flow, about what one of p^(1/2) f times the pressure at the root of that times the flow does.
double strength(const draught::FanCurve& curve) {
  return std::sqrt(in(curve.shut_off(), Pa)) * in(curve.free_air(), litre_per_s);
}
}  // namespace

double time_spread(const description::part::FanPart& fan, const model::Tuning* tuning) {
  description::Build build;
  build.fan = fan;
  model::Inputs middle({}, tuning);
  if (!model::solve_fan(build, middle)) return 0.0;
  const plan::Draws draws(middle, curves_drawn, 1);
  std::vector<double> strengths;
  for (std::size_t i = 0; i < curves_drawn; ++i) {
    model::Inputs drawn(draws.of_sample(i), tuning);
    if (const auto one = model::solve_fan(build, drawn)) strengths.push_back(strength(one->curve));
  }
  if (strengths.size() < curves_drawn / 2) return 0.0;
  const double power = data::choosing_rules().time_over_pressure;
  return std::pow(numeric::quantile(strengths, 0.5) / numeric::quantile(strengths, plan::low_end), power) - 1.0;
}

double told_apart(const Candidate& a, const Candidate& b) {
  const bool same_fan = a.at.fan == b.at.fan && a.at.pairing == b.at.pairing;
  return same_fan ? least_told_apart() : told_apart_by(a.time_spread, b.time_spread);
}
double told_apart_by(double one_spread, double other_spread) {
  return std::max(least_told_apart(), std::hypot(one_spread, other_spread));
}
double least_told_apart() { return data::choosing_rules().least_apart; }
double most_told_apart(const Stock& stock) {
  double widest = 0.0, second = 0.0;
  for (const double spread : stock.time_spread) {
    second = std::max(second, std::min(widest, spread));
    widest = std::max(widest, spread);
  }
  return told_apart_by(widest, second);
}
}  // namespace lumwright::choose
