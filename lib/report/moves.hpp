// A change that was tried, in words.
#pragma once
#include "plan/assessment.hpp"
#include "report/page.hpp"
#include <string>

namespace lumwright {
/// "a box 93 mm wide: then 2.10 mm; steam in 7.0 min". Empty where the finding has none.
std::string move_text(const Finding& finding, const TextStyle& style);
/// "--set adapter.box.diameter='93 mm'": what to put behind the command to see it.
std::string move_settings(const Finding& finding);
}  // namespace lumwright
