#include "build/reader.hpp"
#include "commands.hpp"
#include "files.hpp"
#include "paper.hpp"
#include "plan/report_data.hpp"
#include "progress.hpp"
#include "report/build_sheet.hpp"
#include "report/drawings.hpp"
#include "report/files.hpp"
#include "report/templates/templates.hpp"
#include "style.hpp"
#include "tuned_beside.hpp"

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
  }
}
}  // namespace

Answer report(const Options& options) {
  const Build build = read_build(read_file(options.file));
  const auto tuning = tuned_beside(options);
  const Tuning* used = tuning ? &*tuning : nullptr;
  Progress progress("worlds");
  WorldsAsked worlds;
  worlds.count = options.samples;
  worlds.seed = options.seed;
  worlds.progress = [&](std::size_t done, std::size_t of) { progress.show(done, of); };
  const ReportData data = report_data(build, {.units = options.units, .tuning = used, .worlds = worlds});
  std::vector<NamedText> drawings = drawings_of(options, data.assessment, solve(build, {}, used));
  std::vector<Beside> beside;
  beside.reserve(drawings.size());
  for (const NamedText& file : drawings) beside.push_back({file.name, file.what});
  std::vector<NamedText> files;
  for (const NamedText& file : report_files(data, style_of(options), beside))
    files.push_back({file.name, file.what, file.text});
  files.insert(files.end(), std::make_move_iterator(drawings.begin()), std::make_move_iterator(drawings.end()));
  write_folder(options.folder, files);
  return {list_of(options.folder, files), data.assessment.verdict == Verdict::fail ? fails : fine};
}
}  // namespace lumwright::cli
