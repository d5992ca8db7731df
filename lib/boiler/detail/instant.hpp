// One instant of the raise: every flow, temperature, power and voltage that belongs to a time, a water temperature and
// a charge.
#pragma once
#include "boiler/detail/flow_tracker.hpp"
#include "boiler/raise.hpp"

namespace lumwright::boiler {
struct InstantPlace {
  Duration time;
  Condition condition;
  Charge drawn;  // from the pack
  double along;  // for the guess of the flow
};
/// Solves instants one after another; each begins from what the earlier ones taught.
class InstantSolver {
 public:
  /// Throws ModelError for a fan without a path or without a supply. Keeps a reference.
  explicit InstantSolver(const RaiseInput& input);
  RaiseInstant solve(const InstantPlace& place);
  /// The rates have a corner here.
  void corner() {
    if (tracker_) tracker_->corner();
  }

  const std::optional<BatteryDraw>& battery() const { return battery_; }
  int solved() const { return solved_; }
  int paths_followed() const { return measured_paths_ + (tracker_ ? tracker_->paths_followed() : 0); }
  int full_searches() const { return tracker_ ? tracker_->full_searches() : 0; }

 private:
  draught::PathFlow through_fan(const FanDraught& draught, const FiredBoiler& source, const InstantPlace& place,
                                const std::optional<SupplyPoint>& supply);
  draught::FanDrive drive(const FanDraught& draught, const std::optional<SupplyPoint>& supply) const;

  const RaiseInput& input_;
  std::optional<BatteryDraw> battery_;
  std::optional<FlowTracker> tracker_;
  Rotation speed_;  // of `running_`
  draught::RunningFan running_;
  std::optional<ZoneGuess> zones_;
  int solved_ = 0, measured_paths_ = 0;
};
}  // namespace lumwright::boiler
