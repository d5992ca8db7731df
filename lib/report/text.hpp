// The assessment as a page to read: verdict first, then the answers, the checks, what was assumed, and the cautions.
#pragma once
#include "plan/assessment.hpp"
#include "report/page.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
/// Ends with a line feed; no line is wider than `style.width`. Throws std::logic_error for a width under 40.
std::string text_report(const plan::Assessment& assessment, const TextStyle& style);
/// One check as the page tells it.
void write_check(Page& page, const plan::Assessment& assessment, const plan::Finding& finding);
/// Checks that wait for the same keys, told together.
void write_open_question(Page& page, const std::vector<const plan::Finding*>& alike);
/// Title, text and authority of each; nothing for none.
void write_cautions(Page& page, const std::vector<plan::Caution>& cautions);
}  // namespace lumwright::report
