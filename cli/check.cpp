#include "commands.hpp"
#include "described.hpp"
#include "report/json.hpp"
#include "report/text.hpp"
#include "style.hpp"

namespace lumwright::cli {
Answer check(const Options& options) {
  const Assessment assessment = assessed(options);
  const ExitStatus status = assessment.verdict == Verdict::fail ? fails : fine;
  if (options.format == Format::json) return {json_report(assessment), status};
  return {text_report(assessment, style_of(options)), status};
}
}  // namespace lumwright::cli
