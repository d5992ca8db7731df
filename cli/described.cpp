#include "described.hpp"
#include "description/reader.hpp"
#include "file_kind.hpp"
#include "shelf.hpp"
#include "tuned_beside.hpp"

namespace lumwright::cli {
Described described(const Options& options) {
  Build build = read_as(FileKind::description, read_file(options, options.file), read_build);
  if (!options.set.empty()) build = with_settings(std::move(build), options.set);
  return {std::move(build), tuned_beside(options)};
}
SamplesAsked samples_asked(const Options& options, Progress& progress) {
  return {.count = options.samples, .seed = options.seed, .progress = progress.watch()};
}
Assessment assessed(const Options& options) {
  return assessed(options, described(options));
}
Assessment assessed(const Options& options, const Described& told) {
  Progress progress("samples");
  return judged_once(options, [&] {
    return assess(told.build, options.units, told.used(), samples_asked(options, progress));
  });
}
}  // namespace lumwright::cli
