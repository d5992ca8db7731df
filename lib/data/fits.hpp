// The shop's rules for a tube in a chimney: soot, running clearance, skimming, leak and engaged length.
#pragma once
#include "data/basis.hpp"
#include "data/rule.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>

namespace lumwright::data {
/// "soot" (per side), "running clearance", "roughing cut", "finishing cut", "heavy skim" (all on diameter),
/// "flat beyond ridge". Throws std::logic_error for a name that the table lacks.
const Rule<Length>& length_rule(const std::string& name);
/// "leak share", "wall left share", "flat wall share", "engaged over outside".
/// Throws std::logic_error for a name that the table lacks.
const Rule<double>& number_rule(const std::string& name);

struct WallLimit {
  std::string metal;  // as in metals.yaml
  Length least;       // wall that must be left after a skim
  Basis basis{};
};
/// The limit for a chimney of that metal; nothing when the table has none.
std::optional<WallLimit> wall_limit(const std::string& metal);
}  // namespace lumwright::data
