// What every part of the workshop asks of a size before it reckons with it.
#pragma once
#include "quantity/band.hpp"
#include "quantity/errors.hpp"
#include "quantity/quantity.hpp"
#include <fmt/format.h>

namespace lumwright {
inline void require_length(bool holds, const char* what, Length found, const char* wanted) {
  if (!holds || !is_finite(found)) throw ModelError(fmt::format("{} {:.6g} mm is not {}", what, in(found, mm), wanted));
}
inline void require_above_zero(const char* what, Length found) {
  require_length(found > 0.0 * mm, what, found, "above zero");
}
inline void require_not_negative(const char* what, Length found) {
  require_length(found >= 0.0 * mm, what, found, "zero or more");
}
inline void require_band(const char* what, const Band<Length>& band) {
  require_above_zero(what, band.low);
  require_length(band.low <= band.value, what, band.value, "at least the low end of its spread");
  require_length(band.value <= band.high, what, band.high, "in order with its spread");
}
}  // namespace lumwright
