// How long a pack has to be on its charger, and what empties it while nobody looks.
#pragma once
#include "data/charging.hpp"
#include "quantity/quantity.hpp"

namespace lumwright::power {
struct Charging {
  Charge full;     // of the pack as its charger sees it: one cell's, times the strings side by side
  double missing;  // share that was taken out, 0 to 1
  Current charger;
};
/// Charge to put back over the current, and the tail in which the current falls, in proportion where less than half is
/// missing. Throws ModelError for a chemistry that is not charged, a share out of range or a current that is not above
/// zero.
Duration charging_time(const data::ChargingRow& row, const Charging& charging);
/// The most that the charger may give.
Current charging_limit(const data::ChargingRow& row, Charge full, bool stops_by_itself);
/// How long a current that nobody switched off takes to empty the pack. Current above zero.
Duration emptied_in(Charge left, Current drain);
}  // namespace lumwright::power
