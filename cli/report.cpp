#include "commands.hpp"
#include "described.hpp"
#include "shelf.hpp"
#include "paper.hpp"
#include "plan/moves.hpp"
#include "plan/report_data.hpp"
#include "quantity/errors.hpp"
#include "report/build_sheet.hpp"
#include "report/drawings.hpp"
#include "report/files.hpp"
#include "report/templates/templates.hpp"
#include "style.hpp"
#include <fmt/format.h>
#include <iterator>

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
/// The drawings beside the report; none where the build is not to be drawn: the checks say why.
std::vector<report::NamedText> drawings_of(const ReportOptions& options, const plan::Assessment& assessment,
                                           const model::Solved& solved) {
  if (!solved.unit || !report::failed_geometry(assessment).empty()) return {};
  try {
    return report::drawing_files(
        assessment, solved, {.paper = options.paper, .print = options.print, .draft = false, .units = options.units});
  } catch (const report::NothingToMake&) {
    return {};
  } catch (const ModelError& why) {  // the rest of the report is worth having without them
    return {{"not_drawn.txt", "why there are no drawings", fmt::format("Not drawn: {}.\n", why.what())}};
  }
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
  std::vector<report::NamedText> drawings = drawings_of(options, data.assessment, solved);
  std::vector<report::Beside> beside;
  beside.reserve(drawings.size());
  for (const report::NamedText& file : drawings) beside.push_back({file.name, file.what});
  std::vector<report::NamedText> files =
      report::report_files(data, report::TextStyle{.units = options.units, .colour = false}, beside);
  files.insert(files.end(), std::make_move_iterator(drawings.begin()), std::make_move_iterator(drawings.end()));
  write_folder(options.shelf, options.folder, files);
  return {list_of(options.folder, files), data.assessment.verdict == plan::Verdict::fail ? fails : fine};
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
