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
/// The drawings beside the report; none where the build is not to be drawn: the checks say why.
std::vector<NamedText> drawings_of(const Options& options, const Assessment& assessment, const Solved& solved) {
  if (!solved.unit || !failed_geometry(assessment).empty()) return {};
  try {
    return drawing_files(
        assessment, solved,
        {.paper = options.paper, .print = print_options(options), .draft = false, .units = options.units});
  } catch (const NothingToMake&) {
    return {};
  } catch (const ModelError& why) {  // the rest of the report is worth having without them
    return {{"not_drawn.txt", "why there are no drawings", fmt::format("Not drawn: {}.\n", why.what())}};
  }
}
}  // namespace

Answer report(const Options& options) {
  const Described told = described(options);
  Progress progress("samples");
  const SamplesAsked samples = samples_asked(options, progress);
  const Solved solved = solved_to_judge(told.build, options.units, told.used(), samples);
  ReportData data = report_data(solved, told.used(), samples);
  data.program = "lumwright " LUMWRIGHT_VERSION;
  try_moves(data.assessment, told.build, options.units, told.used(), samples);
  std::vector<NamedText> drawings = drawings_of(options, data.assessment, solved);
  std::vector<Beside> beside;
  beside.reserve(drawings.size());
  for (const NamedText& file : drawings) beside.push_back({file.name, file.what});
  std::vector<NamedText> files = report_files(data, style_of(options), beside);
  files.insert(files.end(), std::make_move_iterator(drawings.begin()), std::make_move_iterator(drawings.end()));
  write_folder(options, files);
  return {list_of(options.folder, files), data.assessment.verdict == Verdict::fail ? fails : fine};
}
}  // namespace lumwright::cli
