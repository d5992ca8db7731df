#include "plan/assessment.hpp"

namespace lumwright {
const char* verdict_word(Verdict verdict) {
  switch (verdict) {
    case Verdict::pass:
      return "pass";
    case Verdict::watch:
      return "watch";
    case Verdict::fail:
      return "fail";
    case Verdict::unknown:
      return "unknown";
  }
  return "unknown";
}
const Result* find_result(const Assessment& assessment, std::string_view key) {
  for (const Result& result : assessment.results)
    if (result.key == key) return &result;
  return nullptr;
}
const Finding* find_check(const Assessment& assessment, std::string_view id) {
  for (const Finding& finding : assessment.checks)
    if (finding.id == id) return &finding;
  return nullptr;
}
}  // namespace lumwright
