// What many samples have shown: what widens the answers, and what to measure next.
#pragma once
#include "plan/assessment.hpp"
#include "report/page.hpp"

namespace lumwright {
/// "93 of 100 samples", "all 1000 samples", "fewer than 1 of 100 samples".
std::string in_samples(double share, const Bands& bands);
/// "fails in 7 of 100 samples": what is to be watched does not fail; nothing for a check that was not followed through
/// the samples.
std::string holds_in(const Finding& finding, const Assessment& assessment);
/// What stands in brackets behind an answer, in a line.
std::string brackets_mean(const Bands& bands);
/// A result by its name on the page, in quotes; an input by its key.
std::string named(const std::string& key);
/// "narrows it to about 7 to 9 min, from 6 to 10 min".
std::string what_it_leaves(const Narrowing& one, const Result* answer, const TextStyle& style);
/// The best one, and where that needs the unit that is still to be built, the best of those that do not.
std::vector<const Narrowing*> worth_telling(const Sensitivity& sensitivity);
/// How far the samples themselves can be trusted.
std::string sureness(const Bands& bands);
/// How the numbers in brackets are meant.
void write_meaning_of_bands(Page& page, const Assessment& assessment);
/// What is said where no samples were tried; nothing where they were, or where nothing was judged.
std::string without_spreads(const Assessment& assessment);
/// A section; nothing when no samples were tried.
void write_bands(Page& page, const Assessment& assessment);
}  // namespace lumwright
