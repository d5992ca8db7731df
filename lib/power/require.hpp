// The refusals that the models of this folder share.
#pragma once
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <string_view>

namespace lumwright {
/// Throws ModelError that names the quantity and its value unless it is finite and above zero.
template <class Q>
void require_positive(Q q, std::string_view unit, std::string_view what) {
  const double number = QuantityTraits<Q>::to_si(q);
  if (!std::isfinite(number) || !(number > 0.0))
    throw ModelError(std::string(what) + " " + format(q, unit) + " is not above zero");
}
/// The same, with zero allowed.
template <class Q>
void require_not_negative(Q q, std::string_view unit, std::string_view what) {
  const double number = QuantityTraits<Q>::to_si(q);
  if (!std::isfinite(number) || !(number >= 0.0))
    throw ModelError(std::string(what) + " " + format(q, unit) + " is below zero");
}
/// Over 0, up to 1.
inline void require_share(double share, std::string_view what) {
  if (!(share > 0.0 && share <= 1.0))
    throw ModelError(std::string(what) + " " + format_number(share) + " is not between 0 and 1");
}
}  // namespace lumwright
