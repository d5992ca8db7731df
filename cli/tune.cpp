#include "tune/tune.hpp"
#include "commands.hpp"
#include "description/reader.hpp"
#include "file_kind.hpp"
#include "files.hpp"
#include "shelf.hpp"
#include "input/utf8.hpp"
#include "quantity/errors.hpp"
#include "report/tuned.hpp"
#include "style.hpp"
#include "tuned_beside.hpp"

namespace lumwright::cli {
Answer tune(const Options& options) {
  if (options.file == "-")
    throw UsageError("`tune` keeps its result beside the description, so FILE must be a file and not `-`");
  const std::string kept_in = tuned_name(options.file);
  if (same_file(options.log, kept_in))
    throw UsageError("`tune` writes its result to " + printable(kept_in) + ", so LOG cannot be that file");
  const Build build = read_as(FileKind::description, read_file(options, options.file), read_build);
  const Log log = read_as(FileKind::log, read_file(options, options.log), read_log);
  try {
    const TuneResult result = lumwright::tune(build, log);
    replace_file(options, kept_in, write_tuned(file_of(result, log)));
    return {tuned_report(result, log, kept_in, style_of(options))};
  } catch (const ModelError& e) {
    throw NoAnswer("nothing is tuned: " + std::string(e.what()));
  }
}
}  // namespace lumwright::cli
