// Usual values that a club's records gave, beside a description: mine.priors.yaml beside mine.yaml.
#pragma once
#include "model/tuning.hpp"
#include "shelf.hpp"
#include <optional>
#include <string>

namespace lumwright::cli {
std::string priors_name(const std::string& description);
/// Nothing without such a file, or for standard input. Throws FileError or InputError for one that cannot be used.
std::optional<model::Tuning> priors_beside(const Shelf* shelf, const std::string& description);
}  // namespace lumwright::cli
