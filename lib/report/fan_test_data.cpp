#include "quantity/format.hpp"
#include "report/detail/csv_unit.hpp"
#include "report/detail/json_parts.hpp"
#include "report/fan_test.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report {
static Json object(const draught::CurveBandPoint& p) {
  return {{"flow", object(AnyQuantity(p.flow))},
          {"pressure", object(Band<Pressure>{p.pressure, p.low, p.high})},
          {"beyond_readings", p.beyond}};
}
static Json object(const fan_test::TestedPoint& p) {
  Json out = {{"number", p.number}, {"setting", p.setting}, {"depression", object(AnyQuantity(p.depression))}};
  out["left_out"] = p.left_out.empty() ? Json() : Json(p.left_out);
  out["remarks"] = p.remarks;
  if (!p.left_out.empty()) return out;
  out["flow"] = object(AnyQuantity(p.point.flow));
  out["pressure"] = object(AnyQuantity(p.point.pressure));
  out["pressure"]["standard_deviation"] = finite(in(p.point.pressure_sigma, Pa));
  out["speed_ratio"] = finite(p.speed_ratio);
  if (p.metered) {
    out["reynolds"] = finite(p.metered->reynolds);
    out["coefficient"] = object(p.metered->coefficient);
  }
  return out;
}
static Json object(const fan_test::SharedError& e) {
  return {{"cause", e.cause}, {"flow", finite(e.flow)}, {"pressure", finite(e.pressure)}};
}
static Json object(const fan_test::FanTestWarning& w) { return {{"id", w.id}, {"text", w.text}, {"do", w.action}}; }

std::string fan_test_json(const fan_test::FanTest& test) {
  const Json report = {{"format", "lumwright/1"},
                       {"fan_test",
                        {{"name", test.name},
                         {"kind", std::string(data::name(test.kind))},
                         {"frame", object(test.frame)},
                         {"voltage", object(test.voltage)},
                         {"speed", object(test.speed)},
                         {"current", object(test.current)},
                         {"speed_basis", test.speed_basis},
                         {"shut_off", object(test.fit.shut_off)},
                         {"shut_off_read", test.fit.shut_off_read},
                         {"free_air", object(test.fit.free_air)},
                         {"free_air_near", test.fit.free_air_near},
                         {"pressure_within", finite(test.pressure_within)},
                         {"cover", finite(test.fit.cover)},
                         {"widened", finite(test.fit.widened)},
                         {"curve", list(test.curve, object)},
                         {"readings", list(test.points, object)},
                         {"shared_errors", list(test.shared, object)},
                         {"warnings", list(test.warnings, object)},
                         {"assumed", list(test.assumed, object)},
                         {"description", fan_test::curve_lines(test)}}}};
  return text_of(report);
}

std::string fan_test_csv(const fan_test::FanTest& test, UnitSystem units) {
  VolumeFlow most_flow{};
  Pressure most_pressure{};
  for (const draught::CurveBandPoint& p : test.fit.curve) {
    most_flow = std::max(most_flow, p.flow);
    most_pressure = std::max(most_pressure, p.pressure);
  }
  const CsvUnit flow(most_flow, units), pressure(most_pressure, units);
  std::string out = fmt::format("what,number,{},{},{},{},note\n", flow.head("flow"), pressure.head("pressure"),
                                pressure.head("low"), pressure.head("high"));
  std::size_t number = 0;
  for (const draught::CurveBandPoint& p : test.fit.curve)
    out += fmt::format("curve,{},{},{},{},{},{}\n", ++number, flow(p.flow), pressure(p.pressure), pressure(p.low),
                       pressure(p.high), p.beyond ? "beyond the readings" : "");
  for (const fan_test::TestedPoint& p : test.points) {
    if (!p.left_out.empty()) {
      out += fmt::format("reading,{},,,,,not used\n", p.number);
      continue;
    }
    const Pressure spread = 2.0 * p.point.pressure_sigma;
    out += fmt::format("reading,{},{},{},{},{},\n", p.number, flow(p.point.flow), pressure(p.point.pressure),
                       pressure(p.point.pressure - spread), pressure(p.point.pressure + spread));
  }
  return out;
}
}  // namespace lumwright::report
