#include "report/explain.hpp"
#include "commands.hpp"
#include "described.hpp"
#include "style.hpp"

namespace lumwright::cli {
Answer explain(const Options& options) {
  const Assessment assessment = assessed(options);
  return {explain_report(assessment, options.check_id, style_of(options))};
}
}  // namespace lumwright::cli
