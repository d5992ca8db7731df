// The pack during the raise: what it gives at each charge drawn, and where it stops.
#pragma once
#include "draught/fan_speed.hpp"
#include "power/discharge.hpp"
#include "power/fan_supply.hpp"
#include "power/load_curve.hpp"
#include "power/pack.hpp"
#include "quantity/quantity.hpp"
#include <optional>

namespace lumwright::boiler {
struct Battery {
  power::Pack pack;
  power::FanSupply feed;
  std::optional<Voltage> stop_at;
};
struct SupplyPoint {
  Voltage pack;        // at the load, behind leads and fuse; while on, if the lead is chopped
  Current current;     // mean
  Voltage fan;         // while on
  double fan_speed;    // over its rated speed, as the supply sees it
  double charge_left;  // share of a full charge
  Current drain;       // of charge counted at the rated current (Peukert)
};
/// Why the pack carries the fan no longer.
enum class SupplyEnd { stop_at, collapse, step_up_minimum, empty, fan_stops };

/// The load as the pack sees it while its charge goes. The fan's motor, if given, adds the voltage at which it stops
/// turning. Throws ModelError, as `discharge` does, or if the pack cannot carry the load to begin with.
class BatteryDraw {
 public:
  BatteryDraw(const Battery& battery, const std::optional<draught::MotorLaw>& motor);
  /// From the charge drawn at the start to `stop_charge`; beyond it the state at its end.
  SupplyPoint at(Charge drawn) const;
  Charge start_charge() const { return battery_.pack.drawn; }
  Charge stop_charge() const { return stop_charge_; }
  SupplyEnd end() const { return end_; }

 private:
  void find_stop();
  Battery battery_;
  struct Floor {
    Voltage voltage;
    SupplyEnd reason;
  } floor_;
  power::LoadCurve curve_;
  Charge stop_charge_;
  SupplyEnd end_;
};
}  // namespace lumwright::boiler
