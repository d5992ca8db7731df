#include "report/explain.hpp"
#include "build/reader.hpp"
#include "commands.hpp"
#include "files.hpp"
#include "plan/assess.hpp"
#include "style.hpp"

namespace lumwright::cli {
Answer explain(const Options& options) {
  const Assessment assessment = assess(read_build(read_file(options.file)), options.units);
  return {explain_report(assessment, options.check_id, style_of(options))};
}
}  // namespace lumwright::cli
