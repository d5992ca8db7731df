#include "quantity/format.hpp"
#include "report/fan_test.hpp"
#include <cmath>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <stdexcept>

namespace lumwright {
namespace {
using Json = nlohmann::ordered_json;  // keys stay in the order they are written

double finite(double x) {
  if (!std::isfinite(x)) throw std::logic_error("a number that is not finite reached the fan test's JSON");
  return x;
}
Json object(AnyQuantity q) { return {{"value", finite(q.si)}, {"unit", si_symbol(q.kind)}}; }
template <class Q>
Json object(const std::optional<Q>& q) {
  return q ? object(AnyQuantity(*q)) : Json();
}
template <class Q>
Json object(const Band<Q>& band) {
  Json out = object(AnyQuantity(band.value));
  out["low"] = finite(AnyQuantity(band.low).si);
  out["high"] = finite(AnyQuantity(band.high).si);
  return out;
}
Json object(const CurveBandPoint& p) {
  return {{"flow", object(AnyQuantity(p.flow))},
          {"pressure", object(Band<Pressure>{p.pressure, p.low, p.high})},
          {"beyond_readings", p.beyond}};
}
Json object(const TestedPoint& p) {
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
Json object(const SharedError& e) {
  return {{"cause", e.cause}, {"flow", finite(e.flow)}, {"pressure", finite(e.pressure)}};
}
Json object(const FanTestWarning& w) { return {{"id", w.id}, {"text", w.text}, {"do", w.action}}; }
Json object(const Assumed& a) {
  return {{"key", a.key}, {"value", a.value},   {"band", a.band},
          {"why", a.why}, {"source", a.source}, {"standing", a.standing}};
}
template <class T>
Json list(const std::vector<T>& items) {
  Json out = Json::array();
  for (const T& item : items) out.push_back(object(item));
  return out;
}
}  // namespace

std::string fan_test_json(const FanTest& test) {
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
                         {"curve", list(test.curve)},
                         {"readings", list(test.points)},
                         {"shared_errors", list(test.shared)},
                         {"warnings", list(test.warnings)},
                         {"assumed", list(test.assumed)},
                         {"description", curve_lines(test)}}}};
  return report.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";  // bytes that are no UTF-8 become U+FFFD
}

std::string fan_test_csv(const FanTest& test) {
  std::string out = "what,number,flow_m3_per_s,pressure_Pa,low_Pa,high_Pa,note\n";
  std::size_t number = 0;
  for (const CurveBandPoint& p : test.fit.curve)
    out += fmt::format("curve,{},{},{},{},{},{}\n", ++number, in(p.flow, m3_per_s), in(p.pressure, Pa), in(p.low, Pa),
                       in(p.high, Pa), p.beyond ? "beyond the readings" : "");
  for (const TestedPoint& p : test.points) {
    if (!p.left_out.empty()) {
      out += fmt::format("reading,{},,,,,not used\n", p.number);
      continue;
    }
    const double pressure = in(p.point.pressure, Pa), spread = 2.0 * in(p.point.pressure_sigma, Pa);
    out += fmt::format("reading,{},{},{},{},{},\n", p.number, in(p.point.flow, m3_per_s), pressure, pressure - spread,
                       pressure + spread);
  }
  return out;
}
}  // namespace lumwright
