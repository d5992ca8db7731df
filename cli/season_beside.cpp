#include "season_beside.hpp"
#include "tuned_beside.hpp"

namespace lumwright::cli {
std::string season_name(const std::string& description) { return name_beside(description, ".season.yaml"); }
std::optional<description::Season> season_beside(const Shelf* shelf, const std::string& description) {
  const std::string name = season_name(description);
  if (description == "-" || !file_exists(shelf, name)) return std::nullopt;
  return description::read_season(read_file(shelf, name));
}
}  // namespace lumwright::cli
