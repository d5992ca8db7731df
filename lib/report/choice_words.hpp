// What text and page say of a choice in the same words.
#pragma once
#include "plan/choose.hpp"
#include "report/page.hpp"
#include <string>
#include <vector>

namespace lumwright {
std::string name_of(const Candidate& c);  // "grey fan, five AA, small board, turned brass"
/// "all that you want", "in time, but too few light-ups", ...
const char* grade_words(const Candidate& c);
std::string fate_words(const ItemFate& item);                 // "place 2, on the front", "too slow"
bool same_parts(const Combination& a, const Combination& b);  // whatever the engine
/// Minutes, and a mass or "?".
std::string minutes_text(Duration t, const TextStyle& style);
std::string mass_text(const std::optional<Mass>& mass, const TextStyle& style);
std::string light_ups_text(int count);  // "1 light-up", "12 light-ups"
/// "a check of it fails: The fan on the lid"; empty where none does.
std::string failed_checks(const Place& place);
/// Beside each place of a ranking: its grade where that is another than the place before has, and the checks it fails.
std::vector<std::string> remarks_on(const std::vector<Place>& places);
std::string wanted_sentence(const EngineChoice& engine, const TextStyle& style);
/// How far the ranking can be trusted.
std::string tie_sentence(const Choice& choice);

/// What a combination is to be watched for: the checks that it fails, or that none was made because it has no place in
/// its engine's ranking. Empty where nothing is known against it.
std::string still_to_check(const Choice& choice, const Candidate& candidate);

struct Advice {
  Verdict verdict;
  std::string sentence;               // what to take, and what it does
  std::vector<std::string> cautions;  // what to see to first
};
/// The one unit for all engines, or the first place of a single one.
Advice advice_of(const Choice& choice, const TextStyle& style);
}  // namespace lumwright
