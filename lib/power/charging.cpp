#include "power/charging.hpp"
#include "quantity/errors.hpp"
#include "quantity/require.hpp"
#include <algorithm>

namespace lumwright::power {
Duration charging_time(const data::ChargingRow& row, const Charging& charging) {
  if (!row.never.empty()) throw ModelError(row.never);
  require_above_zero("charge of the pack", charging.full);
  require_within("share of the charge that was taken out", charging.missing, {0.0, 1.0});
  require_above_zero("current of the charger", charging.charger);
  const double tail = std::min(1.0, 2.0 * charging.missing);
  return charging.missing * charging.full * row.put_back / charging.charger + tail * row.tail;
}

Current charging_limit(const data::ChargingRow& row, Charge full, bool stops_by_itself) {
  const double rate = stops_by_itself ? row.most : row.by_timer.value_or(0.0);
  return rate * full / (1.0 * hour);
}

Duration emptied_in(Charge left, Current drain) {
  require_above_zero("current that goes on flowing", drain);
  return left / drain;
}
}  // namespace lumwright::power
