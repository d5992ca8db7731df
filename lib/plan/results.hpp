// The numbered answers of an assessment, by their stable keys.
#pragma once
#include "model/solved.hpp"
#include "plan/assessment.hpp"

namespace lumwright::plan {
/// Every result whose inputs are there, in a fixed order.
std::vector<model::Result> results_of(const model::Solved& solved);
/// The raise through time, and voltage and current of the pack over one charge, each where it was solved. A column
/// whose source is not described stays empty.
std::vector<Series> series_of(const model::Solved& solved);
/// What happens during the raise; nothing where it was not solved.
std::vector<Event> events_of(const model::Solved& solved);
}  // namespace lumwright::plan
