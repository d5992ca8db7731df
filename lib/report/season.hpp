// A season as a page to read: a line a lighting-up, what drifts, and what is due.
#pragma once
#include "report/page.hpp"
#include "tune/season_story.hpp"
#include <string>

namespace lumwright::report {
/// At most 40 lines of 80 columns: of a long season the last lighting-ups.
std::string season_report(const tune::SeasonStory& story, const description::Season& season, const TextStyle& style);
/// Every reading that is not believed, a line each.
std::string doubted_readings(const tune::SeasonStory& story, const description::Season& season, const TextStyle& style);
/// "Sweep the tubes: due now.", a sentence each; one that nothing is due where nothing is.
std::vector<std::string> due_words(const tune::SeasonStory& story);
/// "7:20", or "7:20 to 8:40" of a span in seconds.
std::string minutes_between(const tune::Span& span);
/// "Tarn Beck, first season: 11 lighting-ups, 4 April 2026 to 24 May 2026"
std::string season_title(const description::Season& season);
/// "1.20 bar", of what the minutes are told to.
std::string told_to(const tune::SeasonStory& story, UnitSystem units);
}  // namespace lumwright::report
