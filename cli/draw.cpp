#include "build/reader.hpp"
#include "commands.hpp"
#include "files.hpp"
#include "paper.hpp"
#include "plan/assess.hpp"
#include "plan/tune.hpp"
#include "report/drawings.hpp"
#include "tuned_beside.hpp"

namespace lumwright::cli {
Answer draw(const Options& options) {
  const Build build = read_build(read_file(options.file));
  const DrawingWish wish{.paper = options.paper, .print = print_options(options), .draft = options.draft};
  const auto tuning = tuned_beside(options);
  const Tuning* used = tuning ? &*tuning : nullptr;
  const auto files = drawing_files(assess(build, options.units, used), solve(build, {}, used), wish);
  write_folder(options.folder, files);
  return {list_of(options.folder, files)};
}
}  // namespace lumwright::cli
