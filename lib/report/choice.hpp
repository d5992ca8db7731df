// What was chosen from a bin: as a page to read, as JSON, as a table for spreadsheets, and as the dots of a chart.
#pragma once
#include "choose/choose.hpp"
#include "report/page.hpp"
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace lumwright::report {
/// For each engine the ranking with its ties, the front, and why the others lose; then the unit that serves them all.
std::string choice_report(const choose::Choice& choice, const TextStyle& style);
/// One object, "format": "lumwright/1" with "choice": SI numbers with their unit beside them. Losers are counted by
/// reason and by thing; each of them stands in the CSV. Throws std::logic_error for a number that is not finite.
std::string choice_json(const choose::Choice& choice);
/// Every combination: engine,fan,pack,step_up,tube,place,front,to_steam_s,light_ups,mass_kg,why_not. What was not
/// worked out is empty.
std::string choice_csv(const choose::Choice& choice, UnitSystem units = UnitSystem::as_written);

/// Minutes against light-ups: the places and the front of one engine.
struct ChoiceDot {
  std::string name;  // "grey fan, five AA, small board, turned brass"
  Duration to_steam;
  int light_ups;
  std::optional<Mass> mass;
  std::optional<std::size_t> place;  // from 1
  bool on_front;
};
/// The fastest first.
std::vector<ChoiceDot> choice_dots(const choose::EngineChoice& engine);
}  // namespace lumwright::report
