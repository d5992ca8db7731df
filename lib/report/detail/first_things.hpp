// What comes first, for the screen and for the page alike: what to do, what to mind, what to settle.
#pragma once
#include "plan/assessment.hpp"
#include "report/page.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
/// The checks that do not pass, the gravest first, parted into what is done at the bench, and what is minded while
/// firing.
struct OpenChecks {
  std::vector<const plan::Finding*> work, habits;
};
OpenChecks open_checks(const plan::Assessment& assessment);
/// The title of a check; its id where it has none.
const std::string& check_title(const plan::Finding& finding);
/// Checks that one and the same change clears are told together, in the order of the first of them.
std::vector<std::vector<const plan::Finding*>> by_change(const std::vector<const plan::Finding*>& findings);
/// The change that was tried and clears them; else that none does, and what to do.
std::string what_to_do(const std::vector<const plan::Finding*>& group, const TextStyle& style);

/// What the description should say before anything else is believed.
struct ToSettle {
  std::vector<std::vector<const plan::Finding*>>
      questions;                             // checks that wait for the same keys, the most checks first
  const plan::Narrowing* measure = nullptr;  // what narrows the chief answer most
  std::string_view answer{};                 // the key of that answer
  bool empty() const { return questions.empty() && measure == nullptr; }
};
ToSettle to_settle(const plan::Assessment& assessment);
/// "fuel.kind, fuel.lump: for How long the fire lasts" for each of the first questions; a key is asked for once.
std::vector<std::string> questions_to_write(const ToSettle& settle, std::size_t most);
/// "tuned.heat to 15 % (cold to working pressure): narrows it to about 7 to 8 min, from 6 to 9 min"; `settle` must have
/// something to measure.
std::string measure_words(const ToSettle& settle, const plan::Assessment& assessment, const TextStyle& style, bool how);
/// "a, b and 2 more".
std::string some_of(const std::vector<std::string>& names, std::size_t most);
std::string titles_of(const std::vector<const plan::Finding*>& findings, std::size_t most = 100);
}  // namespace lumwright::report
