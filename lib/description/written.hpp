// A quantity as the author of a description would write it: the shortest text that reads back to the very same number.
#pragma once
#include "description/given.hpp"
#include "quantity/text.hpp"
#include <string>

namespace lumwright::description {
/// "17.2 mm". `symbol` must be able to express the quantity; empty for a pure number.
std::string written(AnyQuantity q, std::string_view symbol);
/// "17.2 mm +- 0.03 mm", or "7..9 mm" where only that reads back to the same ends. A spread that lies unevenly about
/// its value, which no description can say, is written as its range.
std::string written(const WrittenBand& band, Kind kind);

template <class Q>
std::string written(const Given<Q>& given) {
  using T = QuantityTraits<Q>;
  const Band<Q>& b = *given.band;
  return written(WrittenBand{T::to_si(b.value), T::to_si(b.low), T::to_si(b.high), given.unit, given.has_spread},
                 kind_of<Q>);
}
}  // namespace lumwright::description
