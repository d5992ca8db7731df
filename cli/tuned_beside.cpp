#include "tuned_beside.hpp"
#include "description/tuned_file.hpp"
#include "tune/tune.hpp"
#include <string_view>

namespace lumwright::cli {
std::string name_beside(const std::string& description, const std::string& end) {
  for (const std::string_view ending : {".yaml", ".yml"})
    if (description.size() > ending.size() && description.ends_with(ending))
      return description.substr(0, description.size() - ending.size()) + end;
  return description + end;
}
std::string tuned_name(const std::string& description) { return name_beside(description, ".tuned.yaml"); }
std::optional<model::Tuning> tuned_beside(const Shelf* shelf, const std::string& description) {
  const std::string name = tuned_name(description);
  if (description == "-" || !file_exists(shelf, name)) return std::nullopt;
  return tune::tuning_of(description::read_tuned(read_file(shelf, name)));
}
}  // namespace lumwright::cli
