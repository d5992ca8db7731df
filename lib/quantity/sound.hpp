// A guard on numbers that the model came to by itself: one that no physics gives is our mistake, never an answer.
#pragma once
#include "quantity/kind.hpp"
#include <initializer_list>
#include <limits>
#include <stdexcept>
#include <string>
#include <string_view>

namespace lumwright {
/// "tubes: pressure loss came to nan Pa from air flow 0.0004 kg/s, gas 900 K": the element, the number, what went in.
/// Not a ModelError: no change of the description is known to help, and no check may take it for a verdict.
struct UnsoundNumber : std::logic_error {
  using std::logic_error::logic_error;
};
struct Operand {
  std::string_view name;
  AnyQuantity value;
};
enum class Sound {
  finite,
  not_negative,  // and finite
  positive       // and finite
};

[[noreturn]] void refuse_unsound(std::string_view element, std::string_view what, AnyQuantity value,
                                 std::initializer_list<Operand> inputs);
/// Returns `value`. Throws UnsoundNumber with element and inputs if it is not as sound as it must be; NaN never is.
template <class Q>
Q sound(Q value, Sound wanted, std::string_view element, std::string_view what, std::initializer_list<Operand> inputs) {
  constexpr double largest = std::numeric_limits<double>::max();
  const double x = AnyQuantity(value).si;
  const bool holds =
      x >= -largest && x <= largest && (wanted == Sound::finite || x >= 0.0) && (wanted != Sound::positive || x > 0.0);
  if (!holds) refuse_unsound(element, what, value, inputs);
  return value;
}
}  // namespace lumwright
