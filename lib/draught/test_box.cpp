#include "draught/test_box.hpp"
#include "data/fan_test.hpp"
#include "data/tuning.hpp"
#include "draught/orifice.hpp"
#include "matter/air.hpp"
#include "numeric/root.hpp"
#include "quantity/errors.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::draught {
namespace {
constexpr double shares[] = {0.08, 0.15, 0.23, 0.33, 0.45, 0.6, 0.8};  // of free air: closer where fans are worked
constexpr int most_holes = 4;
constexpr double told = 0.1;        // of a pressure: what a U-tube should tell it to
constexpr double laid_down = 10.0;  // millimetres along the tube for each of height; flatter ones need a level

Length rounded_up(Length length, Length to) { return std::ceil(length / to - 1e-9) * to; }
double plate_cd() { return discharge_coefficient("test plate").value; }

class Planner {
 public:
  explicit Planner(const ExpectedFan& fan) : fan_(fan), shape_(shape_of(fan)) {}
  /// One hole for this share of free air, or several smaller ones; those of `widest` if even four are not enough.
  PlannedPlate plate_for(double share, Length widest) const {
    const MassFlow flow = share * fan_.free_air * matter::standard_fan_air;
    const Length whole = orifice_diameter(plate_cd(), matter::standard_fan_air, shape_(share) * fan_.shut_off, flow);
    int holes = 1;
    while (holes < most_holes && whole / std::sqrt(holes) > widest) ++holes;
    return met(nearest(whole / std::sqrt(holes), widest), holes);
  }

 private:
  static numeric::MonotoneCurve shape_of(const ExpectedFan& fan) {
    const data::FanShape& shape = data::fan_shape(fan.kind, fan.thickness);
    return {shape.flow, shape.pressure};
  }
  static Length nearest(Length hole, Length widest) {
    Length best = data::usual_holes().front();
    for (const Length& usual : data::usual_holes())
      if (usual <= widest && std::abs(std::log(usual / hole)) < std::abs(std::log(best / hole))) best = usual;
    return best;
  }
  /// Where the plate's own law meets the expected curve.
  PlannedPlate met(Length hole, int holes) const {
    const Area area = static_cast<double>(holes) * circle(hole);
    const auto surplus = [&](double x) {
      const MassFlow flow = x * fan_.free_air * matter::standard_fan_air;
      return in(shape_(x) * fan_.shut_off - orifice_drop(plate_cd(), area, matter::standard_fan_air, flow), Pa);
    };
    const double share = numeric::bracketed_root(surplus, 0.0, 1.0, "share of free air");
    return {.hole = hole,
            .holes = holes,
            .flow = share * fan_.free_air,
            .depression = shape_(share) * fan_.shut_off,
            .reading = 0.0};
  }
  const ExpectedFan& fan_;
  numeric::MonotoneCurve shape_;
};
}  // namespace

TestBox test_box_for(const ExpectedFan& fan) {
  require_above_zero("fan frame", fan.frame);
  require_above_zero("fan thickness", fan.thickness);
  require_above_zero("expected shut-off pressure", fan.shut_off);
  require_above_zero("expected free-air flow", fan.free_air);
  const double face = std::sqrt(data::fan_test_rule("box over fan face").value);
  TestBox box{.side = rounded_up(face * fan.frame, 10.0 * mm),
              .length = 0.0 * m,
              .screen = 0.0 * m,
              .plates = {},
              .thickest_plate = 0.0 * m,
              .u_tube = 0.0 * m,
              .tube = {.reads_to = data::instruments().u_tube, .incline = 1.0},
              .covered = 0.0};
  const Length widest = data::fan_test_rule("hole over box").value * box.side;
  const Planner planner(fan);
  for (const double share : shares) {
    const PlannedPlate plate = planner.plate_for(share, widest);
    if (box.plates.empty() || plate.flow > 1.02 * box.plates.back().flow) box.plates.push_back(plate);
  }
  Length largest = box.plates.front().hole;
  for (const PlannedPlate& plate : box.plates) largest = std::max(largest, plate.hole);
  box.screen = rounded_up(data::fan_test_rule("length over hole").value * largest, 10.0 * mm);
  box.length = rounded_up(box.screen + fan.frame, 10.0 * mm);
  box.thickest_plate = data::fan_test_rule("edge over hole").value * box.plates.front().hole;
  box.u_tube = rounded_up(2.0 * fan.shut_off / mmH2O * mm, 10.0 * mm) + 40.0 * mm;
  const auto reading = [&](const PlannedPlate& plate) {
    return static_cast<double>(2.0 * u_tube_sigma(box.tube) / plate.depression);
  };
  if (reading(box.plates[box.plates.size() / 2]) > told) box.tube.incline = laid_down;
  for (PlannedPlate& plate : box.plates) plate.reading = reading(plate);
  box.covered = box.plates.back().flow / fan.free_air;
  return box;
}
}  // namespace lumwright::draught
