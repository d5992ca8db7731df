#include "boiler/detail/flow_tracker.hpp"
#include "../draught/random_path.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::boiler;

namespace {
FixedTemperatures warm(double share) {  // a fire that brightens
  const auto at = [share](double hot) { return degC(20.0 + share * (hot - 20.0)); };
  return FixedTemperatures({.bed_mean = at(800),
                            .firebox = at(790),
                            .tube_mean = at(450),
                            .tube_exit = at(240),
                            .fuel_per_air = 0.1 * share});
}
/// Of the fan, over what the path asks for; above zero at too little flow for a balance.
Pressure pressure_to_spare(const GasNetwork& network, const TemperatureSource& source, const RunningFan& fan,
                           double bed) {
  const PathFlow f = network.follow(bed * kg_per_s, source);
  return static_pressure(fan, f.fan_volume, f.fan_density) - f.fan_suction;
}
}  // namespace

TEST_CASE("the followed flow is a stable balance of fan and path, and the full search's where that has but one") {
  Dice dice(7);
  int compared = 0, single = 0;
  for (int i = 0; i < 60; ++i) {
    const GasNetwork network(with_walls(random_path(dice, true)), room);
    const RunningFan fan = random_fan(dice);
    FlowTracker tracker(network);
    try {
      for (double share = 0.0; share <= 1.0; share += 0.05) {
        const FixedTemperatures source = warm(share);
        const PathFlow found = tracker.solve(source, fan, share);
        const double bed = in(found.bed, kg_per_s);
        CHECK(pressure_to_spare(network, source, fan, bed * (1.0 - 3e-6)) > 0.0 * Pa);
        CHECK(pressure_to_spare(network, source, fan, bed * (1.0 + 3e-6)) < 0.0 * Pa);
        const Duty duty = solve_duty(network, source, fan);
        ++compared;
        if (duty.several) continue;
        CHECK(found.bed == near(duty.flow.bed, 3e-6));
        ++single;
      }
    } catch (const ModelError&) {  // a path that is as good as shut
    }
  }
  CHECK(compared > 500);
  CHECK(single > 400);
}

TEST_CASE("when a fan's branch ends the tracker finds the other one") {
  // A curve with a dip. Behind a throttle in cold air the hot path is the easier one for the fan's own volume flow; as
  // the fire dies, the line of the path climbs over the hump on the right.
  const FanCurve curve(data::FanKind::axial, 4000.0 * rpm,
                       {{0.0 * litre_per_s, 100.0 * Pa},
                        {0.6 * litre_per_s, 20.0 * Pa},
                        {0.8 * litre_per_s, 45.0 * Pa},
                        {1.4 * litre_per_s, 40.0 * Pa},
                        {2.0 * litre_per_s, 0.0 * Pa}},
                       {.origin = CurveOrigin::data_sheet,
                        .sentence = "",
                        .standing = data::Standing::unsaid,
                        .pressure = exactly(1.0),
                        .flow = exactly(1.0)});
  const RunningFan fan = running(curve, 4000.0 * rpm);
  int jumps = 0;
  for (double area = 90.0; area < 200.0; area += 5.0) {
    GasPath path;
    path.air_entry = Hole{.area = area * mm2, .discharge = 0.6};
    const GasNetwork network(path, room);
    FlowTracker tracker(network);
    double before = 0.0;
    for (double share = 1.0; share >= 0.0; share -= 0.02) {
      const FixedTemperatures source = warm(share);
      const double bed = in(tracker.solve(source, fan, share).bed, kg_per_s);
      CHECK(pressure_to_spare(network, source, fan, bed * (1.0 - 3e-6)) > 0.0 * Pa);
      CHECK(pressure_to_spare(network, source, fan, bed * (1.0 + 3e-6)) < 0.0 * Pa);
      if (before > 0.0 && bed < 0.8 * before) ++jumps;
      before = bed;
    }
  }
  CHECK(jumps > 0);
}
