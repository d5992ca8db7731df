// The assessment as one JSON object for other programs.
#pragma once
#include "plan/assessment.hpp"
#include <string>

namespace lumwright::report {
/// Format "lumwright/1": every number in SI with its unit beside it, keys in a fixed order, ends with a line feed. A
/// check without value or limit has null there. Throws std::logic_error for a number that is not finite.
std::string json_report(const plan::Assessment& assessment);
}  // namespace lumwright::report
