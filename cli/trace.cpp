#include "report/trace.hpp"
#include "commands.hpp"
#include "described.hpp"

namespace lumwright::cli {
Answer trace(const Options& options) {
  const Assessment assessment = assessed(options);
  if (options.format == Format::json) return {trace_json(assessment, options.series)};
  return {trace_csv(assessment, options.series.empty() ? "raise" : options.series, options.units)};
}
}  // namespace lumwright::cli
