#include "plan/assessment.hpp"
#include "quantity/sound.hpp"

namespace lumwright::plan {
namespace {
void require_sound(const std::string& key, std::string_view what, const std::optional<model::Measure>& measure) {
  if (measure) sound(measure->quantity, Sound::finite, key, what, {});
}
}  // namespace

void require_sound(const Assessment& assessment) {
  for (const model::Result& result : assessment.results) {
    if (const model::Measure* measure = std::get_if<model::Measure>(&result.value))
      require_sound(result.key, "the result", *measure);
    require_sound(result.key, "the low end", result.low);
    require_sound(result.key, "the high end", result.high);
    if (result.share) sound(*result.share, Sound::not_negative, result.key, "the share of samples", {});
  }
  for (const Finding& finding : assessment.checks) {
    require_sound(finding.id, "the value", finding.value);
    require_sound(finding.id, "the limit", finding.limit);
    for (const Term& term : finding.terms) require_sound(finding.id, term.symbol, term.value);
    if (finding.holds) sound(*finding.holds, Sound::not_negative, finding.id, "the share of samples", {});
  }
  for (const Series& series : assessment.series)
    for (const Series::Column& column : series.columns)
      for (const double si : column.si)
        sound(AnyQuantity(si, column.kind), Sound::finite, series.name, column.name, {});
}

const char* limit_words(LimitName name) { return name == LimitName::to_pass ? "to pass" : "or it fails"; }
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
const model::Result* find_result(const Assessment& assessment, std::string_view key) {
  for (const model::Result& result : assessment.results)
    if (result.key == key) return &result;
  return nullptr;
}
const Finding* find_check(const Assessment& assessment, std::string_view id) {
  for (const Finding& finding : assessment.checks)
    if (finding.id == id) return &finding;
  return nullptr;
}
}  // namespace lumwright::plan
