#include "report/explain.hpp"
#include "build/reader.hpp"
#include "commands.hpp"
#include "files.hpp"
#include "plan/assess.hpp"
#include "style.hpp"
#include "tuned_beside.hpp"

namespace lumwright::cli {
Answer explain(const Options& options) {
  const Build build = read_build(read_file(options.file));
  const auto tuning = tuned_beside(options);
  const Assessment assessment = assess(build, options.units, tuning ? &*tuning : nullptr);
  return {explain_report(assessment, options.check_id, style_of(options))};
}
}  // namespace lumwright::cli
