#include "description/keys.hpp"
#include "numeric/quasi_random.hpp"
#include "numeric/statistics.hpp"
#include "plan/detail/bands.hpp"
#include "quantity/text.hpp"
#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace lumwright::plan {
namespace {
constexpr std::size_t most_widenings = 3, most_narrowings = 4;
constexpr double worth_a_word = 0.02;     // of the variance
constexpr double worth_measuring = 0.95;  // of the width that is left

/// Cause and effect over the samples in which both exist.
struct Pairs {
  std::vector<double> cause, effect;
  Pairs(const std::vector<double>& x, const std::vector<double>& y) {
    for (std::size_t i = 0; i < x.size(); ++i)
      if (!std::isnan(x[i]) && !std::isnan(y[i])) {
        cause.push_back(x[i]);
        effect.push_back(y[i]);
      }
  }
  double share() const { return numeric::variance_share({cause, effect}); }
};
std::string meaning_of(const std::string& key, const model::Solved& central) {
  for (const description::Key& known : description::keys())
    if (known.section + "." + std::string(known.field.key) == key) return std::string(known.field.meaning);
  for (const model::Assumed& assumed : central.inputs.assumed())
    if (assumed.key == key) return assumed.why;
  return "";
}

struct Observed {
  const SampleColumn* column;
  AnyQuantity value;
};
/// The quantity that a measurement takes, if the samples know it and it varies.
std::optional<Observed> observed(const std::string& key, const model::Solved& central, const Samples& samples,
                                 const std::vector<model::Result>& results) {
  if (const SampleColumn* input = find_column(samples.inputs, key)) {
    const model::Input* used = central.inputs.find(key);
    if (used == nullptr) return std::nullopt;
    return Observed{input, used->value};
  }
  const SampleColumn* result = find_column(samples.results, key);
  for (const model::Result& one : results)
    if (result != nullptr && one.key == key) return Observed{result, std::get<model::Measure>(one.value).quantity};
  return std::nullopt;
}
double standard_error(const data::MeasurementRow& row, AnyQuantity value) {
  constexpr double expanded = 2.0;
  if (row.within.ends_with("%")) return parse_band(row.within, kind_of<double>).value * std::abs(value.si) / expanded;
  Kind kind = value.kind;
  if (kind.scale == Scale::point) kind.scale = Scale::ratio;  // an error in kelvin is a difference
  return parse_band(row.within, kind).value / expanded;
}
/// How well it measures, in the unit that such things have on the page.
std::string within_on_page(const data::MeasurementRow& row, AnyQuantity value, const model::Solved& central) {
  if (row.within.ends_with("%") || value.kind.scale == Scale::point) return row.within;
  const WrittenBand written = parse_band(row.within, value.kind);
  const AnyQuantity within(written.value, value.kind);
  const std::string of = central.page.of(within);
  const std::string unit = choose_unit(within, of.empty() ? written.unit : of, central.units);
  return unit == written.unit ? row.within : format(within, unit, 2);
}
}  // namespace

std::vector<SampleReadings> readings_in(const Samples& samples, const model::Solved& central,
                                        const std::vector<model::Result>& results, std::uint64_t seed) {
  std::vector<SampleReadings> all;
  for (const data::MeasurementRow& row : data::measurements()) {
    const auto seen = observed(row.of, central, samples, results);
    if (!seen) continue;
    const double error = standard_error(row, seen->value);
    const std::string name = "reading of " + row.id;
    std::vector<double> read = seen->column->si;
    for (std::size_t i = 0; i < read.size(); ++i)
      read[i] += error * numeric::normal_score(numeric::stray_coordinate(i, name, seed));
    all.push_back({row, within_on_page(row, seen->value, central), std::move(read)});
  }
  return all;
}

Sensitivity sensitivity_of(const std::string& answer, const model::Solved& central, const Samples& samples,
                           const std::vector<SampleReadings>& readings) {
  const SampleColumn* effect = find_column(samples.results, answer);
  if (effect == nullptr) throw std::logic_error("the samples know no " + answer);
  Sensitivity sensitivity{answer, {}, {}};
  const double least =
      std::max(worth_a_word, 3.0 * numeric::share_of_nothing(samples.count));  // one of some forty inputs
  for (const SampleColumn& cause : samples.chances) {
    const double share = Pairs(cause.si, effect->si).share();
    const model::Input* input = samples.drawn_from.find(cause.key);
    if (share < least || input == nullptr || central.inputs.find(cause.key) == nullptr) continue;
    const std::string of = input->origin == model::Origin::written ? "" : central.page.of(input->value);
    const std::string& unit = of.empty() ? input->unit : of;
    const auto shown = [&](double si) { return model::Measure{AnyQuantity(si, input->value.kind), unit}; };
    sensitivity.widest.push_back({cause.key, meaning_of(cause.key, central), share, shown(input->value.si),
                                  shown(input->low), shown(input->high)});
  }
  for (const auto& [row, within, read] : readings) {
    if (row.of == answer) continue;
    const double left = std::sqrt(1.0 - Pairs(read, effect->si).share());
    if (left < worth_measuring)
      sensitivity.narrowings.push_back(
          {row.id, row.what, row.of, within, row.needs, row.tool, row.how, row.write, row.basis, left});
  }
  const auto cut = [](auto& list, std::size_t most, auto before) {
    std::stable_sort(list.begin(), list.end(), before);
    if (list.size() > most) list.erase(list.begin() + static_cast<std::ptrdiff_t>(most), list.end());
  };
  cut(sensitivity.widest, most_widenings, [](const Widening& a, const Widening& b) { return a.share > b.share; });
  cut(sensitivity.narrowings, most_narrowings, [](const Narrowing& a, const Narrowing& b) { return a.left < b.left; });
  return sensitivity;
}
}  // namespace lumwright::plan
