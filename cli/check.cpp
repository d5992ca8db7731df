#include "commands.hpp"
#include "described.hpp"
#include "plan/moves.hpp"
#include "report/json.hpp"
#include "report/screen.hpp"
#include "report/text.hpp"
#include "style.hpp"

namespace lumwright::cli {
Answer check(const Options& options) {
  const Described told = described(options);
  Progress progress("samples");
  const SamplesAsked samples = samples_asked(options, progress);
  Assessment assessment = assessed(options, told);
  try_moves(assessment, told.build, options.units, told.used(), samples);
  if (!options.only.empty()) {
    const ExitStatus status = verdict_of_part(assessment, options.only) == Verdict::fail ? fails : fine;
    return {part_report(assessment, style_of(options), options.only), status};
  }
  const ExitStatus status = assessment.verdict == Verdict::fail ? fails : fine;
  if (options.format == Format::json) return {json_report(assessment), status};
  if (options.full) return {text_report(assessment, style_of(options)), status};
  return {screen_report(assessment, style_of(options), options.file), status};
}
}  // namespace lumwright::cli
