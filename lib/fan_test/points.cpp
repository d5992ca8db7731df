#include "data/fan_test.hpp"
#include "data/measuring.hpp"
#include "fan_test/detail/parts.hpp"
#include "matter/air.hpp"
#include "quantity/errors.hpp"
#include <cmath>
#include <fmt/format.h>

namespace lumwright::fan_test {
namespace {
bool closed(const description::part::FanTestReading& r) { return r.plate && *r.plate == 0.0 * unit::m; }
std::string setting_of(const description::part::FanTestReading& r, bool tube) {
  if (closed(r)) return "closed lid";
  if (tube) return "tube";
  const std::string hole = format(*r.plate, r.plate.unit);
  return r.holes && *r.holes > 1 ? fmt::format("{} x {}", *r.holes, hole) : hole;
}
std::optional<model::Measure> hole_of(const description::part::FanTestReading& r, bool tube) {
  if (closed(r) || tube) return std::nullopt;
  return model::Measure{AnyQuantity(*r.plate), r.plate.unit};
}

/// Flow through the meter and what is unsure about this reading alone (relative, one standard deviation).
struct Metering {
  draught::MeteredFlow metered;
  double sigma;
};

class Point {
 public:
  Point(const Setting& setting, const description::part::FanTestReading& reading, std::size_t number)
      : s_(setting),
        r_(reading),
        out_{.number = number,
             .setting = setting_of(reading, setting.tube),
             .hole = hole_of(reading, setting.tube),
             .holes = reading.holes ? *reading.holes : 1,
             .depression = *reading.depression / setting.u_tube.incline,
             .metered = {},
             .speed_ratio = 1.0,
             .point = {},
             .current = {},
             .left_out = "",
             .remarks = {}} {
    if (reading.current) out_.current = *reading.current;
  }
  TestedPoint work_out() {
    const Pressure sigma = pressure_sigma(r_.depression);
    if (out_.depression <= 2.0 * sigma) {
      out_.left_out =
          fmt::format("too little to tell from nothing by a U-tube read to {}", format(s_.u_tube.reads_to, "mmH2O"));
      return out_;
    }
    try {
      fill(sigma);
    } catch (const ModelError& e) {
      out_.left_out = e.what();
      out_.metered.reset();
      out_.speed_ratio = 1.0;
    }
    return out_;
  }

 private:
  Pressure pressure_sigma(const description::Given<Pressure>& given) const {
    if (!given.has_spread) return draught::u_tube_sigma(s_.u_tube);
    return 0.25 * (given.band->high - given.band->low) / s_.u_tube.incline;
  }
  draught::RoomAir room() const {
    const Temperature t = r_.air ? *r_.air : s_.air;
    return {.density = matter::air_density(t, s_.barometer), .viscosity = matter::air_viscosity(t)};
  }
  void fill(Pressure sigma) {
    std::optional<Metering> meter;
    if (!closed(r_)) meter = s_.tube ? by_tube() : by_plate();
    const draught::BoxReading box{.depression = out_.depression,
                                  .flow = meter ? meter->metered.flow : 0.0 * kg_per_s,
                                  .room = room().density,
                                  .barometer = s_.barometer,
                                  .box = s_.box};
    const draught::FanPoint read = draught::fan_point(box);
    const double speed = speed_ratio(s_, r_).value, density = matter::standard_fan_air / draught::density_in_box(box);
    const draught::FanPoint carried = draught::similar(read, {.speed = speed, .size = 1.0, .density = density});
    out_.speed_ratio = speed;
    if (meter) out_.metered = meter->metered;
    out_.point = {.flow = carried.flow,
                  .pressure = carried.pressure,
                  .pressure_sigma = sigma * (carried.pressure / read.pressure),
                  .flow_with_pressure = meter && !s_.tube ? 0.5 : 0.0,
                  .flow_sigma = meter ? meter->sigma : 0.0};
  }
  Metering by_plate() {
    const draught::LidPlate plate{.hole = *r_.plate, .holes = r_.holes ? *r_.holes : 1, .thickness = s_.plate};
    const auto& stated = s_.file.meter.discharge;
    const draught::MeteredFlow metered = draught::plate_flow(plate, out_.depression, room(), stated.band);
    remark_on(plate, metered, static_cast<bool>(stated));
    const auto& within = s_.file.meter.hole_within;
    const Length usual = within ? *within : data::measuring_method("caliper_inside").uncertainty;
    double sigma = 2.0 * relative_sigma(r_.plate, usual / plate.hole);
    if (s_.box) sigma = std::hypot(sigma, 0.5 * draught::jet_recovery(plate, metered.coefficient.value, *s_.box));
    return {metered, sigma};
  }
  void remark_on(const draught::LidPlate& plate, const draught::MeteredFlow& metered, bool stated) {
    const double edge = plate.thickness / plate.hole;
    if (!stated && edge > data::fan_test_rule("edge over hole").value)
      out_.remarks.push_back(
          fmt::format("the plate is {} of the hole thick, too thick for a sharp edge", percent(edge, 2)));
    if (!stated && metered.reynolds < data::fan_test_rule("least reynolds").value)
      out_.remarks.push_back(
          fmt::format("Reynolds number {:.0f}: the discharge is little known there", metered.reynolds));
    if (s_.side && plate.hole / *s_.side > data::fan_test_rule("hole over box").value)
      out_.remarks.push_back(
          fmt::format("the hole is {} of the box wide: its jet reaches the walls", percent(plate.hole / *s_.side, 2)));
  }
  Metering by_tube() {
    const auto& t = s_.file.meter.tube;
    const draught::StraightTube tube{.bore = *t.bore, .length = s_.tube_length};
    const draught::RoomAir air = room();
    double sigma = 0.0;
    Velocity speed = 0.0 * m_per_s;
    if (r_.air_speed) {
      speed = *r_.air_speed;
      sigma = relative_sigma(r_.air_speed, data::fan_test_rule("anemometer").value);
    } else {
      const Pressure head = *r_.velocity_head / s_.u_tube.incline, head_sigma = pressure_sigma(r_.velocity_head);
      if (head <= 2.0 * head_sigma)
        throw ModelError(fmt::format("velocity head {} is too little to tell from nothing", format(head, "mmH2O")));
      speed = draught::pitot_velocity(head, air.density);
      sigma = 0.5 * head_sigma / head;
    }
    return {draught::tube_flow(tube, speed, air, t.mean.band), sigma};
  }

  const Setting& s_;
  const description::part::FanTestReading& r_;
  TestedPoint out_;
};
}  // namespace

TestedPoint tested_point(const Setting& setting, const description::part::FanTestReading& reading, std::size_t number) {
  return Point(setting, reading, number).work_out();
}
}  // namespace lumwright::fan_test
