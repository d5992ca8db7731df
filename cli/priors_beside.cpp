#include "priors_beside.hpp"
#include "description/tuned_file.hpp"
#include "tune/tune.hpp"
#include "tuned_beside.hpp"

namespace lumwright::cli {
std::string priors_name(const std::string& description) { return name_beside(description, ".priors.yaml"); }
std::optional<model::Tuning> priors_beside(const Shelf* shelf, const std::string& description) {
  const std::string name = priors_name(description);
  if (description == "-" || !file_exists(shelf, name)) return std::nullopt;
  return tune::tuning_of(description::read_tuned(read_file(shelf, name)));
}
}  // namespace lumwright::cli
