// The numbered answers of an assessment, by their stable keys.
#pragma once
#include "plan/assessment.hpp"
#include "plan/solved.hpp"

namespace lumwright {
/// Every result whose inputs are there, in a fixed order.
std::vector<Result> results_of(const Solved& solved);
/// Voltage and current of the pack over one charge; empty without a supply.
std::vector<Series> series_of(const Solved& solved);
}  // namespace lumwright
