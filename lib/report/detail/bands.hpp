// What many samples have shown: what widens the answers, and what to measure next.
#pragma once
#include "plan/assessment.hpp"
#include "report/page.hpp"

namespace lumwright::report {
/// "93 of 100 samples", "all 1000 samples", "fewer than 1 of 100 samples".
std::string in_samples(double share, const plan::Bands& bands);
/// "fails in 7 of 100 samples": what is to be watched does not fail; nothing for a check that was not followed through
/// the samples.
std::string holds_in(const plan::Finding& finding, const plan::Assessment& assessment);
/// What stands in brackets behind an answer, in a line.
std::string brackets_mean(const plan::Assessment& assessment);
/// A share of samples with an answer is told below this.
inline constexpr double told_from_share = 0.95;
/// "narrows it to about 7 to 9 min, from 6 to 10 min".
std::string what_it_leaves(const plan::Narrowing& one, const model::Result* answer, const TextStyle& style);
/// The best one, and where that needs the unit that is still to be built, the best of those that do not.
std::vector<const plan::Narrowing*> worth_telling(const plan::Sensitivity& sensitivity);
/// How far the samples themselves can be trusted.
std::string sureness(const plan::Bands& bands);
/// How the numbers in brackets are meant.
void write_meaning_of_bands(Page& page, const plan::Assessment& assessment);
/// What is said where no samples were tried; nothing where they were, or where nothing was judged.
std::string without_spreads(const plan::Assessment& assessment, description::FrontEnd front);
/// A section; nothing when no samples were tried.
void write_bands(Page& page, const plan::Assessment& assessment);
}  // namespace lumwright::report
