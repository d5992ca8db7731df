// The six answers that everybody asks for first.
#pragma once
#include "plan/assessment.hpp"
#include "report/page.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
struct ChiefAnswer {
  std::string_view title;
  plan::Verdict verdict = plan::Verdict::unknown;  // of the check that asks after it
  std::string figure{}, band{};                    // "7.0 min", "6.6 to 9.1 min"; "not known" and nothing
};
/// Minutes to steam, air, gas at the fan, running time, light-ups, and the gap of the hot tube, in that order.
std::vector<ChiefAnswer> six_answers(const plan::Assessment& assessment, const TextStyle& style);
}  // namespace lumwright::report
