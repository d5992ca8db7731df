#include "boiler/battery.hpp"
#include "example.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>
#include <map>

using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::power;
using namespace lumwright::boiler;

TEST_CASE("the pack ends where its discharge ends, for the same reason, and gives the same on the way") {
  // the discharge integrates charge over time on its own; here the same load is read at given charges
  const std::map<StopReason, SupplyEnd> same = {{StopReason::stop_at, SupplyEnd::stop_at},
                                                {StopReason::collapse, SupplyEnd::collapse},
                                                {StopReason::step_up_minimum, SupplyEnd::step_up_minimum},
                                                {StopReason::empty, SupplyEnd::empty}};
  int compared = 0;
  for (const bool step_up : {true, false})
    for (const double stop : {0.0, 3.0, 4.5, 5.5})
      for (const double current : {0.05, 0.2, 0.6}) {
        CAPTURE(step_up);
        CAPTURE(stop);
        CAPTURE(current);
        Battery battery = example_battery(usual_fan("axial 60x25"), step_up);
        battery.stop_at = stop > 0.0 ? std::optional(stop * V) : std::nullopt;
        battery.feed.fan.rated_current = current * A;
        const Run run = discharge(battery.pack, battery.feed, battery.stop_at);
        if (!run.starts) continue;
        const BatteryDraw draw(battery, std::nullopt);
        CHECK(draw.end() == same.at(run.reason));
        CHECK(in(draw.stop_charge(), battery.pack.full) == near(1.0 - run.charge_left_share, 1e-9));
        for (const Sample& sample : run.series) {
          const SupplyPoint point = draw.at((1.0 - sample.charge_share) * battery.pack.full);
          CHECK(point.pack == near(sample.voltage, 1e-5));
          CHECK(point.current == near(sample.current, 1e-5));
        }
        ++compared;
      }
  CHECK(compared > 12);
}

TEST_CASE("a fan straight on the pack stops at its own voltage if nothing stops it before") {
  Battery battery = example_battery(usual_fan("axial 60x25"), false);
  battery.stop_at.reset();
  const MotorLaw motor =
      motor_law({.rated_voltage = 12.0 * V, .rated_speed = 4500.0 * rpm, .starts_at = 6.5 * V, .speed_at = {}});
  const BatteryDraw draw(battery, motor);
  CHECK(draw.end() == SupplyEnd::fan_stops);
  CHECK(draw.at(draw.stop_charge()).fan == near(motor.stops.value, 1e-6));
}

TEST_CASE("a heavy current costs more charge than it carries") {
  Battery battery = example_battery(usual_fan("axial 60x25"), true);
  const BatteryDraw draw(battery, std::nullopt);
  const SupplyPoint start = draw.at(draw.start_charge());
  // Peukert: (I/Ir)^(k-1)
  const double ratio = in(start.current, battery.pack.rated_current);
  CHECK(in(start.drain, start.current) == near(ratio > 1.0 ? std::pow(ratio, 0.05) : 1.0, 1e-9));
}

TEST_CASE("a pack that cannot carry the fan is refused") {
  Battery battery = example_battery(usual_fan("axial 60x25"), true);
  battery.stop_at = 20.0 * V;
  CHECK_THROWS_AS(BatteryDraw(battery, std::nullopt), ModelError);
}
