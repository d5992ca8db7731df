#include "data/cells.hpp"
#include "data/tuning.hpp"
#include "numeric/statistics.hpp"
#include "tune/detail/outcome.hpp"
#include "tune/detail/robust.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::tune {
namespace {
constexpr double days_a_month = 365.25 / 12.0;
constexpr int charge_weighings = 40;

struct Charged {
  std::size_t log;
  double months, log_capacity;  // since new cells; of one string
};
struct ChargesTold {
  std::vector<Charged> charges;
  double months_now = 0.0;
};
/// Those after a run to the stop, since the cells were last new; each tells a capacity once what charging takes is off.
ChargesTold charges_told(const description::Build& build, const description::Season& season) {
  const double side_by_side = build.supply.pack.parallel ? *build.supply.pack.parallel : 1;
  const double taken = data::season_constant("taken_by_charging");
  std::optional<std::chrono::sys_days> first;
  ChargesTold out;
  for (std::size_t i = 0; i < season.lighting_ups.size(); ++i) {
    const description::Log& log = season.lighting_ups[i];
    if (!log.date()) continue;
    if (!first || description::part::says_yes(log.done.new_cells)) {
      first = log.date();
      out.charges.clear();
    }
    out.months_now = static_cast<double>((*log.date() - *first).count()) / days_a_month;
    if (description::part::says_yes(log.pack.ran_flat) && log.pack.put_back)
      out.charges.push_back(
          {i, out.months_now, std::log(QuantityTraits<Charge>::to_si(*log.pack.put_back) / taken / side_by_side)});
  }
  return out;
}
struct StraightLine {
  double level, slope, v_level, v_both, v_slope;
};
/// Level and slope with their priors, by weighted least squares (Gelman and others, ch. 14, from memory).
StraightLine line_through(const std::vector<Charged>& charges, const Vector& weights, double usual) {
  const double level = data::season_constant("pack_level"), drift = data::season_constant("pack_drift"),
               each = data::season_constant("pack_reading");
  double a = 1.0 / (level * level), b = 0.0, c = 1.0 / (drift * drift), p = 0.0, q = 0.0;
  for (std::size_t i = 0; i < charges.size(); ++i) {
    const double w = weights[i] / (each * each), x = charges[i].months, y = charges[i].log_capacity - usual;
    a += w, b += w * x, c += w * x * x, p += w * y, q += w * x * y;
  }
  const double d = a * c - b * b;
  return {(c * p - b * q) / d, (a * q - b * p) / d, c / d, -b / d, a / d};
}
}  // namespace

std::optional<PackState> pack_state(const description::Build& build, const description::Season& season) {
  const ChargesTold told = charges_told(build, season);
  const description::part::PackPart& pack = build.supply.pack;
  if (told.charges.empty() || (!pack.capacity && !pack.cell)) return std::nullopt;
  const Charge usual = pack.capacity ? *pack.capacity : data::cell(*pack.cell).capacity.value;
  const double log_usual = std::log(QuantityTraits<Charge>::to_si(usual));
  const double each = data::season_constant("pack_reading");
  Vector weights(told.charges.size(), 1.0), wrong(told.charges.size(), 0.0);
  StraightLine line{};
  for (int i = 0; i < charge_weighings; ++i) {
    line = line_through(told.charges, weights, log_usual);
    for (std::size_t k = 0; k < weights.size(); ++k) {
      const Charged& one = told.charges[k];
      const Belief b = belief((one.log_capacity - log_usual - line.level - line.slope * one.months) / each);
      weights[k] = b.weight, wrong[k] = b.wrong;
    }
  }
  const double x = told.months_now;
  const auto span = [](double middle, double variance, double unit) {
    const double reach = numeric::normal_score(0.9) * std::sqrt(variance);
    return Span{unit * std::exp(middle), unit * std::exp(middle - reach), unit * std::exp(middle + reach)};
  };
  const double v_now = line.v_level + 2.0 * x * line.v_both + x * x * line.v_slope;
  const double reach = numeric::normal_score(0.9) * std::sqrt(line.v_slope);
  const double below = numeric::normal_share(-line.slope / std::sqrt(line.v_slope));
  PackState out{.charges = told.charges.size(),
                .capacity = span(log_usual + line.level + line.slope * x, v_now, 1.0),
                .share_of_new = span(line.slope * x, x * x * line.v_slope, 1.0),
                .each_month = {line.slope, line.slope - reach, line.slope + reach},
                .sure = std::max(below, 1.0 - below)};
  for (std::size_t k = 0; k < wrong.size(); ++k)
    if (wrong[k] > 0.5) out.wrong.push_back(told.charges[k].log);
  return out;
}
}  // namespace lumwright::tune
