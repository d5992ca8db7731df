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
/// Page, table and picture; the bands behind its lines come from samples of their own, the verdicts are those of the page.
Answer to_folder(const Options& options, const Described& told, const std::vector<SweepAxis>& axes,
                 const std::vector<SweepPoint>& points) {
  std::vector<SweepPoint> pictured = points;
  if (axes.size() == 1 && options.samples > 0) {
    SamplesAsked asked{.count = options.samples, .seed = options.seed};
    const auto sampled = lumwright::sweep(told.build, axes, options.units, told.used(), 1, asked);
    for (std::size_t i = 0; i < points.size(); ++i) {
      pictured[i].assessment.results = sampled[i].assessment.results;
      pictured[i].assessment.bands = sampled[i].assessment.bands;
    }
  }
  const std::string name = told.build.name ? *told.build.name : told.build.file;
  const TextStyle style{.units = options.units};
  const std::vector<NamedText> files{
      {"sweep.svg", "the chief answers as a picture", sweep_picture(name, axes, pictured, style)},
      {"sweep.csv", "the same as a table for a spreadsheet", sweep_csv(axes, points, options.units)},
      {"sweep.txt", "the page that `sweep` prints", sweep_report(name, axes, points, style)}};
  write_folder(options, files);
  return {list_of(options.folder, files)};
}
}  // namespace

Answer sweep(const Options& options) {
  constexpr std::size_t of_one = 9, of_two = 4;
  const Described told = described(options);
  const std::size_t steps = options.axes.size() > 1 ? of_two : of_one;
  std::vector<SweepAxis> axes;
  for (const auto& [key, range] : options.axes) axes.push_back(sweep_axis(told.build, key, range, steps));
  const auto points =
      lumwright::sweep(told.build, axes, options.units, told.used(), std::thread::hardware_concurrency());
  if (!options.folder.empty()) return to_folder(options, told, axes, points);
  if (options.format == Format::csv) return {sweep_csv(axes, points, options.units)};
  const std::string name = told.build.name ? *told.build.name : told.build.file;
  return {sweep_report(name, axes, points, style_of(options))};
}
Answer compare(const Options& options) {
  std::vector<std::pair<Options, Described>> told;
  for (const std::string& file : options.files) {
    Options one = options;
    one.file = file;
    Described of_it = described(one);
    told.emplace_back(std::move(one), std::move(of_it));
  }
  std::vector<Compared> all;
  for (const auto& [one, of_it] : told) all.push_back({of_it.build, assessed(one, of_it)});
  return {compare_report(all, style_of(options))};
}
}  // namespace lumwright::cli
