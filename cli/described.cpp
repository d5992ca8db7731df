#include "described.hpp"
#include "file_kind.hpp"
#include "input/utf8.hpp"
#include "shelf.hpp"
#include "style.hpp"
#include "tuned_beside.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
constexpr std::size_t usual_samples = 1000;

description::Setting setting(const std::string& text) {
  const description::ReadSetting read = description::read_setting(text);
  if (!read.complete || read.setting.key.empty())
    throw UsageError(fmt::format("--set takes a key and its value, as in --set adapter.tube.length=\"40 mm\", not `{}`",
                                 input::printable(text)));
  return read.setting;
}
}  // namespace

std::size_t samples_of(const Words& words) {
  return std::min<std::size_t>(words.whole("--samples", most_samples), words.around.most_samples);
}
std::uint64_t seed_of(const Words& words) { return words.whole("--seed", 4294967295U); }
DescriptionOptions description_options(const Words& words, const std::string& file) {
  DescriptionOptions options{.file = file,
                             .untuned = words.has("--untuned"),
                             .samples = std::min(usual_samples, words.around.most_samples),
                             .units = units_of(words),
                             .shelf = words.around.shelf};
  for (const std::string& one : words.all("--set")) options.set.push_back(setting(one));
  return options;
}
DescriptionOptions sampled_options(const Words& words, const std::string& file) {
  DescriptionOptions options = description_options(words, file);
  options.samples = samples_of(words);
  options.seed = seed_of(words);
  return options;
}
Described described(const DescriptionOptions& options) {
  description::Build build = description_in(options.shelf, options.file);
  if (!options.set.empty()) build = description::with_settings(std::move(build), options.set);
  return {std::move(build), options.untuned ? std::nullopt : tuned_beside(options.shelf, options.file)};
}
plan::SamplesAsked samples_asked(const DescriptionOptions& options, Progress& progress) {
  return {.count = options.samples, .seed = options.seed, .progress = progress.watch()};
}
plan::Assessment judged_once(const DescriptionOptions& options, const std::function<plan::Assessment()>& judge) {
  if (options.shelf == nullptr) return judge();
  std::string asked = fmt::format("{} {} {} {} {}", options.file, options.samples, options.seed, options.untuned,
                                  static_cast<int>(options.units));
  for (const description::Setting& one : options.set) asked += fmt::format(" {}={}", one.key, one.value);
  for (const std::string& name : {options.file, tuned_name(options.file)})  // either may have been written anew
    if (file_exists(options.shelf, name)) asked += "\n" + read_file(options.shelf, name).text;
  const auto known = options.shelf->judged.find(asked);
  if (known != options.shelf->judged.end()) return known->second;
  return options.shelf->judged.emplace(asked, judge()).first->second;
}
plan::Assessment assessed(const DescriptionOptions& options) { return assessed(options, described(options)); }
plan::Assessment assessed(const DescriptionOptions& options, const Described& told) {
  Progress progress("samples");
  return judged_once(
      options, [&] { return plan::assess(told.build, options.units, told.used(), samples_asked(options, progress)); });
}
}  // namespace lumwright::cli
