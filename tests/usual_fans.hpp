// Small d.c. fans as their sheets describe them: the rows of tests/published/usual_fans.yaml.
#pragma once
#include "data/fans.hpp"
#include "published.hpp"
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright {
struct UsualFan {
  std::string id;
  data::FanKind kind;
  Length frame, thickness;
  Voltage rated_voltage;
  Current rated_current;
  Rotation rated_speed;
  Pressure shut_off;
  VolumeFlow free_air;
  Temperature gas_limit;
};
inline const std::vector<UsualFan>& usual_fans() {
  static const std::vector<UsualFan> all = [] {
    std::vector<UsualFan> fans;
    for (const data::Row& row : published("usual_fans"))
      fans.push_back({.id = row.text("id"),
                      .kind = row.text("kind") == "axial" ? data::FanKind::axial : data::FanKind::centrifugal,
                      .frame = row.quantity<Length>("frame"),
                      .thickness = row.quantity<Length>("thickness"),
                      .rated_voltage = row.quantity<Voltage>("voltage"),
                      .rated_current = row.quantity<Current>("current"),
                      .rated_speed = row.quantity<Rotation>("speed"),
                      .shut_off = row.quantity<Pressure>("shut_off"),
                      .free_air = row.quantity<VolumeFlow>("free_air"),
                      .gas_limit = row.quantity<Temperature>("gas_limit")});
    return fans;
  }();
  return all;
}
inline const UsualFan& usual_fan(std::string_view id) {
  for (const UsualFan& fan : usual_fans())
    if (fan.id == id) return fan;
  throw std::logic_error("usual_fans.yaml has no fan " + std::string(id));
}
}  // namespace lumwright
