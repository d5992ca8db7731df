#include "tuned_beside.hpp"
#include "build/reader.hpp"
#include "build/tuned_file.hpp"
#include "files.hpp"
#include "plan/assess.hpp"
#include "plan/tune.hpp"
#include "progress.hpp"
#include <string_view>

namespace lumwright::cli {
std::string tuned_name(const std::string& description) {
  for (const std::string_view ending : {".yaml", ".yml"})
    if (description.size() > ending.size() && description.ends_with(ending))
      return description.substr(0, description.size() - ending.size()) + ".tuned.yaml";
  return description + ".tuned.yaml";
}
std::optional<Tuning> tuned_beside(const Options& options) {
  if (options.untuned || options.file == "-") return std::nullopt;
  const std::string name = tuned_name(options.file);
  if (!file_exists(name)) return std::nullopt;
  return tuning_of(read_tuned(read_file(name)));
}
Assessment assessed(const Options& options) {
  const Build build = read_build(read_file(options.file));
  const auto tuning = tuned_beside(options);
  Progress progress("worlds");
  const WorldsAsked worlds{.count = options.samples,
                           .seed = options.seed,
                           .progress = [&](std::size_t done, std::size_t of) { progress.show(done, of); }};
  return assess(build, options.units, tuning ? &*tuning : nullptr, worlds);
}
}  // namespace lumwright::cli
