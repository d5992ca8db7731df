// The file of tuned values beside a description: mine.tuned.yaml beside mine.yaml.
#pragma once
#include "model/tuning.hpp"
#include "options.hpp"
#include <optional>
#include <string>

namespace lumwright::cli {
std::string tuned_name(const std::string& description);
/// What was tuned for the description of these options; nothing without such a file, for standard input, or where the
/// options say `--untuned`. Throws FileError or InputError for a file that cannot be used: a broken one is not ignored.
std::optional<Tuning> tuned_beside(const Options& options);
}  // namespace lumwright::cli
