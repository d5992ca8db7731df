#include "commands.hpp"
#include "described.hpp"
#include "shelf.hpp"
#include "paper.hpp"
#include "report/drawings.hpp"

namespace lumwright::cli {
Answer draw(const Options& options) {
  const Described told = described(options);
  const DrawingWish wish{
      .paper = options.paper, .print = print_options(options), .draft = options.draft, .units = options.units};
  Progress progress("samples");
  const SamplesAsked samples = samples_asked(options, progress);  // those of `check`, for the same verdicts
  const Solved solved = solved_to_judge(told.build, options.units, told.used(), samples);
  const auto files = drawing_files(
      judged_once(options, [&] { return judged(solved, told.used(), samples); }), solved, wish);
  write_folder(options, files);
  return {list_of(options.folder, files)};
}
}  // namespace lumwright::cli
