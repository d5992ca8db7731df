// In which steps a workshop is told its sizes: by the work that makes them, and by the rule it measures with.
#pragma once
#include "data/shop_rules.hpp"
#include "description/page_units.hpp"
#include "quantity/units.hpp"
#include <cmath>

namespace lumwright::model {
struct ShopSteps {
  Length snipped, filed, turned, fitted;
};
/// In inches where the description writes most lengths so (data/shop_rules.yaml).
inline ShopSteps shop_steps(const description::Build& build) {
  constexpr Length any = 10.0 * mm;
  const std::string rule = is_imperial(description::PageUnits(build).of(any)) ? " in inches" : "";
  const auto step = [&](const char* work) { return data::shop_length(work + rule).value.value; };
  return {step("snipped to"), step("filed to"), step("turned to"), step("fitted to")};
}
inline Length in_steps(Length size, Length step) { return std::round(in(size, step)) * step; }
inline Length in_steps_above(Length size, Length step) { return std::ceil(in(size, step) - 1e-9) * step; }
}  // namespace lumwright::model
