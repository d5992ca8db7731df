#include "plan/figures.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::plan {
namespace {
/// Power of ten of the first figure.
int exponent(double x) { return static_cast<int>(std::floor(std::log10(std::abs(x)))); }
/// The same number, come by on another way.
bool alike(double x, double y) { return std::abs(x - y) <= 1e-9 * std::abs(x); }
}  // namespace

int figures_of(const model::Result& result, UnitSystem units) {
  constexpr int usual = 3;
  const model::Measure* like = std::get_if<model::Measure>(&result.value);
  if (like == nullptr || !result.low) return usual;
  if (!result.high) return usual - 1;
  const std::string unit = choose_unit(like->quantity, like->unit, units);
  const double centre = number_in(like->quantity, unit),
               half = 0.5 * (number_in(result.high->quantity, unit) - number_in(result.low->quantity, unit));
  if (!(half > 0.0) || centre == 0.0) return usual;
  return std::clamp(exponent(centre) - (exponent(half) - 1) + 1, 1, usual);
}
int figures_of(const std::vector<model::Result>& results, const model::Measure& measure, UnitSystem units,
               int otherwise) {
  for (const model::Result& result : results) {
    const model::Measure* same = std::get_if<model::Measure>(&result.value);
    if (same == nullptr || same->quantity.kind != measure.quantity.kind) continue;
    const bool ratio = measure.quantity.kind.scale == Scale::ratio;  // "-0.1 mm free" may be "0.1 mm too tight"
    if (alike(same->quantity.si, measure.quantity.si) || (ratio && alike(same->quantity.si, -measure.quantity.si)))
      return figures_of(result, units);
  }
  return otherwise;
}
}  // namespace lumwright::plan
