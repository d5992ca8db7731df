// From the shares that leak when the fire burns to the openings that leak the same: what the cold test shares with the
// hot fire.
#pragma once
#include "draught/gas_path.hpp"
#include <optional>

namespace lumwright::draught {
/// Openings that leak as much as `hot` leaks, each under its own suction: what stays the same when the fire is out.
/// Nothing for a leak that the path has not. Throws ModelError if a leak flows where there is no suction to drive it.
struct Openings {
  std::optional<Area> past_bed, smokebox;
};
Openings openings(const GasNetwork& network, const PathFlow& hot);
/// The path with its leaks as openings instead of shares.
GasPath with_openings(GasPath path, const Openings& openings);
}  // namespace lumwright::draught
