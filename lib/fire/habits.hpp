// What fires are wont to do where nobody has measured: how long they take to light, and how much monoxide they make.
#pragma once
#include "data/kindling.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"

namespace lumwright::fire {
/// From the match until the whole bed glows, on a grate of this area: as the row's, by the area over the row's to a
/// power. With less than data::kindling_size().air through the grate it takes longer. Throws ModelError for an area
/// that is not above zero.
Band<Duration> kindling_time(const data::KindlingRow& row, Area grate);

/// Share of the heat that leaves unburnt as carbon monoxide, from a fire this many lumps deep: even to four lumps,
/// climbing beyond, where glowing carbon turns the dioxide back. The more of the air leaks past the bed, the less, for
/// it burns monoxide over the fire. It does not depend on how much air there is. Throws ModelError for a depth that is
/// not above zero, or a leak that is not between none and all of the air.
struct MonoxideFrom {
  double lumps;
  double leak;  // share of the engine's air that gets past the bed
};
Band<double> monoxide_share(const MonoxideFrom& fire);
}  // namespace lumwright::fire
