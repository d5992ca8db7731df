// The season beside a description: mine.season.yaml beside mine.yaml.
#pragma once
#include "description/season.hpp"
#include "shelf.hpp"
#include <optional>
#include <string>

namespace lumwright::cli {
std::string season_name(const std::string& description);
/// Nothing where there is no such file. Throws FileError or InputError for one that cannot be used.
std::optional<description::Season> season_beside(const Shelf* shelf, const std::string& description);
}  // namespace lumwright::cli
