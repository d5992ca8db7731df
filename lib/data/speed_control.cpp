#include "data/speed_control.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const MotorShares& motor_shares() {
  static const MotorShares shares = [] {
    const Row row = section("speed_control", "motor");
    return MotorShares{.winding = row.number("winding"),
                       .back_emf = row.number("back_emf"),
                       .idle = row.number("idle"),
                       .air = row.number("air"),
                       .basis = row.basis()};
  }();
  return shares;
}

const FanElectrics& fan_electrics() {
  static const FanElectrics electrics = [] {
    const Row row = section("speed_control", "electrics");
    return FanElectrics{.current_exponent = row.triple<double>("current_exponent"),
                        .start_current = row.triple<double>("start_current"),
                        .regulator_dropout = row.quantity<Voltage>("regulator_dropout"),
                        .basis = row.basis()};
  }();
  return electrics;
}
}  // namespace lumwright::data
