// The checks of an assessment as every report sorts and sums them up.
#pragma once
#include "plan/assessment.hpp"
#include "report/page.hpp"
#include <cstddef>
#include <string>
#include <vector>

namespace lumwright {
/// "Tarn Beck: it will do, with 2 points to watch."
std::string verdict_sentence(const Assessment& assessment);
std::size_t count(const Assessment& assessment, Verdict verdict);
bool graver(const Finding& one, const Finding& other);
/// Those that were judged.
std::vector<const Finding*> gravest_first(const Assessment& assessment);
/// Those that could not be, in groups that wait for the same.
std::vector<std::vector<const Finding*>> open_questions(const Assessment& assessment);
/// "at least 0.250 g/s to pass", "at most 15.0 %, or it fails": the limit that decided. Only where there is one.
std::string limit_in_words(const Finding& finding, const TextStyle& style);
/// "0.400 g/s, at least 0.250 g/s to pass"; the value alone where there is no limit. A value that is a result of the
/// assessment as well has the figures of that result.
std::string against_limit(const Finding& finding, const Assessment& assessment, const TextStyle& style);
/// The value comes from a measured lighting-up.
bool tuned(const Assessment& assessment, const Assumed& one);
}  // namespace lumwright
