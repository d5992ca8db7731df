// The file of tuned values beside a description: mine.tuned.yaml beside mine.yaml.
#pragma once
#include "model/tuning.hpp"
#include "shelf.hpp"
#include <optional>
#include <string>

namespace lumwright::cli {
/// "mine" + `end` for mine.yaml.
std::string name_beside(const std::string& description, const std::string& end);
std::string tuned_name(const std::string& description);
/// What was tuned for a description; nothing without such a file, or for standard input. Throws FileError or InputError
/// for a file that cannot be used: a broken one is not ignored.
std::optional<model::Tuning> tuned_beside(const Shelf* shelf, const std::string& description);
}  // namespace lumwright::cli
