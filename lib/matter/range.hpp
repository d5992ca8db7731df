// Refuses arguments for which a law of physics has no answer.
#pragma once
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
[[noreturn]] void refuse(const char* name, AnyQuantity q, const char* wanted);
[[noreturn]] void refuse(const char* name, AnyQuantity q, Range wanted);
}  // namespace detail

// Each throws ModelError with the name, the value and what was wanted: "tube bore -0.001 m is not above zero". NaN and
// infinity never pass. In line, because an operating point passes thousands of them: what they cost is a comparison.

template <class Q>
void require_above_zero(const char* name, Q q) {
  const double x = AnyQuantity(q).si;
  if (!(x > 0.0 && x <= detail::largest)) detail::refuse(name, q, "above zero");
}
template <class Q>
void require_not_negative(const char* name, Q q) {
  const double x = AnyQuantity(q).si;
  if (!(x >= 0.0 && x <= detail::largest)) detail::refuse(name, q, "zero or more");
}
template <class Q>
void require_finite(const char* name, Q q) {
  const double x = AnyQuantity(q).si;
  if (!(x >= -detail::largest && x <= detail::largest)) detail::refuse(name, q, "a finite number");
}
template <class Q>
void require_within(const char* name, Q q, Range range) {
  const double x = AnyQuantity(q).si;
  if (!(x >= range.low && x <= range.high)) detail::refuse(name, q, range);
}
}  // namespace lumwright
