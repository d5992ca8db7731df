// The assessment on one screen: verdict, six answers, what to do and to settle first, what can hurt.
#pragma once
#include "plan/assessment.hpp"
#include "report/page.hpp"
#include <string>
#include <string_view>

namespace lumwright::report {
/// At most 40 lines on a page of 80 columns; as much is told as these hold, and every failing check by its title.
/// `file` is what the reader calls the description, for the commands that tell more.
std::string screen_report(const plan::Assessment& assessment, const TextStyle& style, std::string_view file);
/// The checks of one group ("fit") or one check ("fit.hot") in full, with their numbers. `part` must be known:
/// known_part().
std::string part_report(const plan::Assessment& assessment, const TextStyle& style, std::string_view part);
/// A group of checks, or the id of one that there is.
bool known_part(std::string_view part);
/// Every group and every check.
std::vector<std::string> parts_of_checks();
/// The verdict of those checks alone.
plan::Verdict verdict_of_part(const plan::Assessment& assessment, std::string_view part);
}  // namespace lumwright::report
