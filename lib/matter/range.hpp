// Refuses arguments for which a law of physics has no answer.
#pragma once
#include "quantity/errors.hpp"
#include "quantity/kind.hpp"

namespace lumwright {
// Each throws ModelError with the name, the value and what was wanted: "tube bore -0.001 m is not above zero". NaN and
// infinity never pass.

void require_above_zero(const char* name, AnyQuantity q);
void require_not_negative(const char* name, AnyQuantity q);
void require_finite(const char* name, AnyQuantity q);
/// Both ends included; `low` and `high` in SI.
struct Range {
  double low, high;
};
void require_within(const char* name, AnyQuantity q, Range range);
}  // namespace lumwright
