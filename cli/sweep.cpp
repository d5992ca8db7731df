#include "plan/sweep.hpp"
#include "commands.hpp"
#include "described.hpp"
#include "description/reader.hpp"
#include "paper.hpp"
#include "report/picture/sweep.hpp"
#include "report/side_by_side.hpp"
#include "shelf.hpp"
#include "style.hpp"
#include <thread>
#include <utility>

namespace lumwright::cli {
namespace {
struct SweepOptions : DescriptionOptions {
  std::vector<std::pair<std::string, std::string>> axes{};  // a key and its range each
  std::string folder{};
  Format format = Format::text;
  report::TextStyle style{};
};
SweepOptions sweep_options(const Words& words) {
  const std::string& file = words.needed("FILE");
  const std::vector<std::string>& all = words.all("KEY");
  if (all.empty() || all.size() % 2 == 1 || all.size() > 4)
    throw UsageError(
        "`sweep` takes one or two keys, each with its range behind it: lumwright sweep FILE fuel.bed 20mm..40mm");
  SweepOptions options{sampled_options(words, file), {}, words.text("-o"), format_of(words), style_of(words)};
  for (std::size_t i = 0; i < all.size(); i += 2) options.axes.emplace_back(all[i], all[i + 1]);
  return options;
}
/// Page, table and picture; the bands behind its lines come from samples of their own, the verdicts are those of the page.
Answer to_folder(const SweepOptions& options, const Described& told, const std::vector<plan::SweepAxis>& axes,
                 const std::vector<plan::SweepPoint>& points) {
  std::vector<plan::SweepPoint> pictured = points;
  if (axes.size() == 1 && options.samples > 0) {
    plan::SamplesAsked asked{.count = options.samples, .seed = options.seed};
    const auto sampled = plan::sweep(told.build, axes, options.units, told.used(), 1, asked);
    for (std::size_t i = 0; i < points.size(); ++i) {
      pictured[i].assessment.results = sampled[i].assessment.results;
      pictured[i].assessment.bands = sampled[i].assessment.bands;
    }
  }
  const std::string name = told.build.name ? *told.build.name : told.build.file;
  const report::TextStyle style{.units = options.units};
  const std::vector<report::NamedText> files{
      {"sweep.svg", "the chief answers as a picture", report::sweep_picture(name, axes, pictured, style)},
      {"sweep.csv", "the same as a table for a spreadsheet", report::sweep_csv(axes, points, options.units)},
      {"sweep.txt", "the page that `sweep` prints", report::sweep_report(name, axes, points, style)}};
  write_folder(options.shelf, options.folder, files);
  return {list_of(options.folder, files), fine, head_of(options.format)};
}
Answer run_sweep(const Words& words) {
  const SweepOptions options = sweep_options(words);
  constexpr std::size_t of_one = 9, of_two = 4;
  const Described told = described(options);
  const std::size_t steps = options.axes.size() > 1 ? of_two : of_one;
  std::vector<plan::SweepAxis> axes;
  for (const auto& [key, range] : options.axes) axes.push_back(plan::sweep_axis(told.build, key, range, steps));
  const auto points = plan::sweep(told.build, axes, options.units, told.used(), std::thread::hardware_concurrency());
  if (!options.folder.empty()) return to_folder(options, told, axes, points);
  if (options.format == Format::csv) return {report::sweep_csv(axes, points, options.units), fine, Head::apart};
  const std::string name = told.build.name ? *told.build.name : told.build.file;
  return {report::sweep_report(name, axes, points, options.style)};
}
}  // namespace

const CommandRow sweep_command{
    .word = "sweep",
    .arguments = "FILE KEY ...",
    .usage = "sweep FILE KEY FROM..TO",
    .brief = "the answers along a key or two",
    .headline = "sweep FILE KEY FROM..TO [KEY FROM..TO]: along one key or two",
    .about = R"(  Gives one key of the description nine values from one end of the range to the
  other, everything else as written, and tells the chief answers for each, how
  many checks fail and how many are to be watched, and the minutes to steam as
  a bar. With two keys four values of each. Whole numbers go one by one, words
  stand with a comma between them.
  Spreads are left out: it shows what a key does, not how sure that is. The
  picture has them as light bands behind its lines.
)",
    .first = "--format -o --samples --seed --set --untuned",
    .below = R"(Examples
  lumwright sweep mine.yaml supply.step_up.output "8 V..13 V"
  lumwright sweep mine.yaml adapter.bleed.holes 2..8 -o holes
  lumwright sweep mine.yaml fuel.bed "20 mm..36 mm" fuel.lump "6 mm..12 mm"

Exit status: 0, 2 when the description, a key or a range cannot be used.
)",
    .run = run_sweep};
}  // namespace lumwright::cli
