#include "report/trace.hpp"
#include "build/reader.hpp"
#include "commands.hpp"
#include "files.hpp"
#include "plan/assess.hpp"
#include "tuned_beside.hpp"

namespace lumwright::cli {
Answer trace(const Options& options) {
  const Build build = read_build(read_file(options.file));
  const auto tuning = tuned_beside(options);
  const Assessment assessment = assess(build, options.units, tuning ? &*tuning : nullptr);
  if (options.format == Format::json) return {trace_json(assessment, options.series)};
  return {trace_csv(assessment, options.series.empty() ? "raise" : options.series)};
}
}  // namespace lumwright::cli
