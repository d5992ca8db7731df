#include "tune/priors.hpp"
#include "data/tuning.hpp"
#include "numeric/statistics.hpp"
#include "quantity/text.hpp"
#include "tune/detail/outcome.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::tune {
namespace {
constexpr double tells_nothing = 0.9;  // of the usual sigma: a record no surer than this owes all to the table
constexpr double sigmas_of_spread = 2.0;
const double root_two = std::sqrt(2.0);

/// The law of a class: in units in which both halves of the usual variance are one.
Law class_law() { return {1, {0}, {1.0}, data::season_constant("scatter_spread"), {}, {}}; }
Mixture next_of(const std::vector<ToldFactor>& told) {
  std::vector<DayEvidence> engines;
  for (const ToldFactor& one : told) {
    const double information = 0.5 / one.variance;
    engines.push_back({{{information}}, {information * one.value * root_two}, {}});
  }
  return Posterior(class_law(), engines, engines.size()).of({{1.0}, {}, true});
}
std::string fuel_of(const description::Build& build) { return build.fuel.kind ? *build.fuel.kind : "lump charcoal"; }
std::string fan_of(const description::Build& build) { return build.fan.kind ? *build.fan.kind : "axial"; }

struct Field {
  std::string_view key;
  description::Given<double> description::PriorRecord::*value;
};
constexpr Field fields[] = {{"tuned.heat", &description::PriorRecord::heat},
                            {"tuned.fan_pressure", &description::PriorRecord::fan_pressure},
                            {"engine.leakage.smokebox", &description::PriorRecord::smokebox_leak}};
/// Values to four figures, spreads to two: a record is read by people.
description::Given<double> with_sigma(double value, double sigma) {
  const WrittenBand band =
      parse_band(fmt::format("{:.4g} +- {:.2g}", value, sigmas_of_spread * sigma), kind_of<double>);
  return {Band<double>{band.value, band.low, band.high}, "", true, {}};
}
double sigma_of(const description::Given<double>& given) {
  return (given.band->high - given.band->low) / (2.0 * sigmas_of_spread);
}
/// The usual values of the tables for a build, with nothing that its author wrote of them.
std::vector<Factor> usual_factors(description::Build build) {
  build.engine.leakage.smokebox = {};
  return factors_of(LightingUp(build, {}));
}
}  // namespace

Span next_engine(const std::vector<ToldFactor>& told) {
  const Mixture next = next_of(told);
  return {next.quantile(0.5) / root_two, next.quantile(0.1) / root_two, next.quantile(0.9) / root_two};
}

description::PriorRecord record_of(const description::Build& build, const description::Season& season) {
  description::Build plain = build;
  plain.engine.leakage.smokebox = {};  // of the table: else the record would tell what its author thought
  const TuneFit fit = tune(plain, season).fit;
  description::PriorRecord record;
  record.fuel.value = fuel_of(build), record.fan.value = fan_of(build);
  record.fires.value = static_cast<int>(std::min<std::size_t>(season.lighting_ups.size(), 200));
  bool any = false;
  for (const TunedFactor& f : fit.factors)
    for (const Field& field : fields) {
      const double sigma = std::log(f.engine.high / f.engine.low) / (2.0 * numeric::normal_score(0.9));
      if (f.key != field.key || sigma > tells_nothing * f.prior_sigma / f.prior) continue;
      record.*field.value = with_sigma(f.engine.value, f.engine.value * sigma);
      any = true;
    }
  if (!any) throw ModelError("the season tells nothing that a club could pool: it needs more readings");
  return record;
}

PooledPriors pooled_priors(const description::Build& build, const std::vector<description::PriorRecord>& records) {
  PooledPriors out{};
  std::vector<const description::PriorRecord*> alike;
  for (const description::PriorRecord& record : records) {
    if (*record.fuel == fuel_of(build) && *record.fan == fan_of(build))
      alike.push_back(&record);
    else
      out.left_out.push_back(record.file);
  }
  if (alike.empty())
    throw ModelError(fmt::format("none of the records is of an engine with {} and a fan of the kind {}", fuel_of(build),
                                 fan_of(build)));
  out.taken = alike.size();
  model::Tuning tuning;
  for (const Factor& f : usual_factors(build))
    for (const Field& field : fields) {
      if (f.key != field.key) continue;
      std::vector<ToldFactor> told;
      for (const description::PriorRecord* record : alike) {
        const auto& given = record->*field.value;
        if (!given) continue;
        const double value = std::log(*given / f.prior) / f.log_sigma(),
                     variance = std::pow(sigma_of(given) / *given / f.log_sigma(), 2);
        if (variance >= 1.0) continue;
        const double own = 1.0 / variance - 1.0;  // without the table's
        told.push_back({value / variance / own, 1.0 / own});
      }
      if (told.empty()) continue;
      const Span next = next_engine(told);
      const double middle = f.at(next.value),
                   sigma = (next.high - next.low) / (2.0 * numeric::normal_score(0.9)) * f.log_sigma() * middle;
      const auto rounded = with_sigma(middle, sigma);
      tuning.values.emplace(f.key, model::TunedValue{AnyQuantity(*rounded), rounded.band->low, rounded.band->high, ""});
    }
  if (tuning.values.empty()) throw ModelError("the records tell nothing that this build could use");
  out.file = file_of_values(tuning);
  out.file.log.value = fmt::format("{} record{} of a club", out.taken, out.taken == 1 ? "" : "s");
  return out;
}
}  // namespace lumwright::tune
