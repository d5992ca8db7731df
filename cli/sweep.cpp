#include "plan/sweep.hpp"
#include "commands.hpp"
#include "described.hpp"
#include "description/reader.hpp"
#include "report/side_by_side.hpp"
#include "style.hpp"
#include <thread>
#include <utility>

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
