#include "tune/tune.hpp"
#include "description/values.hpp"
#include "input/utf8.hpp"
#include "quantity/format.hpp"
#include "quantity/text.hpp"
#include "tune/detail/outcome.hpp"
#include <cmath>
#include <fmt/format.h>

namespace lumwright::tune {
namespace {
/// Spread to two digits, the value to the same place: what the file says is what is used.
model::TunedValue rounded(const TunedFactor& f, double cover) {
  const double value = number_in({f.value, f.kind}, f.unit);
  const double scale = number_in({f.value + cover * f.sigma, f.kind}, f.unit) - value;
  const int places = std::max(0, 1 - static_cast<int>(std::floor(std::log10(scale))));
  const std::string behind = f.unit.empty() ? "" : " " + f.unit;
  const std::string text = fmt::format("{:.{}f}{} +- {:.{}f}{}", value, places, behind, scale, places, behind);
  const WrittenBand band = parse_band(text, f.kind);
  return {AnyQuantity(band.value, f.kind), band.low, band.high, f.unit};
}

/// Minutes to a pressure: before tuning, with the priors' bands, and at the next lighting-up.
SteamTime steam_time(const description::Build& build, const SeasonFit& fit, const model::Tuning& tuning,
                     GaugePressure gauge) {
  SteamTime out{};
  const LightingUp model(build, {});
  const auto time_with = [&](const model::Tuning& values) -> std::optional<Duration> {
    try {
      return model.time_to(gauge, values);
    } catch (const ModelError&) {
      return std::nullopt;
    }
  };
  const auto band = [&](const Posterior& known, const Vector& about) -> std::optional<std::pair<Duration, Duration>> {
    try {
      const Minutes minutes(model, fit.factors(), about, gauge);
      const Span span = minutes.band(known.of(minutes.functional(fit.next_counts(), true)));
      return std::pair{span.low * s, span.high * s};
    } catch (const ModelError&) {
      return std::nullopt;
    }
  };
  const std::size_t n = fit.factors().size();
  out.before = time_with(tuning_at(fit.factors(), Vector(n, 0.0)));
  out.after = time_with(tuning);
  out.band_before = band(Posterior(fit.law(), {}, 0), Vector(n, 0.0));
  Vector about(n, 0.0);
  for (std::size_t k = 0; k < n; ++k) {
    Vector of_day(n, 0.0);
    of_day[k] = 1.0;
    about[k] = fit.posterior().of({of_day, fit.next_counts(), false}).mean();
  }
  out.band_after = band(fit.posterior(), about);
  return out;
}

/// Carries values between the fields of a file and a map by key.
struct ToMap {
  std::map<std::string, model::TunedValue, std::less<>>& values;
  std::string path{};
  template <class Q>
  void operator()(const description::Field& field, const description::Given<Q>& given, description::Limits) {
    using T = QuantityTraits<Q>;
    if (given)
      values.emplace(path + std::string(field.key), model::TunedValue{AnyQuantity(*given), T::to_si(given.band->low),
                                                                      T::to_si(given.band->high), given.unit});
  }
  void operator()(const description::Field&, const description::Text&, description::Allowed) {}
  template <class Part>
  void section(const description::Field& field, const Part& part) {
    ToMap inner{values, path + std::string(field.key) + "."};
    Part::fields(part, inner);
  }
};
struct FromMap {
  const std::map<std::string, model::TunedValue, std::less<>>& values;
  std::string path{};
  template <class Q>
  void operator()(const description::Field& field, description::Given<Q>& given, description::Limits) {
    const auto found = values.find(path + std::string(field.key));
    if (found == values.end()) return;
    using T = QuantityTraits<Q>;
    const model::TunedValue& v = found->second;
    given = {Band<Q>{T::from_si(v.value.si), T::from_si(v.low), T::from_si(v.high)}, v.unit, v.low < v.high, {}};
  }
  void operator()(const description::Field&, description::Text&, description::Allowed) {}
  template <class Part>
  void section(const description::Field& field, Part& part) {
    FromMap inner{values, path + std::string(field.key) + "."};
    Part::fields(part, inner);
  }
};
}  // namespace

TuneResult tune(const description::Build& build, const description::Season& season, const model::Tuning* usual) {
  SeasonFit search(build, season, usual);
  search.search();
  return told_by(search, build, season);
}
TuneResult told_by(const SeasonFit& search, const description::Build& build, const description::Season& season) {
  TuneResult result{.fit = outcome_of(search, season), .tuning = {}, .own_blower = {}, .working = {}, .pack = {}};
  for (TunedFactor& f : result.fit.factors) {
    if (!f.determined) continue;
    const model::TunedValue value = rounded(f, result.fit.cover);
    f.value = value.value.si;
    result.tuning.values.emplace(f.key, value);
  }
  const description::part::Boiler& boiler = build.engine.boiler;
  if (boiler.own_blower_from) result.own_blower = steam_time(build, search, result.tuning, *boiler.own_blower_from);
  if (boiler.working) result.working = steam_time(build, search, result.tuning, *boiler.working);
  result.pack = pack_state(build, season);
  return result;
}

model::Tuning tuning_of(const description::TunedFile& file) {
  model::Tuning tuning{file.file, {}};
  ToMap visitor{tuning.values};
  description::TunedFile::fields(file, visitor);
  return tuning;
}
description::TunedFile file_of_values(const model::Tuning& tuning) {
  description::TunedFile file;
  FromMap visitor{tuning.values};
  description::TunedFile::fields(file, visitor);
  return file;
}
description::TunedFile file_of(const TuneResult& result, const description::Season& season) {
  description::TunedFile file = file_of_values(result.tuning);
  const std::string name = season.file.substr(season.file.find_last_of("/\\") + 1);
  file.log.value = name.size() <= description::longest_text ? input::printable(name) : "a log with a long name";
  file.day = season.lighting_ups.back().day;
  return file;
}
}  // namespace lumwright::tune
