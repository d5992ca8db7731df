#include "report/detail/tables.hpp"
#include "report/detail/csv.hpp"
#include "report/detail/csv_unit.hpp"
#include "report/judged.hpp"
#include <fmt/format.h>

namespace lumwright::report {
namespace {
std::string check_line(const plan::Finding& f, UnitSystem units) {
  const auto number = [&](const std::optional<model::Measure>& m) {
    return m ? CsvUnit(m->quantity, units)(m->quantity) : "";
  };
  const auto unit = [&](const std::optional<model::Measure>& m) {
    if (!m) return std::string();
    const CsvUnit in(m->quantity, units);
    return in.symbol().empty() ? si_symbol(m->quantity.kind) : in.symbol();
  };
  return csv_line({f.id, f.title, plan::verdict_word(f.verdict), number(f.value), unit(f.value),
                   f.limit ? bound_words(f.bound) : "", number(f.limit), unit(f.limit),
                   f.limit ? plan::limit_words(f.limit_name) : "", f.holds ? csv_number(*f.holds) : "", f.why,
                   action_of(f, description::FrontEnd::terminal), f.basis.source,
                   std::string(data::word_of(f.basis.standing)), fmt::format("{}", fmt::join(f.missing, " "))});
}
/// The largest of a column.
template <class Q>
Q larger(Q most, Q one) {
  return one > most ? one : most;
}
}  // namespace

std::string checks_csv(const plan::Assessment& a, UnitSystem units) {
  std::string out = csv_line({"id", "title", "verdict", "value", "value_unit", "bound", "limit", "limit_unit",
                              "limit_name", "holds", "why", "do", "source", "standing", "missing"});
  for (const plan::Finding* f : gravest_first(a)) out += check_line(*f, units);
  for (const auto& alike : open_questions(a))
    for (const plan::Finding* f : alike) out += check_line(*f, units);
  return out;
}
std::string assumed_csv(const plan::Assessment& a) {
  std::string out = csv_line({"key", "value", "band", "why", "source", "standing"});
  for (const model::Assumed& one : a.assumed)
    out += csv_line(
        {one.key, one.value, one.band, one.why, one.basis.source, std::string(data::word_of(one.basis.standing))});
  return out;
}
std::string light_ups_csv(const plan::RepeatedLightUps& all, UnitSystem units) {
  Duration longest{};
  Voltage most_volts{};
  Current most_amps{};
  for (const plan::LightUp& one : all.first) {
    longest = larger(longest, one.to);
    most_volts = larger(most_volts, one.begins.voltage);
    most_amps = larger(most_amps, larger(one.begins.current, one.ends.current));
  }
  const CsvUnit time(longest, units), volts(most_volts, units), amps(most_amps, units);
  std::string out =
      csv_line({"light_up", time.head("from"), time.head("to"), volts.head("voltage_from"), volts.head("voltage_to"),
                amps.head("current_from"), amps.head("current_to"), "charge_left"});
  int n = 0;
  for (const plan::LightUp& one : all.first)
    out +=
        csv_line({std::to_string(++n), time(one.from), time(one.to), volts(one.begins.voltage), volts(one.ends.voltage),
                  amps(one.begins.current), amps(one.ends.current), csv_number(one.ends.charge_share)});
  return out;
}
std::string draught_csv(const plan::DraughtCurves& c, UnitSystem units) {
  struct Curve {
    const char *name, *state;
    std::vector<plan::FlowPoint> points;
  };
  const Curve curves[] = {{"fan", "hot", c.hot.fan},   {"path", "hot", c.hot.path},   {"meet", "hot", {c.hot.at}},
                          {"fan", "cold", c.cold.fan}, {"path", "cold", c.cold.path}, {"meet", "cold", {c.cold.at}}};
  VolumeFlow most_flow{};
  Pressure most_pressure{};
  for (const Curve& curve : curves)
    for (const plan::FlowPoint& p : curve.points) {
      most_flow = larger(most_flow, p.flow);
      most_pressure = larger(most_pressure, p.pressure);
    }
  const CsvUnit flow(most_flow, units), pressure(most_pressure, units);
  std::string out = csv_line({"curve", "state", flow.head("flow"), pressure.head("pressure")});
  for (const Curve& curve : curves)
    for (const plan::FlowPoint& p : curve.points)
      out += csv_line({curve.name, curve.state, flow(p.flow), pressure(p.pressure)});
  return out;
}
}  // namespace lumwright::report
