// What can happen during the raise.
#pragma once

namespace lumwright::boiler {
enum class RaiseEventKind {
  false_own_blower,  // with air left in the boiler the gauge would show own-blower pressure here
  boils,             // at the barometer's pressure
  purged,            // the steam meant for it has been let out
  fully_lit,
  own_blower,
  working,
  fan_too_hot,  // the gas at the fan passes its limit upwards, for the first time
  pack_stops    // Raise::supply_end says why
};
/// "own_blower", as it stands in JSON.
const char* key_of(RaiseEventKind kind);
}  // namespace lumwright::boiler
