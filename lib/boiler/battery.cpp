#include "boiler/battery.hpp"
#include "power/cell.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include <algorithm>

namespace lumwright::boiler {
namespace {
/// The voltage at the pack's load below which a fan that hangs on it directly stops turning.
std::optional<Voltage> fan_floor(const power::FanSupply& feed, const std::optional<draught::MotorLaw>& motor) {
  if (!motor || feed.step_up) return std::nullopt;
  switch (feed.control.kind) {
    case power::Control::Kind::series_regulator:
      return motor->stops.value + feed.regulator_dropout;
    case power::Control::Kind::chopped_supply:
      return std::nullopt;  // its motor has a law of its own
    default:
      return motor->stops.value;
  }
}
}  // namespace

BatteryDraw::BatteryDraw(const Battery& battery, const std::optional<draught::MotorLaw>& motor)
    : battery_(battery),
      floor_([&]() -> Floor {
        Floor floor{battery.stop_at.value_or(0.0 * V), SupplyEnd::stop_at};
        const auto raise = [&](Voltage v, SupplyEnd reason) {
          if (v > floor.voltage) floor = {v, reason};
        };
        if (battery.feed.step_up) raise(battery.feed.step_up->input_min, SupplyEnd::step_up_minimum);
        if (const auto stops = fan_floor(battery.feed, motor)) raise(*stops, SupplyEnd::fan_stops);
        return floor;
      }()),
      curve_(battery.feed, battery.pack.resistance(), floor_.voltage, battery.pack.curve.at(battery.pack.drawn)),
      stop_charge_(battery.pack.drawn),
      end_(floor_.reason) {
  power::check(battery.pack.curve);
  const Voltage emf = battery_.pack.curve.at(battery_.pack.drawn);
  if (!curve_.answers() || !(emf > curve_.end_emf()))
    throw ModelError("the pack, " + format(emf, "V") + " at rest, cannot carry the fan");
  find_stop();
}

// The charge at which the open-circuit voltage has sunk to the load's end. The curve falls in straight pieces.
void BatteryDraw::find_stop() {
  const std::vector<Charge>& q = battery_.pack.curve.drawn;
  const std::vector<Voltage>& e = battery_.pack.curve.voltage;
  const Voltage end = curve_.end_emf();
  if (curve_.collapses()) end_ = SupplyEnd::collapse;
  for (std::size_t i = 1; i < q.size(); ++i) {
    if (q[i] <= battery_.pack.drawn || e[i] > end) continue;
    const double share = e[i - 1] > e[i] ? std::clamp(in(e[i - 1] - end, e[i - 1] - e[i]), 0.0, 1.0) : 1.0;
    stop_charge_ = std::max(battery_.pack.drawn, q[i - 1] + share * (q[i] - q[i - 1]));
    return;
  }
  stop_charge_ = q.back();
  end_ = SupplyEnd::empty;
}

SupplyPoint BatteryDraw::at(Charge drawn) const {
  const power::Pack& pack = battery_.pack;
  const Charge q = std::clamp(drawn, pack.drawn, stop_charge_);
  const power::WorkingPoint point = curve_.at(pack.curve.at(q));
  const power::SupplyState state = power::supply_state(battery_.feed, point.voltage);
  Current drain = point.current;
  if (pack.rate_exponent > 1.0)  // Peukert: what a heavy current costs, by the capacity that it leaves
    drain = point.current *
            in(pack.full, power::capacity_at(
                              {.capacity = pack.full, .current = pack.rated_current, .exponent = pack.rate_exponent},
                              point.current));
  return {.pack = point.voltage,
          .current = point.current,
          .fan = state.fan_voltage,
          .fan_speed = state.speed,
          .charge_left = 1.0 - in(q, pack.full),
          .drain = drain};
}
}  // namespace lumwright::boiler
