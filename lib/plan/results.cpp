#include "plan/results.hpp"
#include "draught/bed.hpp"
#include "fire/combustion.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_fit.hpp"
#include "model/solved_light_ups.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/quiet.hpp"
#include "plan/u_tube.hpp"
#include "quantity/sound.hpp"
#include <cmath>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright::plan {
namespace {
class List {
 public:
  explicit List(const model::Solved& solved) : solved_(solved) {}
  void add(std::string key, AnyQuantity quantity) { put(std::move(key), measure(solved_, quantity)); }
  void add_share(std::string key, double share) { put(std::move(key), model::Measure{AnyQuantity(share), "%"}); }
  void put(std::string key, model::Measure measure) {
    if (!std::isfinite(measure.quantity.si)) refuse(key, measure.quantity);
    found.push_back({std::move(key), std::move(measure), {}, {}});
  }
  void add_text(std::string key, std::string text) { found.push_back({std::move(key), std::move(text), {}, {}}); }
  std::vector<model::Result> found;

 private:
  /// Names everything that went into the solve: our mistake must be found from what its user sees.
  [[noreturn]] void refuse(const std::string& key, AnyQuantity quantity) const {
    std::string inputs;
    for (const auto& [name, input] : solved_.inputs.all())
      inputs += fmt::format("{}{} {:.6g} {}", inputs.empty() ? " from " : ", ", name, input.value.si,
                            si_symbol(input.value.kind));
    throw UnsoundNumber(fmt::format("{} came to {} {}{}", key, quantity.si, si_symbol(quantity.kind), inputs));
  }
  const model::Solved& solved_;
};

void add_draught(const model::Solved& solved, List& list) {
  if (!solved.draught) return;
  const model::SolvedDraught& d = *solved.draught;
  list.add("draught.air_flow", d.hot_flow.engine);
  list.add("draught.cold_air_flow", d.cold_flow.engine);
  if (d.hot) {
    list.add("draught.fan_flow", d.hot_flow.fan_volume);
    list.add("draught.fan_static_pressure", d.hot->static_pressure);
    list.add_share("draught.free_air_share", d.hot->free_air_share);
    list.add("draught.cold_fan_static_pressure", d.cold->static_pressure);
    list.add("draught.fan_speed", d.fan_speed);
  }
  list.put("draught.smokebox_depression", on_u_tube(d.hot_flow.smokebox_suction, solved.page));
  list.put("draught.cold_smokebox_depression", on_u_tube(d.cold_flow.smokebox_suction, solved.page));
  for (const draught::ElementLoss& loss : draught::losses(d.path, d.hot_flow))
    list.add("draught.loss." + std::string(loss.name), loss.loss);
  list.add("draught.natural", d.hot_flow.natural_draught);
  if (d.fan_off) {
    list.add("draught.fan_off_air_flow", d.fan_off->engine);
    list.add("draught.fan_off_smokebox_depression", d.fan_off->smokebox_suction);
  }
  list.add("draught.tube_leak", d.hot_flow.annulus);
  list.add("draught.bleed", d.hot_flow.bleed);
}
/// As it is without an engine: at rated voltage, 1.2 kg/m3.
void add_fan(const model::Solved& solved, List& list) {
  if (!solved.fan) return;
  list.add("fan.shut_off_pressure", solved.fan->curve.shut_off());
  list.add("fan.free_air_flow", solved.fan->curve.free_air());
  if (const auto level = sound_of(solved)) list.add("fan.sound", *level);
}
void add_fire(const model::Solved& solved, List& list) {
  if (!solved.draught) return;
  const model::SolvedDraught& d = *solved.draught;
  if (d.hot || solved.fan) list.add("heat.fan_gas", d.hot_flow.fan_gas);
  list.add("heat.chimney_gas", d.hot_flow.smokebox_gas);
  list.add("fire.power", d.burning->chemical);
  list.add_share("fire.air_used", d.burning->air_used);
  list.add("fire.fuel_rate", d.burning->fuel);
  if (d.path.bed && d.fuel_piece)
    list.add_share("fire.bed_lift_share", d.hot_flow.loss[static_cast<std::size_t>(draught::Element::bed)] /
                                              draught::bed_lifting_pressure(*d.path.bed, *d.fuel_piece));
}
void add_raise(const model::Solved& solved, List& list) {
  if (!solved.raise) return;
  const boiler::Raise& raise = solved.raise->raise;
  if (const auto t = raise.time_of(boiler::RaiseEventKind::own_blower)) list.add("raise.to_own_blower", *t);
  if (const auto t = raise.time_of(boiler::RaiseEventKind::working)) list.add("raise.to_working", *t);
  const boiler::RaiseEvent* taken_over = raise.find(boiler::RaiseEventKind::own_blower);
  const boiler::RaiseAccount& account = taken_over ? taken_over->account : raise.account;
  list.add("raise.fuel_burnt", account.fuel);
  list.add("raise.carbon_monoxide", Mass(account.carbon_monoxide / fire::carbon_monoxide_heat()));
  list.add("raise.heat_absorbed", account.absorbed);
  list.add_share("raise.efficiency", account.efficiency());
}
void add_power(const model::Solved& solved, List& list) {
  if (!solved.supply) return;
  const model::SolvedSupply& s = *solved.supply;
  list.add("power.fan", s.start.fan);
  list.add("power.fan_voltage", s.start.fan_voltage);
  list.add("power.pack_current_start", s.run.start.current);
  list.add("power.pack_current_end", s.run.end.current);
  list.add("power.pack_voltage_start", s.run.start.voltage);
  list.add("power.pack_voltage_end", s.run.end.voltage);
  if (s.run.step_up_efficiency_start) list.add_share("power.step_up_efficiency_start", *s.run.step_up_efficiency_start);
  list.add("power.runtime", s.run.runtime);
  list.add("power.light_ups_per_charge", static_cast<double>(solved.light_ups->count));
  if (solved.light_ups->count > 0) list.add("power.light_up_last", solved.light_ups->last);
  list.add_share("power.charge_left_share", s.run.charge_left_share);
  list.add_text("power.stop_reason", power::name(s.run.reason));
  const description::part::LeadsPart& leads = solved.build.supply.leads;
  if (leads.section || leads.length) list.add("power.lead_drop", s.run.start.current * s.leads);
}
void add_fit(const model::Solved& solved, List& list) {
  if (!solved.fit) return;
  const workshop::Fit& fit = solved.fit->fit;
  list.add("fit.clearance_cold", fit.cold.value);
  list.add("fit.clearance_hot", fit.lighting_up.clearance.value);
  list.add("fit.clearance_both_hot", fit.both_hot.clearance.value);
  list.add("fit.clearance_needed", fit.needed + fit.uncertainty);
  list.add_share("fit.leak_area_share", fit.leak_share.value);
}
}  // namespace

