#include "boiler/raise_event.hpp"
#include <stdexcept>

namespace lumwright::boiler {
const char* key_of(RaiseEventKind kind) {
  switch (kind) {
    case RaiseEventKind::false_own_blower:
      return "false_own_blower";
    case RaiseEventKind::boils:
      return "boils";
    case RaiseEventKind::purged:
      return "purged";
    case RaiseEventKind::fully_lit:
      return "fully_lit";
    case RaiseEventKind::own_blower:
      return "own_blower";
    case RaiseEventKind::working:
      return "working";
    case RaiseEventKind::fan_too_hot:
      return "fan_too_hot";
    case RaiseEventKind::pack_stops:
      return "pack_stops";
  }
  throw std::logic_error("an event of the raise without a name");
}
}  // namespace lumwright::boiler
