#include "tune/priors.hpp"
#include "commands.hpp"
#include "file_kind.hpp"
#include "input/utf8.hpp"
#include "priors_beside.hpp"
#include "quantity/errors.hpp"
#include "season_beside.hpp"
#include "shelf.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
struct PriorsOptions {
  std::string file;
  std::vector<std::string> records;
  Shelf* shelf;
};
PriorsOptions priors_options(const Words& words) {
  PriorsOptions options{words.needed("FILE"), words.all("RECORD"), words.around.shelf};
  if (options.file == "-")
    throw UsageError("`priors` keeps its result beside the description, so FILE must be a file and not `-`");
  return options;
}
/// What the records of a club give to this build, kept beside it.
std::string pool(const PriorsOptions& options, const description::Build& build) {
  std::vector<description::PriorRecord> records;
  for (const std::string& name : options.records)
    records.push_back(description::read_prior_record(read_file(options.shelf, name)));
  const tune::PooledPriors pooled = tune::pooled_priors(build, records);
  const std::string name = priors_name(options.file);
  replace_file(options.shelf, name, description::write_pooled(pooled.file));
  std::string text = fmt::format(
      "{} record{} of the same fuel and kind of fan: kept in {}, where `tune` and `season`\n"
      "take them for usual.\n",
      pooled.taken, pooled.taken == 1 ? "" : "s", input::printable(name));
  for (const std::string& record : pooled.left_out)
    text += fmt::format("  {} is of another class and was left out\n", input::printable(record));
  return text + "\n" + description::write_pooled(pooled.file);
}
Answer run_priors(const Words& words) {
  const PriorsOptions options = priors_options(words);
  const description::Build build = description_in(options.shelf, options.file);
  try {
    if (!options.records.empty()) return {pool(options, build)};
    const description::Season season = season_told(options.shelf, season_to_read(options.shelf, options.file, "tune"));
    return {description::write_prior_record(tune::record_of(build, season)), fine, Head::comment};
  } catch (const ModelError& e) {
    throw report::NoAnswer("no priors: " + std::string(e.what()));
  }
}
}  // namespace

const CommandRow priors_command{
    .word = "priors",
    .arguments = "FILE RECORD ...",
    .usage = "priors FILE",
    .brief = "what one engine taught, for a club to pool",
    .headline = "priors FILE [RECORD ...]: what engines taught, for a club to pool",
    .about = R"(  With FILE alone it prints a record of what the season beside it has taught: the
  kind of fuel and of fan, and factors of the engine with their spreads. There is
  no name in it, no day and no size, so that a club may collect such records.
  With records behind FILE it pools those of the same fuel and kind of fan, and
  keeps what they give in mine.priors.yaml beside mine.yaml: from then on `tune`
  and `season` take that for usual, so that a few lighting-ups tell more. Delete
  the file to go back to the usual values of the tables.
)",
    .below = R"(Examples
  lumwright priors mine.yaml > mine-record.yaml
  lumwright priors mine.yaml mine-record.yaml other-record.yaml

Exit status: 0, 1 when nothing can be told, and says why, 2 when a file
cannot be used.
)",
    .run = run_priors};
}  // namespace lumwright::cli
