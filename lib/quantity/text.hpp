// Text to quantity: "9/16 in", "1 1/2 in", "17.2 mm ± 0.05 mm", "60 Pa +- 10 %", "7..9 mm", "15 degC", "1.2 bar g",
// "17,2 mm", "6 min 30 s", "6:30".
#pragma once
#include "quantity/band.hpp"
#include "quantity/kind.hpp"
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

namespace lumwright {
/// Text that is not the quantity it should be. Knows no file; `at` and `width` are bytes within the text.
struct QuantityError : std::runtime_error {
  QuantityError(const std::string& message, std::string help_, std::size_t at_, std::size_t width_,
                std::optional<int> gauge_ = {})
      : std::runtime_error(message), help(std::move(help_)), at(at_), width(width_), gauge(gauge_) {}
  std::string help;
  std::size_t at, width;
  std::optional<int> gauge;  // the text was a sheet or wire gauge number: the caller can name candidate thicknesses
};

struct WrittenBand {  // SI numbers of the wanted kind
  double value, low, high;
  std::string unit;  // the symbol to answer in; empty for a pure number
  bool has_spread;
};
/// Reads a quantity of `kind`. Throws QuantityError for a wrong dimension, an unknown unit (the nearest is named), a
/// gauge number, a bare number where a unit is needed, a comma that may part thousands, a number out of range, a spread
/// that makes no sense. A per cent spread is relative to the value, except behind a percentage, where it is in points.
WrittenBand parse_band(std::string_view text, Kind kind);

template <class Q>
Band<Q> parse_band(std::string_view text) {
  const WrittenBand w = parse_band(text, kind_of<Q>);
  using T = QuantityTraits<Q>;
  return {T::from_si(w.value), T::from_si(w.low), T::from_si(w.high)};
}
template <class Q>
Q parse_quantity(std::string_view text) {
  return parse_band<Q>(text).value;
}
}  // namespace lumwright
