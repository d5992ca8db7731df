// The unit of every kind of quantity on a page, chosen once: the one that the description writes most.
#pragma once
#include "description/build.hpp"
#include "quantity/format.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::description {
class PageUnits {
 public:
  /// Nothing was written: everything in its usual unit.
  PageUnits() = default;
  /// Counts the units that the description writes, kind by kind; the first of equals stands.
  explicit PageUnits(const Build& build);
  /// The symbol for a quantity of the page; empty where the usual one for its size will do.
  std::string of(AnyQuantity q) const;

 private:
  struct Written {
    Kind kind;
    bool large;  // read on another instrument: a barometer, beside a U-tube
    std::string unit;
    int times;
  };
  friend class UnitsCounted;
  void count(AnyQuantity q, std::string_view unit);
  std::vector<Written> written_;  // in the order of the description
};
}  // namespace lumwright::description
