#include "build/reader.hpp"
#include "commands.hpp"
#include "files.hpp"
#include "plan/assess.hpp"
#include "report/json.hpp"
#include "report/text.hpp"
#include "style.hpp"
#include "tuned_beside.hpp"

namespace lumwright::cli {
Answer check(const Options& options) {
  const Build build = read_build(read_file(options.file));
  const auto tuning = tuned_beside(options);
  const Assessment assessment = assess(build, options.units, tuning ? &*tuning : nullptr);
  const ExitStatus status = assessment.verdict == Verdict::fail ? fails : fine;
  if (options.format == Format::json) return {json_report(assessment), status};
  return {text_report(assessment, style_of(options)), status};
}
}  // namespace lumwright::cli
