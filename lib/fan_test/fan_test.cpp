#include "fan_test/fan_test.hpp"
#include "data/fan_test.hpp"
#include "description/part_writer.hpp"
#include "fan_test/detail/parts.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::fan_test {
namespace {
constexpr double worked = 0.5;  // of free air: no lighting-up fan is worked beyond
constexpr int every = 4;        // points of the fit between two points of a description

std::optional<Current> current_of(const Setting& s) {
  if (s.file.fan.rated.current) return *s.file.fan.rated.current;
  Current sum = 0.0 * A;
  int count = 0;
  for (const auto& r : s.file.readings) {
    if (!r.current || (r.voltage && std::abs(*r.voltage / *s.voltage - 1.0) > 0.05)) continue;
    sum += *r.current;
    ++count;
  }
  if (count == 0) return std::nullopt;
  return sum / static_cast<double>(count);
}
/// Evenly spaced, and where the curve turns.
std::vector<draught::CurveBandPoint> points_of(const draught::FanFit& fit) {
  std::vector<draught::CurveBandPoint> out;
  for (std::size_t i = 0; i < fit.curve.size(); ++i) {
    const bool turns =
        i > 0 && i + 1 < fit.curve.size() &&
        (fit.curve[i].pressure > fit.curve[i - 1].pressure) != (fit.curve[i + 1].pressure > fit.curve[i].pressure);
    if (i % every == 0 || turns) out.push_back(fit.curve[i]);
  }
  return out;
}
double worst_share(const draught::FanFit& fit) {
  double worst = 0.0;
  for (const draught::CurveBandPoint& p : fit.curve)
    if (p.flow <= worked * fit.free_air.value && p.pressure > 0.0 * Pa)
      worst = std::max<double>(worst, std::max(p.high - p.pressure, p.pressure - p.low) / p.pressure);
  return worst;
}
[[noreturn]] void refuse(const FanTest& test, const std::string& why) {
  for (const TestedPoint& p : test.points)
    if (!p.left_out.empty())
      throw ModelError(fmt::format("{} (reading {}, {}, is not used: {})", why, p.number, p.setting, p.left_out));
  throw ModelError(why);
}
}  // namespace

FanTest fan_test(const description::FanReadings& readings) {
  const Setting s(readings);
  FanTest test{.name = readings.name ? *readings.name : readings.file,
               .kind = s.kind,
               .kind_given = static_cast<bool>(readings.fan.kind),
               .thickness = readings.fan.thickness ? std::optional(*readings.fan.thickness) : std::nullopt,
               .frame = s.frame,
               .voltage = s.voltage,
               .speed = s.speed,
               .current = {},
               .speed_basis = s.speed_basis,
               .points = {},
               .fit = {},
               .curve = {},
               .pressure_within = 0.0,
               .shared = {},
               .warnings = {},
               .assumed = s.inputs.assumed()};
  if (s.voltage) test.current = current_of(s);
  draught::TestedFan fan{.kind = s.kind, .thickness = s.thickness, .points = {}, .common = {}};
  for (std::size_t i = 0; i < readings.readings.size(); ++i) {
    test.points.push_back(tested_point(s, readings.readings[i], i + 1));
    if (test.points.back().left_out.empty()) fan.points.push_back(test.points.back().point);
  }
  refuse_slipped_speeds(s, test.points);
  refuse_rising(s, test.points);
  fan.common = common_errors(s, test.points, test.shared);
  try {
    test.fit = draught::fit_fan_curve(fan);
  } catch (const ModelError& e) {
    refuse(test, e.what());
  }
  refuse_unfinite(s, test);
  test.curve = points_of(test.fit);
  test.pressure_within = worst_share(test.fit);
  refuse_unwritable(s, test);
  test.warnings = warnings(s, test, fan);
  return test;
}

double within_told(const FanTest& test) { return std::clamp(std::ceil(100.0 * test.pressure_within), 1.0, 90.0) / 100.0; }
std::string curve_lines(const FanTest& test) {
  const auto flow = [](VolumeFlow q) { return format(q, "l/min"); };
  const auto pressure = [](Pressure p) { return format(p, "Pa"); };
  std::string points, bands;
  for (const draught::CurveBandPoint& p : test.curve) {
    points += fmt::format("{}[{}, {}]", points.empty() ? "" : ", ", flow(p.flow), pressure(p.pressure));
    bands += fmt::format("  #   {:>12}  {} to {}{}\n", flow(p.flow), p.low < 0.0 * Pa ? "below 0" : pressure(p.low),
                         pressure(p.high), p.beyond ? ", beyond the readings" : "");
  }
  std::string rated;
  const auto add = [&rated](const char* key, const std::string& value) {
    rated += fmt::format("{}{}: {}", rated.empty() ? "" : ", ", key, value);
  };
  if (test.voltage) add("voltage", format(*test.voltage, "V"));
  if (test.current) add("current", format(*test.current, "A"));
  if (test.speed) add("speed", format(*test.speed, "rpm", 4));
  std::string out = "# From a shop-made fan test; static pressure at 1.2 kg/m3.\nfan:\n";
  out += fmt::format("  {}kind: {}{}\n", test.kind_given ? "" : "# ", data::name(test.kind),
                     test.kind_given ? "" : "   # was not given: write what it is");
  if (test.frame) out += fmt::format("  frame: {}\n", format(*test.frame, "mm"));
  if (test.thickness) out += fmt::format("  thickness: {}\n", format(*test.thickness, "mm"));
  if (!rated.empty()) out += fmt::format("  rated: {{ {} }}\n", rated);
  out += fmt::format("  curve: [ {} ]\n  curve_from: bench\n  curve_within: {:.0f} %\n", points,
                     100.0 * within_told(test));
  out += "  # The band holds the whole curve with 95 %:\n" + bands;
  out += fmt::format(
      "# Below half of free air the pressure is within {}. In a tuned file beside the description:\n"
      "#   tuned: {{ fan_pressure: 1 +- {:.2f} }}\n",
      percent(within_told(test), 2), within_told(test));
  return out;
}
}  // namespace lumwright::fan_test
