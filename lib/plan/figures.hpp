// How finely the numbers of a page are printed: no finer than their bands, and alike wherever they stand.
#pragma once
#include "plan/assessment.hpp"
#include "quantity/format.hpp"

namespace lumwright::plan {
/// Significant digits that a result is worth: to the second figure of half its band, three at most.
int figures_of(const model::Result& result, UnitSystem units);
/// The same for any number of the page: those of the result that says it, or `otherwise`.
int figures_of(const std::vector<model::Result>& results, const model::Measure& measure, UnitSystem units,
               int otherwise = 3);
}  // namespace lumwright::plan
