#include "tuned_beside.hpp"
#include "description/tuned_file.hpp"
#include "shelf.hpp"
#include "tune/tune.hpp"
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
  if (!file_exists(options, name)) return std::nullopt;
  return tuning_of(read_tuned(read_file(options, name)));
}
}  // namespace lumwright::cli
