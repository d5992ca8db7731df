// A change that was tried, in words.
#pragma once
#include "plan/assessment.hpp"
#include "report/page.hpp"
#include <string>

namespace lumwright::report {
/// "a box 93 mm wide: then 2.10 mm; steam in 7.0 min"; without what the check then finds where the change is told for
/// several. Empty where the finding has none.
std::string move_text(const plan::Finding& finding, const TextStyle& style, bool for_several = false);
/// "--set adapter.box.diameter='93 mm'": what to put behind the command to see it.
std::string move_settings(const plan::Finding& finding, description::FrontEnd front);
}  // namespace lumwright::report
