// Packs with the open-circuit curves of tests/published/power.yaml in place of the program's own.
#pragma once
#include "power/discharge.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"

namespace lumwright {
inline data::CellRow published_cell(const std::string& id, const std::string& curve) {
  data::CellRow cell = data::cell(id);
  for (const data::Row& row : published("power", "curves"))
    if (row.text("id") == curve) {
      cell.soc = row.numbers("soc");
      cell.ocv = row.list<Voltage>("ocv");
      return cell;
    }
  throw std::runtime_error("no curve " + curve);
}
inline power::PackInput plain_pack(const data::CellRow& cell, int series, Charge capacity) {
  return {.cell = cell,
          .series = series,
          .parallel = 1,
          .capacity = capacity,
          .capacity_factor = 1.0,
          .resistance_factor = 1.0,
          .charged = 1.0,
          .rate_exponent = 1.0,
          .temperature = degC(20.0),
          .measured = {},
          .contacts = 0.0 * ohm,
          .outside = 0.0 * ohm,
          .cell_resistance = {},
          .weakest = {}};
}
/// A row with cell, curve, series, capacity, resistance.
inline power::PackInput pack_of(const data::Row& row) {
  power::PackInput pack = plain_pack(published_cell(row.text("cell"), row.text("curve")),
                                     static_cast<int>(row.number("series")), row.quantity<Charge>("capacity"));
  pack.measured = row.quantity<Resistance>("resistance");
  if (row.has("charged")) pack.charged = row.number("charged");
  return pack;
}
/// Current with the square of voltage.
inline power::FanSupply fan_supply(Voltage rated, Current current) {
  return {.fan = {.rated_voltage = rated, .rated_current = current, .current_exponent = 2.0},
          .control = power::uncontrolled(),
          .step_up = {},
          .motor = data::motor_shares(),
          .regulator_dropout = data::fan_electrics().regulator_dropout};
}
/// A resistor on one alkaline cell: current with the first power of voltage.
inline power::FanSupply resistor(Resistance r) {
  power::FanSupply supply = fan_supply(1.5 * V, 1.5 * V / r);
  supply.fan.current_exponent = 1.0;
  return supply;
}
/// The same current whatever the voltage.
inline power::FanSupply steady_current(Current i) {
  power::FanSupply supply = fan_supply(0.05 * V, i);
  supply.control = {.kind = power::Control::Kind::series_regulator, .duty = 1.0, .voltage = 0.05 * V};
  supply.regulator_dropout = 0.0 * V;
  return supply;
}
inline power::FanSupply stepped_up(const std::string& module, Voltage output, Current current) {
  power::FanSupply supply = fan_supply(output, current);
  const data::StepUpRow& row = data::step_up(module);
  supply.step_up = power::step_up_of(row, output, power::real_minimum(row, {}));
  return supply;
}
}  // namespace lumwright
