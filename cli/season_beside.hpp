// The season beside a description: mine.season.yaml beside mine.yaml.
#pragma once
#include "description/build.hpp"
#include "description/season.hpp"
#include "model/tuning.hpp"
#include "shelf.hpp"
#include <optional>
#include <string>

namespace lumwright::cli {
std::string season_name(const std::string& description);
/// Its name where it is there; else throws UsageError that says how to begin one, or to name a log behind `command`.
std::string season_to_read(const Shelf* shelf, const std::string& description, const std::string& command);
/// A season, or a log as the case of one. Throws FileError or InputError for a file that cannot be used.
description::Season season_told(const Shelf* shelf, const std::string& file);
/// What `tune` and `season` learn from. Must outlive what is solved from it.
struct Learning {
  description::Build build;
  description::Season season;
  std::optional<model::Tuning> priors;  // of the file beside the description
  const model::Tuning* usual() const { return priors ? &*priors : nullptr; }
};
/// Throws FileError or InputError for a file that cannot be used.
Learning learning_from(const Shelf* shelf, const std::string& description, const std::string& season);
}  // namespace lumwright::cli
