// Each result is the number that its key says: identities, on numbers set by hand that are all different.
#include "model/solved_light_ups.hpp"
#include "plan/results.hpp"
#include "draught/bed.hpp"
#include "limits.hpp"
#include "near.hpp"

using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::workshop;
using namespace lumwright::boiler;
using namespace lumwright::model;
using namespace lumwright::plan;

namespace {
double told(Bench& b, const std::string& key) {
  for (const Result& result : results_of(b.all()))
    if (result.key == key) return std::get<Measure>(result.value).quantity.si;
  throw std::runtime_error("no result " + key);
}
struct Told {
  const char* key;
  double si;
};
void check_all(Bench& b, const std::vector<Told>& expected) {
  for (const Told& one : expected) {
    CAPTURE(std::string(one.key));
    CHECK(told(b, one.key) == near(one.si, 1e-12));
  }
}
}  // namespace

TEST_CASE("results of the supply") {
  Bench b(example_text("tarn-beck"));
  SolvedSupply& s = b.supply();
  s.start.fan = 3.5 * W;
  s.start.fan_voltage = 11.5 * V;
  s.run.start.current = 1.25 * A;
  s.run.end.current = 2.75 * A;
  s.run.start.voltage = 8.25 * V;
  s.run.end.voltage = 6.5 * V;
  s.run.runtime = 1234.0 * unit::s;
  s.run.charge_left_share = 0.15;
  s.run.step_up_efficiency_start = 0.85;
  s.leads = 0.4 * ohm;
  model::SolvedLightUps& lived = b.all().light_ups.own();
  lived.count = 5;
  lived.first = 500.0 * unit::s;
  lived.last = 600.0 * unit::s;
  check_all(b, {{"power.fan", 3.5},
                {"power.fan_voltage", 11.5},
                {"power.pack_current_start", 1.25},
                {"power.pack_current_end", 2.75},
                {"power.pack_voltage_start", 8.25},
                {"power.pack_voltage_end", 6.5},
                {"power.runtime", 1234.0},
                {"power.charge_left_share", 0.15},
                {"power.step_up_efficiency_start", 0.85},
                {"power.light_ups_per_charge", 5.0},
                {"power.light_up_last", 600.0},
                {"power.lead_drop", 0.5}});
}

TEST_CASE("results of the fit") {
  Bench b(example_text("tarn-beck"));
  Fit& fit = b.fit().fit;
  fit.cold.value = 0.31 * mm;
  fit.lighting_up.clearance.value = 0.22 * mm;
  fit.both_hot.clearance.value = 0.13 * mm;
  fit.needed = 0.17 * mm;
  fit.uncertainty = 0.02 * mm;
  fit.leak_share.value = 0.045;
  check_all(b, {{"fit.clearance_cold", 0.31e-3},
                {"fit.clearance_hot", 0.22e-3},
                {"fit.clearance_both_hot", 0.13e-3},
                {"fit.clearance_needed", 0.19e-3},
                {"fit.leak_area_share", 0.045}});
}

TEST_CASE("results of draught and fire") {
  Bench b(example_text("tarn-beck"));
  SolvedDraught& d = b.draught();
  d.hot_flow.engine = 0.41 * g_per_s;
  d.cold_flow.engine = 0.92 * g_per_s;
  d.hot_flow.smokebox_suction = 31.0 * Pa;
  d.cold_flow.smokebox_suction = 42.0 * Pa;
  d.hot_flow.annulus = 0.013 * g_per_s;
  d.hot_flow.bleed = 0.024 * g_per_s;
  d.hot_flow.fan_gas = degC(61);
  d.hot_flow.smokebox_gas = degC(261);
  d.hot->free_air_share = 0.63;
  d.hot->static_pressure = 71.0 * Pa;
  d.cold->static_pressure = 82.0 * Pa;
  d.burning->fuel = 0.03 * g_per_s;
  d.burning->air_used = 0.75;
  check_all(b, {{"draught.air_flow", 0.41e-3},
                {"draught.cold_air_flow", 0.92e-3},
                {"draught.smokebox_depression", 31.0},
                {"draught.cold_smokebox_depression", 42.0},
                {"draught.tube_leak", 0.013e-3},
                {"draught.bleed", 0.024e-3},
                {"heat.fan_gas", 61.0 + 273.15},
                {"heat.chimney_gas", 261.0 + 273.15},
                {"draught.free_air_share", 0.63},
                {"draught.fan_static_pressure", 71.0},
                {"draught.cold_fan_static_pressure", 82.0},
                {"fire.fuel_rate", 0.03e-3},
                {"fire.air_used", 0.75}});
}

TEST_CASE("what a raise burns is told to own-blower pressure, or to its end where that is not reached") {
  Bench b(example_text("tarn-beck"));
  Raise& raise = b.raised().raise;
  raise.account.fuel = 9.0 * g;
  for (RaiseEvent& event : raise.events) {
    event.account.fuel = (event.kind == RaiseEventKind::own_blower ? 3.0 : 7.0) * g;
    event.at.time = (event.kind == RaiseEventKind::own_blower ? 400.0 : 500.0) * unit::s;
  }
  check_all(b, {{"raise.fuel_burnt", 3e-3}, {"raise.to_own_blower", 400.0}, {"raise.to_working", 500.0}});
  std::erase_if(raise.events, [](const RaiseEvent& event) { return event.kind == RaiseEventKind::own_blower; });
  check_all(b, {{"raise.fuel_burnt", 9e-3}});
}
