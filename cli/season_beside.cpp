#include "season_beside.hpp"
#include "file_kind.hpp"
#include "input/utf8.hpp"
#include "priors_beside.hpp"
#include "tuned_beside.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
std::string season_name(const std::string& description) { return name_beside(description, ".season.yaml"); }
std::string season_to_read(const Shelf* shelf, const std::string& description, const std::string& command) {
  const std::string name = season_name(description);
  if (description != "-" && file_exists(shelf, name)) return name;
  throw UsageError(
      fmt::format("there is no season beside {0} yet: `lumwright log {0}` begins it, or name a log: "
                  "lumwright {1} FILE LOG",
                  input::printable(description), command));
}
description::Season season_told(const Shelf* shelf, const std::string& file) {
  const input::Source source = read_file(shelf, file);
  if (is_of_kind(source, FileKind::season)) return description::read_season(source);
  return description::season_of(read_as(FileKind::log, source, description::read_log));
}
Learning learning_from(const Shelf* shelf, const std::string& description, const std::string& season) {
  return {description_in(shelf, description), season_told(shelf, season), priors_beside(shelf, description)};
}
}  // namespace lumwright::cli
