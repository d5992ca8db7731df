#include "commands.hpp"
#include "described.hpp"
#include "report/build_sheet.hpp"
#include "shelf.hpp"
#include "style.hpp"

namespace lumwright::cli {
namespace {
struct SheetOptions : DescriptionOptions {
  report::TextStyle style;
};
SheetOptions sheet_options(const Words& words) {
  return {description_options(words, words.needed("FILE")), style_of(words)};
}
Answer run_sheet(const Words& words) {
  const SheetOptions options = sheet_options(words);
  const Described told = described(options);
  Progress progress("samples");
  const plan::SamplesAsked samples = samples_asked(options, progress);  // those of `check`, for the same verdicts
  const model::Solved solved = plan::solved_to_judge(told.build, options.units, told.used(), samples);
  const plan::Assessment assessment = judged_once(options, [&] { return plan::judged(solved, told.used(), samples); });
  return {report::build_sheet(assessment, solved, options.style)};
}
}  // namespace

const CommandRow sheet_command{
    .word = "sheet",
    .arguments = "FILE",
    .usage = "sheet FILE",
    .brief = "what to measure, cut, drill, and in which order",
    .headline = "sheet FILE: what goes to the bench",
    .about = R"(  Prints what to measure before you cut, the cut list, the drill list in order
  of size with pilot and step drills, taps and screws, where every hole lies,
  and the order of work, with the cautions at the step where they bite.
)",
    .below = R"(Example
  lumwright sheet mine.yaml > bench.txt

Exit status: 0, 1 when the description has nothing to make in it.
)",
    .run = run_sheet};
}  // namespace lumwright::cli
