#include "report/six_answers.hpp"
#include "report/answers.hpp"
#include <algorithm>

namespace lumwright::report {
namespace {
struct Asked {
  std::string_view title, result, check, on_fail;
};
constexpr Asked asked[] = {{"cold to the engine's own blower", "raise.to_own_blower", "raise.time", "not reached"},
                           {"air through the engine", "draught.air_flow", "draught.flow", "none"},
                           {"gas at the fan", "heat.fan_gas", "heat.fan_gas", ""},
                           {"running time on one charge", "power.runtime", "power.stop", "none"},
                           {"light-ups on one charge", "power.light_ups_per_charge", "power.light_ups", "none"},
                           {"gap of the tube, lighting up", "fit.clearance_hot", "fit.hot", "does not enter"}};

/// "8.4 min  (6.1 to 9.8 min)" is a figure and its band.
void tell(ChiefAnswer& answer, const std::string& text) {
  const auto bracket = text.find("  (");
  answer.figure = text.substr(0, bracket);
  if (bracket != std::string::npos) answer.band = text.substr(bracket + 3, text.size() - bracket - 4);
}
bool below_zero(const plan::Assessment& a, std::string_view id) {
  const model::Result* result = plan::find_result(a, id);
  const auto* value = result == nullptr ? nullptr : std::get_if<model::Measure>(&result->value);
  return value != nullptr && value->quantity.si < 0.0;
}
/// A tube that cannot go in cold is no pass for being right when hot.
plan::Verdict with_cold_fit(plan::Verdict verdict, const plan::Assessment& a, std::string_view id) {
  const plan::Finding* other = plan::find_check(a, id);
  if (other == nullptr || other->verdict == plan::Verdict::unknown) return verdict;
  return verdict == plan::Verdict::unknown ? other->verdict : std::max(verdict, other->verdict);
}
ChiefAnswer answer_of(const Asked& row, const plan::Assessment& a, const TextStyle& style) {
  ChiefAnswer answer{.title = row.title};
  if (const plan::Finding* f = plan::find_check(a, row.check)) answer.verdict = f->verdict;
  if (const model::Result* result = plan::find_result(a, row.result)) tell(answer, answer_text(*result, style));
  if (row.check == "fit.hot") answer.verdict = with_cold_fit(answer.verdict, a, "fit.cold");
  if (row.check == "fit.hot" && below_zero(a, "fit.clearance_cold"))
    return {.title = row.title, .verdict = plan::Verdict::fail, .figure = "does not enter"};
  if (!answer.figure.empty()) return answer;
  if (const model::Result* working = row.check == "raise.time" ? plan::find_result(a, "raise.to_working") : nullptr) {
    answer.title = "cold to working pressure";  // no pressure of the own blower is written
    if (const plan::Finding* f = plan::find_check(a, "raise.working")) answer.verdict = f->verdict;
    tell(answer, answer_text(*working, style));
    return answer;
  }
  answer.figure =
      answer.verdict == plan::Verdict::fail && !row.on_fail.empty() ? std::string(row.on_fail) : "not known";
  return answer;
}
}  // namespace

std::vector<ChiefAnswer> six_answers(const plan::Assessment& assessment, const TextStyle& style) {
  std::vector<ChiefAnswer> answers;
  for (const Asked& row : asked) answers.push_back(answer_of(row, assessment, style));
  return answers;
}
}  // namespace lumwright::report
