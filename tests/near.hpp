// CHECK(q == near(expected, 1e-3)): a stated relative tolerance; failures print both sides with their units.
#pragma once
#include "quantity/format.hpp"
#include "quantity/kind.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <fmt/format.h>

namespace lumwright {
template <class Q>
struct Near {
  Q expected;
  double relative;
};
template <class Q>
Near<Q> near(Q expected, double relative) {
  return {expected, relative};
}
template <class Q>
bool operator==(const Q& actual, const Near<Q>& wanted) {  // false when either side is NaN
  const double a = QuantityTraits<Q>::to_si(actual), e = QuantityTraits<Q>::to_si(wanted.expected);
  return std::abs(a - e) <= wanted.relative * std::abs(e);
}
template <class Q>
std::string shown(Q q) {
  return fmt::format("{:.9g} {}", QuantityTraits<Q>::to_si(q), si_symbol(kind_of<Q>));
}
}  // namespace lumwright
template <class U>
struct doctest::StringMaker<boost::units::quantity<U>> {
  static String convert(const boost::units::quantity<U>& q) { return lumwright::shown(q).c_str(); }
};
template <class Q>
struct doctest::StringMaker<lumwright::Near<Q>> {
  static String convert(const lumwright::Near<Q>& n) {
    return (lumwright::shown(n.expected) + fmt::format(" within {:g} %", 100 * n.relative)).c_str();
  }
};
