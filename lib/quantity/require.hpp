// Refuses arguments for which a law has no answer. One vocabulary: the name, the quantity, what is asked of it, and the
// unit to tell it in where SI would not be read with ease.
#pragma once
#include "quantity/band.hpp"
#include "quantity/errors.hpp"
#include "quantity/kind.hpp"
#include <limits>

namespace lumwright {
/// Both ends included; `low` and `high` in SI.
struct Range {
  double low, high;
};

namespace detail {
inline constexpr double largest = std::numeric_limits<double>::max();
[[noreturn]] void refuse(const char* name, AnyQuantity q, const char* wanted, const char* unit);
[[noreturn]] void refuse(const char* name, AnyQuantity q, Range wanted);
}  // namespace detail

// Each throws ModelError with the name, the value and what was wanted: "tube bore -0.001 m is not above zero". NaN and
// infinity never pass. In line, because an operating point passes thousands of them: what they cost is a comparison.
// Without a unit the value is told in SI.

template <class Q>
void require_above_zero(const char* name, Q q, const char* unit = "") {
  const double x = AnyQuantity(q).si;
  if (!(x > 0.0 && x <= detail::largest)) detail::refuse(name, q, "above zero", unit);
}
template <class Q>
void require_not_negative(const char* name, Q q, const char* unit = "") {
  const double x = AnyQuantity(q).si;
  if (!(x >= 0.0 && x <= detail::largest)) detail::refuse(name, q, "zero or more", unit);
}
template <class Q>
void require_finite(const char* name, Q q, const char* unit = "") {
  const double x = AnyQuantity(q).si;
  if (!(x >= -detail::largest && x <= detail::largest)) detail::refuse(name, q, "a finite number", unit);
}
template <class Q>
void require_within(const char* name, Q q, Range range) {
  const double x = AnyQuantity(q).si;
  if (!(x >= range.low && x <= range.high)) detail::refuse(name, q, range);
}
/// A share of which there is some: over 0, up to 1.
inline void require_share(const char* name, double share) {
  if (!(share > 0.0 && share <= 1.0)) detail::refuse(name, share, Range{0.0, 1.0});
}
/// What two numbers must be to each other: "tube wall 9 mm is not thin enough to leave a bore".
template <class Q>
void require_that(const char* name, Q q, bool holds, const char* wanted, const char* unit = "") {
  if (!holds || !is_finite(q)) detail::refuse(name, q, wanted, unit);
}
/// Above zero and in order.
template <class Q>
void require_band(const char* name, const Band<Q>& band, const char* unit = "") {
  require_above_zero(name, band.low, unit);
  require_that(name, band.value, band.low <= band.value, "at least the low end of its spread", unit);
  require_that(name, band.high, band.value <= band.high, "in order with its spread", unit);
}
}  // namespace lumwright
