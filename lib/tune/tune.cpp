#include "model/solved_raise.hpp"
#include "tune/tune.hpp"
#include "description/values.hpp"
#include "input/utf8.hpp"
#include "quantity/format.hpp"
#include "quantity/text.hpp"
#include "tune/detail/parts.hpp"
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

struct ToPressure {
  std::optional<Duration> own_blower, working;
};
ToPressure times(const description::Build& build, const model::Tuning& tuning) {
  const auto raise = model::solve(build, {}, &tuning).raise;
  if (!raise) return {};
  return {raise->raise.time_of(boiler::RaiseEventKind::own_blower),
          raise->raise.time_of(boiler::RaiseEventKind::working)};
}
model::Tuning values_at(const std::vector<TunedFactor>& factors, bool after, std::size_t moved, double by) {
  model::Tuning tuning;
  for (std::size_t k = 0; k < factors.size(); ++k) {
    const TunedFactor& f = factors[k];
    const double x = (after ? f.value : f.prior) + (k == moved ? by * f.prior_sigma : 0.0);
    tuning.values.emplace(f.key, model::TunedValue{AnyQuantity(x, f.kind), x, x, f.unit});
  }
  return tuning;
}
constexpr std::size_t none = static_cast<std::size_t>(-1);
constexpr double step = 0.5;  // prior sigmas: the spread of a time, not its slope at a point

/// d time / du of every factor; nothing if a time is not reached.
template <class Member>
std::optional<std::vector<double>> time_slopes(const std::vector<ToPressure>& high, const std::vector<ToPressure>& low,
                                               Member member) {
  std::vector<double> out;
  for (std::size_t k = 0; k < high.size(); ++k) {
    if (!(high[k].*member && low[k].*member)) return std::nullopt;
    out.push_back(in(*(high[k].*member) - *(low[k].*member), s) / (2.0 * step));
  }
  return out;
}
struct Spreads {
  ToPressure at, sigma;
};
/// `covariance` of the determined factors; the others keep that of their prior. Before tuning all do.
Spreads spreads(const description::Build& build, const TuneFit& fit, bool after) {
  const auto& factors = fit.factors;
  std::vector<ToPressure> high, low;
  for (std::size_t k = 0; k < factors.size(); ++k) {
    high.push_back(times(build, values_at(factors, after, k, step)));
    low.push_back(times(build, values_at(factors, after, k, -step)));
  }
  const auto sigma = [&](auto member) -> std::optional<Duration> {
    const auto slope = time_slopes(high, low, member);
    if (!slope) return std::nullopt;
    double variance = 0.0;
    std::vector<double> known;
    for (std::size_t k = 0; k < factors.size(); ++k)
      if (after && factors[k].determined)
        known.push_back((*slope)[k]);
      else
        variance += (*slope)[k] * (*slope)[k];
    for (std::size_t a = 0; a < known.size(); ++a)
      for (std::size_t b = 0; b < known.size(); ++b) variance += known[a] * fit.covariance[a][b] * known[b];
    return std::sqrt(variance) * s;
  };
  return {times(build, values_at(factors, after, none, 0.0)),
          {sigma(&ToPressure::own_blower), sigma(&ToPressure::working)}};
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

TuneResult tune(const description::Build& build, const description::Log& log) {
  TuneResult result{.fit = fit_log(build, log), .tuning = {}, .own_blower = {}, .working = {}};
  for (TunedFactor& f : result.fit.factors) {
    if (!f.determined) continue;
    const model::TunedValue value = rounded(f, result.fit.cover);
    f.value = value.value.si;
    result.tuning.values.emplace(f.key, value);
  }
  const Spreads before = spreads(build, result.fit, false), after = spreads(build, result.fit, true);
  if (build.engine.boiler.own_blower_from)
    result.own_blower =
        SteamTime{before.at.own_blower, after.at.own_blower, before.sigma.own_blower, after.sigma.own_blower};
  if (build.engine.boiler.working)
    result.working = SteamTime{before.at.working, after.at.working, before.sigma.working, after.sigma.working};
  return result;
}

model::Tuning tuning_of(const description::TunedFile& file) {
  model::Tuning tuning{file.file, {}};
  ToMap visitor{tuning.values};
  description::TunedFile::fields(file, visitor);
  return tuning;
}
description::TunedFile file_of(const TuneResult& result, const description::Log& log) {
  description::TunedFile file;
  FromMap visitor{result.tuning.values};
  description::TunedFile::fields(file, visitor);
  const std::string name = log.file.substr(log.file.find_last_of("/\\") + 1);
  file.log.value = name.size() <= description::longest_text ? input::printable(name) : "a log with a long name";
  file.day = log.day;
  return file;
}
}  // namespace lumwright::tune
