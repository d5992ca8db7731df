// How long fires take to light, by what is burnt and what it is started on.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
struct KindlingSize {
  Area grate;    // for which the times of the rows stand
  double power;  // the time goes with the area to this
  MassFlux air;  // through the grate, with less of which it takes longer
  Basis basis{};
};
const KindlingSize& kindling_size();

struct KindlingRow {
  std::string fuel, on;
  Duration time;  // from the match until the whole bed glows
  double factor;  // the band: over and by it
  Basis basis{};
};
/// Fuel by fuel, the usual start first.
const std::vector<KindlingRow>& kindlings();
/// How this fuel is started on that; its usual start where the table has no such row. Throws ModelError for a fuel that
/// is not in the table.
const KindlingRow& kindling(std::string_view fuel, std::string_view on = "");
/// It is not lit from cold, only on charcoal that glows.
bool needs_bright_charcoal(std::string_view fuel);
inline constexpr std::string_view bright_charcoal = "bright charcoal";
}  // namespace lumwright::data
