// The results in trade words, in the order in which a reader wants them.
#pragma once
#include "report/page.hpp"

namespace lumwright {
/// The few results that the owner wants first.
void write_answers(Page& page, const Assessment& assessment);
/// All others, by subject; a result that has no trade name stands under its key.
void write_numbers(Page& page, const Assessment& assessment);
}  // namespace lumwright
