#include "data/fan_test.hpp"
#include "data/tuning.hpp"
#include "draught/fan_estimate.hpp"
#include "fan_test/detail/parts.hpp"
#include "matter/air.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::fan_test {
namespace {
data::FanKind kind_of_fan(const description::FanReadings& file, model::Inputs& inputs) {
  if (!file.fan.kind)
    inputs.note({"fan.kind", "axial", "", "the usual salvaged fan",
                 data::Basis{data::Standing::practice, "common practice, no source"}});
  return file.fan.kind && *file.fan.kind == data::name(data::FanKind::centrifugal) ? data::FanKind::centrifugal
                                                                                   : data::FanKind::axial;
}
/// The rated voltage, or the highest that was read.
std::optional<Voltage> curve_voltage(const description::FanReadings& file, model::Inputs& inputs) {
  if (file.fan.rated.voltage) return *file.fan.rated.voltage;
  std::optional<Voltage> highest;
  for (const auto& r : file.readings)
    if (r.voltage && (!highest || *r.voltage > *highest)) highest = *r.voltage;
  if (highest)
    inputs.note({"fan.rated.voltage", format(*highest, "V"), "", "the highest voltage of the readings",
                 data::Basis{data::Standing::measured, "the readings"}});
  return highest;
}
Length length_of_tube(const description::FanReadings& file, bool tube, model::Inputs& inputs) {
  if (!tube) return 0.0 * m;
  const auto& t = file.meter.tube;
  return inputs.otherwise(
      t.length, exactly(5.0 * *t.bore),
      model::because("a short tube", data::Basis{data::Standing::practice, "common practice, no source"}));
}
draught::MotorLabel label_of(const Setting& s, Rotation rated) {
  draught::MotorLabel label{.rated_voltage = *s.voltage, .rated_speed = rated, .starts_at = {}, .speed_at = {}};
  for (const auto& [voltage, speed] : s.file.fan.speed_at.points) label.speed_at.push_back({voltage, speed});
  return label;
}
/// One measured speed is joined to the rated one, so it is of use only where that is known.
draught::MotorLabel label_for_ratios(const Setting& s) {
  draught::MotorLabel label = label_of(s, s.speed.value_or(1000.0 * rpm));
  if (!s.speed && label.speed_at.size() < 2) label.speed_at.clear();
  return label;
}
/// Where the label is silent, the speeds that were read, each carried to the curve's voltage.
std::optional<Rotation> speed_from_readings(const Setting& s) {
  Rotation sum = 0.0 * rpm;
  int count = 0;
  for (const auto& r : s.file.readings) {
    if (!r.speed || !s.voltage) continue;
    sum += *r.speed * (r.voltage ? draught::speed_to_rated(label_for_ratios(s), *r.voltage).value : 1.0);
    ++count;
  }
  if (count == 0) return std::nullopt;
  return sum / static_cast<double>(count);
}
std::string basis(const Setting& s) {
  const auto& readings = s.file.readings;
  const auto counted = std::count_if(readings.begin(), readings.end(), [](const auto& r) { return bool(r.speed); });
  if (counted > 0 && s.speed)
    return fmt::format("{} of {} readings tell the fan's speed and were carried to {} by it{}", counted,
                       readings.size(), format(*s.speed, "rpm", 4),
                       counted < static_cast<std::ptrdiff_t>(readings.size())
                           ? "; the others by their voltage, as fans usually follow it"
                           : "");
  if (!s.voltage)
    return "no voltage was read: the curve holds at whatever voltage the fan had, and no reading was corrected";
  return fmt::format("the speed was not measured: readings at other voltages were carried to {} as {}",
                     format(*s.voltage, "V"),
                     s.file.fan.speed_at ? "the speeds given for some voltages say" : "fans usually follow theirs");
}
}  // namespace

