#include "commands.hpp"
#include "described.hpp"
#include "report/build_sheet.hpp"
#include "shelf.hpp"
#include "style.hpp"

namespace lumwright::cli {
Answer sheet(const Options& options) {
  const Described told = described(options);
  Progress progress("samples");
  const SamplesAsked samples = samples_asked(options, progress);  // those of `check`, for the same verdicts
  const Solved solved = solved_to_judge(told.build, options.units, told.used(), samples);
  const Assessment assessment = judged_once(options, [&] { return judged(solved, told.used(), samples); });
  return {build_sheet(assessment, solved, style_of(options))};
}
}  // namespace lumwright::cli
