#include "build/reader.hpp"
#include "commands.hpp"
#include "files.hpp"
#include "plan/assess.hpp"
#include "plan/tune.hpp"
#include "report/build_sheet.hpp"
#include "style.hpp"
#include "tuned_beside.hpp"

namespace lumwright::cli {
Answer sheet(const Options& options) {
  const Build build = read_build(read_file(options.file));
  const auto tuning = tuned_beside(options);
  const Tuning* used = tuning ? &*tuning : nullptr;
  return {build_sheet(assess(build, options.units, used), solve(build, {}, used), style_of(options))};
}
}  // namespace lumwright::cli
