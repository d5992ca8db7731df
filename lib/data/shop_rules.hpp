// Rules of the bench: edges, webs, gaps, reserves. One list a kind of quantity.
#pragma once
#include "data/rule.hpp"
#include "quantity/quantity.hpp"
#include <string_view>

namespace lumwright::data {
// Each throws std::logic_error for a name that shop_rules.yaml lacks.

/// "web least", "web preferred", "braze gap least", "braze gap most" (per side), "braze run", "sheet lap", "hem",
/// "pilot", "pilot above", "edge break", "outlet margin", "opening over", "hole position", "snipped to", "filed to",
/// "turned to", "fitted to" (with " in inches" behind it: of a rule in inches), "solder gap least", "solder gap most".
const Rule<Length>& shop_length(std::string_view name);
/// "edge least", "edge preferred", "pitch least", "pitch preferred" (in hole diameters), "full threads least", "full
/// threads preferred", "thread share", "teeth in cut", "burr share", "tilt", "strength reserve",
/// "tipping reserve", "load spread" (radians), "press least", "press most" (of the diameter).
const Rule<double>& shop_number(std::string_view name);
/// "knock": the push is the weight of this mass.
const Rule<Mass>& shop_mass(std::string_view name);
}  // namespace lumwright::data