std::vector<model::Result> results_of(const model::Solved& solved) {
  List list(solved);
  add_draught(solved, list);
  add_fan(solved, list);
  add_raise(solved, list);
  add_fire(solved, list);
  add_power(solved, list);
  add_fit(solved, list);
  return std::move(list.found);
}

namespace {
Series raise_series(const boiler::Raise& raise) {
  Series series{"raise",
                {{"t", kind_of<Duration>, {}},
                 {"water_temperature", kind_of<Temperature>, {}},
                 {"gauge_pressure", kind_of<Pressure>, {}},
                 {"air_flow", kind_of<MassFlow>, {}},
                 {"fan_gas_temperature", kind_of<Temperature>, {}},
                 {"pack_voltage", kind_of<Voltage>, {}},
                 {"pack_current", kind_of<Current>, {}}}};
  for (const boiler::RaiseInstant& at : raise.series) {
    auto column = series.columns.begin();
    const auto add = [&](AnyQuantity quantity) { (column++)->si.push_back(quantity.si); };
    const auto skip = [&] { ++column; };
    add(at.time);
    add(at.water);
    add(at.gauge.above_barometer);
    add(at.air);
    at.path ? add(at.path->fan_gas) : skip();
    at.supply ? add(at.supply->pack) : skip();
    at.supply ? add(at.supply->current) : skip();
  }
  return series;
}
Series discharge_series(const power::Run& run) {
  Series series{
      "discharge",
      {{"t", kind_of<Duration>, {}}, {"pack_voltage", kind_of<Voltage>, {}}, {"pack_current", kind_of<Current>, {}}}};
  for (const power::Sample& sample : run.series) {
    series.columns[0].si.push_back(in(sample.time, s));
    series.columns[1].si.push_back(in(sample.voltage, V));
    series.columns[2].si.push_back(in(sample.current, A));
  }
  return series;
}
}  // namespace

std::vector<Series> series_of(const model::Solved& solved) {
  std::vector<Series> found;
  if (solved.raise) found.push_back(raise_series(solved.raise->raise));
  if (solved.supply) found.push_back(discharge_series(solved.supply->run));
  return found;
}

std::vector<Event> events_of(const model::Solved& solved) {
  std::vector<Event> found;
  if (solved.raise)
    for (const boiler::RaiseEvent& event : solved.raise->raise.events) found.push_back({event.kind, event.at.time});
  return found;
}
}  // namespace lumwright::plan
