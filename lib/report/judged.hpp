// The checks of an assessment as every report sorts and sums them up.
#pragma once
#include "description/ways.hpp"
#include "plan/assessment.hpp"
#include "report/page.hpp"
#include <cstddef>
#include <string>
#include <vector>

namespace lumwright::report {
/// "Tarn Beck: it will do, with 2 points to watch."
std::string verdict_sentence(const plan::Assessment& assessment);
std::size_t count(const plan::Assessment& assessment, plan::Verdict verdict);
bool graver(const plan::Finding& one, const plan::Finding& other);
/// Those that were judged.
std::vector<const plan::Finding*> gravest_first(const plan::Assessment& assessment);
/// Those that could not be, in groups that wait for the same.
std::vector<std::vector<const plan::Finding*>> open_questions(const plan::Assessment& assessment);
/// "at least 0.250 g/s to pass", "at most 15.0 %, or it fails": the limit that decided. Only where there is one.
std::string limit_in_words(const plan::Finding& finding, const TextStyle& style);
/// "0.400 g/s, at least 0.250 g/s to pass"; the value alone where there is no limit. A value that is a result of the
/// assessment as well has the figures of that result.
std::string against_limit(const plan::Finding& finding, const plan::Assessment& assessment, const TextStyle& style);
/// The value comes from a measured lighting-up.
bool tuned(const plan::Assessment& assessment, const model::Assumed& one);
/// What to do about a finding, where its reader is.
std::string action_of(const plan::Finding& finding, description::FrontEnd front);
}  // namespace lumwright::report
