// What a quantity is, at run time: its dimension, computed from the compile-time type, and the scale it is read on.
#pragma once
#include "quantity/quantity.hpp"
#include <string>

namespace lumwright {
/// A pressure above the barometer, as a boiler's gauge shows it. A type of its own: 3 bar on a gauge is not 3 bar
/// absolute.
struct GaugePressure {
  Pressure above_barometer;
};

struct Dimension {
  int m = 0, kg = 0, s = 0, A = 0, K = 0;
  bool operator==(const Dimension&) const = default;
};
enum class Scale {
  ratio,  // zero means none: a length, a pressure difference, a temperature rise
  point,  // zero is a mark on a scale: 15 degC
  gauge,  // zero is the barometer
};
struct Kind {
  Dimension dimension;
  Scale scale;
  bool operator==(const Kind&) const = default;
};

namespace detail {
constexpr int& exponent(Dimension& d, bu::length_base_dimension) { return d.m; }
constexpr int& exponent(Dimension& d, bu::mass_base_dimension) { return d.kg; }
constexpr int& exponent(Dimension& d, bu::time_base_dimension) { return d.s; }
constexpr int& exponent(Dimension& d, bu::current_base_dimension) { return d.A; }
constexpr int& exponent(Dimension& d, bu::temperature_base_dimension) { return d.K; }
constexpr Dimension dimension(bu::dimensionless_type) { return {}; }
template <class Base, long N, class Rest>  // one step down Boost.Units' list; a fractional exponent finds no match
constexpr Dimension dimension(bu::list<bu::dim<Base, bu::static_rational<N>>, Rest>) {
  Dimension d = dimension(Rest{});
  exponent(d, Base{}) += int{N};
  return d;
}
}  // namespace detail

/// Carries a typed quantity to and from its SI number. The text layer, the results and the sampler stand on it; physics
/// does not.
template <class Q>
struct QuantityTraits;
template <class Unit>
struct QuantityTraits<quantity<Unit>> {
  static constexpr Kind kind{detail::dimension(typename Unit::dimension_type{}), Scale::ratio};
  static constexpr double to_si(quantity<Unit> q) { return q.value(); }
  static constexpr quantity<Unit> from_si(double x) { return quantity<Unit>::from_value(x); }
};
template <>
struct QuantityTraits<Temperature> {
  static constexpr Kind kind{Dimension{.K = 1}, Scale::point};
  static constexpr double to_si(Temperature t) { return in(above_absolute_zero(t), unit::K); }
  static constexpr Temperature from_si(double x) { return kelvin(x); }
};
template <>
struct QuantityTraits<GaugePressure> {
  static constexpr Kind kind{QuantityTraits<Pressure>::kind.dimension, Scale::gauge};
  static constexpr double to_si(GaugePressure p) { return in(p.above_barometer, unit::Pa); }
  static constexpr GaugePressure from_si(double x) { return {x * unit::Pa}; }
};
template <>
struct QuantityTraits<double> {
  static constexpr Kind kind{};
  static constexpr double to_si(double x) { return x; }
  static constexpr double from_si(double x) { return x; }
};
template <class Q>
constexpr Kind kind_of = QuantityTraits<Q>::kind;

/// A quantity whose type is known only at run time: what results, tables and messages hold.
struct AnyQuantity {
  double si = 0;
  Kind kind{};
  AnyQuantity() = default;
  AnyQuantity(double number, Kind k) : si(number), kind(k) {}
  template <class Q>
  requires requires { QuantityTraits<Q>::kind; }
  AnyQuantity(Q q) : si(QuantityTraits<Q>::to_si(q)), kind(kind_of<Q>) {}  // NOLINT: any quantity is one
};

/// "a length", "a gauge pressure", "a pure number": what a message says was expected.
std::string kind_name(Kind kind);
}  // namespace lumwright
