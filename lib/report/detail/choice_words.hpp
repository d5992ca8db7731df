// What text and page say of a choice in the same words.
#pragma once
#include "choose/choose.hpp"
#include "report/page.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
std::string name_of(const choose::Candidate& c);  // "grey fan, five AA, small board, turned brass"
/// "all that you want", "in time, but too few light-ups", ...
const char* grade_words(const choose::Candidate& c);
std::string fate_words(const choose::ItemFate& item);                         // "place 2, on the front", "too slow"
bool same_parts(const choose::Combination& a, const choose::Combination& b);  // whatever the engine
/// Minutes, and a mass or "?".
std::string minutes_text(Duration t, const TextStyle& style);
std::string mass_text(const std::optional<Mass>& mass, const TextStyle& style);
std::string light_ups_text(int count);  // "1 light-up", "12 light-ups"
/// Beside each place of a ranking: its grade where that is another than the place before has, what is to be watched,
/// what is sized for it, and what is as good.
std::vector<std::string> remarks_on(const std::vector<choose::Place>& places, const TextStyle& style);
/// "to watch: Minutes to steam, The fuse"; empty where nothing is.
std::string watch_words(const std::vector<std::string>& watches);
/// What did not get a place because a check fails, and what fits where no tube does; empty where there is nothing.
std::string none_sentence(const choose::EngineChoice& engine);  // where there are no places
std::string loss_words(const choose::Serving& s);               // "fails a check: The fuse"
std::string barred_sentence(const choose::EngineChoice& engine);
std::string tubes_sentence(const choose::EngineChoice& engine);
std::string wanted_sentence(const choose::EngineChoice& engine, const TextStyle& style);
/// How far the ranking can be trusted.
std::string tie_sentence(const choose::Choice& choice);

struct Advice {
  plan::Verdict verdict;
  std::string sentence;               // what to take, and what it does
  std::vector<std::string> cautions;  // what to see to first
};
/// The one unit for all engines, or the first place of a single one.
Advice advice_of(const choose::Choice& choice, const TextStyle& style);
}  // namespace lumwright::report