Setting::Setting(const description::FanReadings& readings)
    : file(readings),
      kind(kind_of_fan(readings, inputs)),
      thickness(inputs.otherwise(readings.fan.thickness, exactly(20.0 * mm),
                                 model::because("chooses the usual shape of the curve",
                                                data::Basis{data::Standing::practice, "common depth of small fans"}))),
      barometer(inputs.usual(readings.place.barometer)),
      air(inputs.usual(readings.place.air)),
      tube(readings.meter.kind && *readings.meter.kind == description::meter_words().back()),
      tube_length(length_of_tube(readings, tube, inputs)),
      plate(tube ? 0.0 * m
                 : inputs.otherwise(readings.meter.plate, Band<Length>{0.3 * mm, 0.2 * mm, 0.5 * mm},
                                    model::because("tin of a can", data::Basis{data::Standing::practice,
                                                                               "common practice, no source"}))),
      u_tube{.reads_to =
                 inputs.otherwise(readings.meter.reads_to, exactly(data::instruments().u_tube),
                                  model::because("half a division of a ruler",
                                                 data::Basis{data::Standing::practice, "common practice, no source"})),
             .incline = readings.meter.incline ? *readings.meter.incline : 1.0} {
  reads_to_written = static_cast<bool>(readings.meter.reads_to);
  if (readings.fan.frame) frame = *readings.fan.frame;
  if (const auto& d = readings.box.diameter; d) {
    box = circle(*d);
    side = *d;
  } else if (const auto& b = readings.box; b.width && b.height) {
    box = *b.width * *b.height;
    side = std::min(*b.width, *b.height);
  }
  const model::Input &t = *inputs.find("place.air"), &p = *inputs.find("place.barometer");
  // A room's thermometer where no spread is written.
  const double t_half = t.high > t.low ? 0.5 * (t.high - t.low) : in(data::instruments().thermometer, K);
  density_sigma = 0.5 * std::hypot(t_half / t.value.si, 0.5 * (p.high - p.low) / p.value.si);
  voltage = curve_voltage(readings, inputs);
  if (readings.fan.rated.speed)
    speed = *readings.fan.rated.speed;
  else
    speed = speed_from_readings(*this);
  speed_basis = basis(*this);
}

SpeedRatio speed_ratio(const Setting& s, const description::part::FanTestReading& r) {
  if (r.speed && s.speed)
    return {*s.speed / *r.speed, relative_sigma(r.speed, data::fan_test_rule("speed counter").value)};
  if (!s.voltage) return {1.0, 0.0};
  const Voltage there = r.voltage ? *r.voltage : *s.voltage;
  const Band<double> ratio = draught::speed_to_rated(label_for_ratios(s), there);
  const double by_law = 0.25 * (ratio.high - ratio.low) / ratio.value;
  // Speed follows the voltage nearly in proportion, so that it takes over the meter's error.
  const double by_meter = relative_sigma(r.voltage, data::instruments().multimeter);
  return {ratio.value, std::hypot(by_law, by_meter)};
}

std::vector<draught::CommonError> common_errors(const Setting& s, const std::vector<TestedPoint>& points,
                                                std::vector<SharedError>& shared) {
  double meter = 0.0, speed = 0.0;
  int metered = 0, used = 0;
  for (const TestedPoint& p : points) {
    if (!p.left_out.empty()) continue;
    ++used;
    speed += speed_ratio(s, s.file.readings[p.number - 1]).sigma;
    if (!p.metered) continue;
    ++metered;
    const Band<double>& c = p.metered->coefficient;
    meter += 0.25 * (c.high - c.low) / c.value;
  }
  std::vector<draught::CommonError> out;
  const auto add = [&](std::string cause, double flow, double pressure) {
    if (flow == 0.0 && pressure == 0.0) return;
    out.push_back({.flow = flow, .pressure = pressure});
    shared.push_back({std::move(cause), 2.0 * std::abs(flow), 2.0 * std::abs(pressure)});
  };
  if (metered > 0)
    add(s.tube ? "mean speed in the tube, from that on its axis" : "discharge of the holes", meter / metered, 0.0);
  add("density of the room's air", -0.5 * s.density_sigma, -s.density_sigma);
  if (used > 0) add("speed of the fan, or its voltage", speed / used, 2.0 * speed / used);
  if (s.u_tube.incline > 1.0) {
    const double slope = 0.5 * data::laid_down_u_tube().slope;
    add("slope of the U-tube", s.tube ? 0.0 : 0.5 * slope, slope);
  }
  return out;
}
}  // namespace lumwright::fan_test

namespace lumwright::fan_test {
draught::ExpectedFan expected_fan(const description::FanReadings& readings) {
  if (!readings.fan.frame) throw ModelError("what to expect of the fan cannot be told without its `fan.frame`");
  const Setting s(readings);
  draught::FanLabel label{.kind = s.kind,
                          .frame = *s.frame,
                          .thickness = s.thickness,
                          .rated_voltage = s.voltage.value_or(12.0 * V),
                          .rated_current = {},
                          .rated_speed = {}};
  if (readings.fan.rated.current) label.rated_current = *readings.fan.rated.current;
  if (readings.fan.rated.speed) label.rated_speed = *readings.fan.rated.speed;
  const draught::FanCurve curve = draught::curve_from_label(label);
  return {.kind = s.kind,
          .frame = *s.frame,
          .thickness = s.thickness,
          .shut_off = curve.shut_off(),
          .free_air = curve.free_air()};
}
}  // namespace lumwright::fan_test
