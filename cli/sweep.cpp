#include "plan/sweep.hpp"
#include "commands.hpp"
#include "described.hpp"
#include "description/reader.hpp"
#include "files.hpp"
#include "report/side_by_side.hpp"
#include "style.hpp"
#include <thread>

namespace lumwright::cli {
Answer sweep(const Options& options) {
  constexpr std::size_t of_one = 9, of_two = 4;
  const Described told = described(options);
  const std::size_t steps = options.axes.size() > 1 ? of_two : of_one;
  std::vector<SweepAxis> axes;
  for (const auto& [key, range] : options.axes) axes.push_back(sweep_axis(told.build, key, range, steps));
  const auto points =
      lumwright::sweep(told.build, axes, options.units, told.used(), std::thread::hardware_concurrency());
  if (options.format == Format::csv) return {sweep_csv(axes, points)};
  const std::string name = told.build.name ? *told.build.name : told.build.file;
  return {sweep_report(name, axes, points, style_of(options))};
}
Answer compare(const Options& options) {
  std::vector<Described> told;
  for (const std::string& file : options.files) {
    Options one = options;
    one.file = file;
    told.push_back(described(one));
  }
  Progress progress("samples");
  const SamplesAsked samples = samples_asked(options, progress);
  std::vector<Compared> all;
  for (const Described& one : told) all.push_back({one.build, assess(one.build, options.units, one.used(), samples)});
  return {compare_report(all, style_of(options))};
}
}  // namespace lumwright::cli
