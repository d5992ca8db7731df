#include "report/tables.hpp"
#include "report/csv.hpp"
#include "report/judged.hpp"
#include <cmath>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright {
namespace {
std::string number(double x) {
  if (!std::isfinite(x)) throw std::logic_error("a number that is not finite reached a table");
  return fmt::format("{:.6g}", x);
}
std::string si(const std::optional<Measure>& m) { return m ? number(m->quantity.si) : ""; }
std::string unit(const std::optional<Measure>& m) { return m ? si_symbol(m->quantity.kind) : ""; }

std::string check_line(const Finding& f) {
  return csv_line({f.id, f.title, verdict_word(f.verdict), si(f.value), unit(f.value),
                   f.limit ? bound_words(f.bound) : "", si(f.limit), unit(f.limit),
                   f.limit ? limit_words(f.limit_name) : "", f.holds ? number(*f.holds) : "", f.why, f.action,
                   f.basis.source, std::string(data::word_of(f.basis.standing)),
                   fmt::format("{}", fmt::join(f.missing, " "))});
}
void add_points(std::string& out, const char* curve, const char* state, const std::vector<FlowPoint>& points) {
  for (const FlowPoint& p : points)
    out += csv_line({curve, state, number(in(p.flow, m3_per_s)), number(in(p.pressure, Pa))});
}
}  // namespace

std::string checks_csv(const Assessment& a) {
  std::string out = csv_line({"id", "title", "verdict", "value", "value_unit", "bound", "limit", "limit_unit",
                              "limit_name", "holds", "why", "do", "source", "standing", "missing"});
  for (const Finding* f : gravest_first(a)) out += check_line(*f);
  for (const auto& alike : open_questions(a))
    for (const Finding* f : alike) out += check_line(*f);
  return out;
}
std::string assumed_csv(const Assessment& a) {
  std::string out = csv_line({"key", "value", "band", "why", "source", "standing"});
  for (const Assumed& one : a.assumed)
    out += csv_line(
        {one.key, one.value, one.band, one.why, one.basis.source, std::string(data::word_of(one.basis.standing))});
  return out;
}
std::string light_ups_csv(const RepeatedLightUps& all) {
  std::string out = csv_line({"light_up", "from_s", "to_s", "voltage_from_V", "voltage_to_V", "current_from_A",
                              "current_to_A", "charge_left"});
  int n = 0;
  for (const LightUp& one : all.first)
    out +=
        csv_line({std::to_string(++n), number(in(one.from, s)), number(in(one.to, s)),
                  number(in(one.begins.voltage, V)), number(in(one.ends.voltage, V)), number(in(one.begins.current, A)),
                  number(in(one.ends.current, A)), number(one.ends.charge_share)});
  return out;
}
std::string draught_csv(const DraughtCurves& c) {
  std::string out = csv_line({"curve", "state", "flow_m3_per_s", "pressure_Pa"});
  add_points(out, "fan", "hot", c.hot.fan);
  add_points(out, "path", "hot", c.hot.path);
  add_points(out, "meet", "hot", {c.hot.at});
  add_points(out, "fan", "cold", c.cold.fan);
  add_points(out, "path", "cold", c.cold.path);
  add_points(out, "meet", "cold", {c.cold.at});
  return out;
}
}  // namespace lumwright
