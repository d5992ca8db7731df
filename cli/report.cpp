#include "commands.hpp"
#include "described.hpp"
#include "paper.hpp"
#include "plan/moves.hpp"
#include "plan/report_data.hpp"
#include "report/folder.hpp"
#include "shelf.hpp"
#include "style.hpp"

namespace lumwright::cli {
namespace {
struct ReportOptions : DescriptionOptions {
  std::string folder{}, paper{};
  drawing::PrintOptions print{};
};
ReportOptions report_options(const Words& words) {
  return {sampled_options(words, words.needed("FILE")), words.needed("-o"), words.text("--paper"),
          print_options(words)};
}
Answer run_report(const Words& words) {
  const ReportOptions options = report_options(words);
  const Described told = described(options);
  Progress progress("samples");
  const plan::SamplesAsked samples = samples_asked(options, progress);
  const model::Solved solved = plan::solved_to_judge(told.build, options.units, told.used(), samples);
  plan::ReportData data = plan::report_data(solved, told.used(), samples);
  data.program = "lumwright " LUMWRIGHT_VERSION;
  plan::try_moves(data.assessment, told.build, options.units, told.used(), samples);
  const report::Folder folder = report::report_folder(
      data, solved, {.paper = options.paper, .print = options.print, .draft = false, .units = options.units});
  write_folder(options.shelf, options.folder, folder.files);
  return {list_of(options.folder, folder.files), data.assessment.verdict == plan::Verdict::fail ? fails : fine};
}
}  // namespace

const CommandRow report_command{
    .word = "report",
    .arguments = "FILE",
    .usage = "report FILE -o DIR",
    .brief = "one page to read at the bench, with pictures",
    .headline = "report FILE -o DIR: one page to read at the bench",
    .about = R"(  Writes into the folder DIR, which is made if it is not there:
    report.html               the verdict, the six answers, what to do and to
                              settle first, the unit cut through, fan and gas
                              path, lighting-up and fit, and the cautions in
                              full: two sheets of A4. Every check and number,
                              what was assumed, sources and the description lie
                              folded behind it, and are printed only where they
                              are unfolded. One file: it needs no network
    report.md, report.json    the same as plain text and for programs
    *.csv                     checks, assumed values and what goes through time
    templates.pdf and others  the drawings, as `lumwright draw` makes them, when
                              no check of fit or making fails
  Files of these names are replaced, others are left alone.
)",
    .first = "--samples",
    .below = R"(Example
  lumwright report mine.yaml -o mine

Exit status: 0, 1 when a check fails, 2 when the description cannot be
used.
)",
    .run = run_report};
}  // namespace lumwright::cli
