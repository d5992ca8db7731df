#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include "tune/lighting_up.hpp"
#include "matter/water.hpp"
#include "power/fan_supply.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::tune {
namespace {
constexpr GaugePressure beyond_every_boiler{40.0 * bar};
constexpr int points_per_step = 8;

struct Columns {
  std::vector<double> time;
  std::array<std::vector<double>, observables> of;
};
std::size_t index(Observable o) { return static_cast<std::size_t>(o); }

// At the fan's leads, as a meter that shows the mean would.
Current fan_current_of(const boiler::RaiseInput& input, const boiler::SupplyPoint& point) {
  const power::SupplyState state = power::supply_state(input.battery->feed, point.pack);
  return state.fan / state.fan_voltage;
}
void add(Columns& columns, const boiler::RaiseInput& input, const boiler::RaiseInstant& at) {
  const auto put = [&](Observable o, double si) { columns.of[index(o)].push_back(si); };
  columns.time.push_back(in(at.time, s));
  put(Observable::water, QuantityTraits<Temperature>::to_si(at.water));
  put(Observable::fuel, in(at.burning.fuel, kg_per_s));  // the rate, for now
  if (at.path) put(Observable::smokebox, in(at.path->smokebox_suction, Pa));
  if (!at.supply) return;
  put(Observable::pack_voltage, in(at.supply->pack, V));
  put(Observable::fan_current, in(fan_current_of(input, *at.supply), A));
}
// From a rate to its sum: trapezia, the points lie close.
std::vector<double> summed(const std::vector<double>& time, const std::vector<double>& rate) {
  std::vector<double> sum(time.size(), 0.0);
  for (std::size_t i = 1; i < time.size(); ++i)
    sum[i] = sum[i - 1] + 0.5 * (rate[i] + rate[i - 1]) * (time[i] - time[i - 1]);
  return sum;
}
/// A lag of the first order behind straight pieces, exact on each: the reading follows the water by 1/lag of what it is
/// behind.
std::vector<double> lagged(const std::vector<double>& time, const std::vector<double>& water, double lag) {
  std::vector<double> probe{water.front()};
  for (std::size_t i = 1; i < time.size(); ++i) {
    const double dt = time[i] - time[i - 1], slope = (water[i] - water[i - 1]) / dt;
    const double behind = water[i - 1] - probe.back() - slope * lag;
    probe.push_back(water[i] - slope * lag - behind * std::exp(-dt / lag));
  }
  return probe;
}
template <class Given>
void take_over(Given& into, const Given& from) {
  if (from) into = from;
}
description::Build with_log(description::Build build, const description::Log& log) {
  take_over(build.fuel.kind, log.fuel.kind);
  take_over(build.fuel.started_on, log.fuel.started_on);
  take_over(build.fuel.lump, log.fuel.lump);
  take_over(build.fuel.bed, log.fuel.bed);
  take_over(build.fuel.bed_mass, log.fuel.bed_mass);
  take_over(build.supply.pack.charged, log.pack.charged);
  if (log.place.air) build.place.air = log.place.air;
  if (log.place.barometer) build.place.barometer = log.place.barometer;
  if (log.water) build.engine.boiler.water = log.water;
  return build;
}
// A reading at the very start tells the same as `started_at`.
std::optional<Temperature> start_of(const description::Log& log) {
  if (log.started_at) return *log.started_at;
  for (const description::part::Reading& reading : log.readings)
    if (*reading.time == 0.0 * s && reading.water) return *reading.water;
  return std::nullopt;
}
void refuse_made_heat(double factor, const boiler::Raise& run) {
  const auto most = boiler::most_heat_factor(run.series.back().heat);
  if (most && factor > *most)
    throw ModelError(fmt::format("the water would take {:.2f} times the heat that the model says (tuned.heat), and the "
                                 "fire gives no more than {:.2f} times with this air: energy is not made",
                                 factor, *most));
}
std::string listed(const std::vector<std::string>& keys) {
  std::string text;
  for (const std::string& key : keys) text += (text.empty() ? "" : ", ") + key;
  return text;
}
}  // namespace

std::string_view name(Observable observable) {
  constexpr std::string_view names[] = {"water temperature", "gauge pressure", "smokebox depression",
                                        "fan current",       "pack voltage",   "fuel burnt"};
  return names[index(observable)];
}

Prediction::Prediction(const boiler::RaiseInput& input, const boiler::Raise& raise, Duration probe_lag)
    : barometer_(input.ambient.pressure), end_(0.0 * s), pack_stops_(raise.end == boiler::RaiseEnd::pack_stopped) {
  Columns columns;
  for (const boiler::RaiseInstant& at : raise.series)
    if (columns.time.empty() || in(at.time, s) > columns.time.back()) add(columns, input, at);
  auto& fuel = columns.of[index(Observable::fuel)];
  fuel = summed(columns.time, fuel);
  auto& water = columns.of[index(Observable::water)];
  if (probe_lag > 0.0 * s) {
    boiler_.emplace(columns.time, water);
    water = lagged(columns.time, water, in(probe_lag, s));
  }
  for (std::size_t i = 0; i < observables; ++i)
    if (columns.of[i].size() == columns.time.size()) curves_[i].emplace(columns.time, columns.of[i]);
  end_ = columns.time.back() * s;
}
bool Prediction::tells(Observable observable) const {
  return curves_[index(observable == Observable::gauge ? Observable::water : observable)].has_value();
}
double Prediction::at(Observable observable, Duration time) const {
  const double t = in(time, s);
  if (observable != Observable::gauge) return (*curves_[index(observable)])(t);
  // beyond the end of the curve a search may ask for more than saturation tables hold
  const double water = std::clamp((boiler_ ? *boiler_ : *curves_[index(Observable::water)])(t), 273.16, 630.0);
  return in(matter::saturation_pressure(kelvin(water)) - barometer_, Pa);
}

LightingUp::LightingUp(description::Build build, const description::Log& log, Duration probe_lag)
    : build_(with_log(std::move(build), log)),
      base_(model::solve(build_)),
      until_(0.0 * s),
      probe_lag_(log.probe_lag ? *log.probe_lag : probe_lag),
      started_at_(start_of(log)) {
  if (!base_.raise && !base_.raise.missing.empty())
    throw ModelError("the description says too little to follow a lighting-up; it lacks " +
                     listed(base_.raise.missing));
  if (!base_.raise) throw ModelError(base_.raise.impossible);
  for (const description::part::Reading& reading : log.readings) until_ = std::max(until_, *reading.time);
  until_ = std::max(until_ * 1.001, 10.0 * s);
}

bool LightingUp::moves(const model::Tuning& factors, std::string_view key) const {
  const auto found = factors.values.find(key);
  const model::Input* input = base_.inputs.find(key);
  return found != factors.values.end() && input != nullptr && found->second.value.si != input->value.si;
}

boiler::RaiseInput LightingUp::input_with(const model::Tuning& factors) const {
  model::Inputs inputs({}, &factors);
  const auto fan = model::solve_fan(build_, inputs);
  const bool other_supply = moves(factors, "fan.rated.current");
  const auto supply = other_supply ? model::solve_supply(build_, inputs, fan) : base_.supply;
  const auto draught = model::solve_draught(build_, inputs, fan, supply);
  if (!draught) throw ModelError(draught.impossible);
  if (!supply && !supply.impossible.empty()) throw ModelError(supply.impossible);
  boiler::RaiseInput input = model::raise_input(build_, inputs, *draught, fan, supply);
  if (started_at_) input.water = *started_at_;
  input.own_blower.reset();
  input.inside.reset();
  return input;
}
Prediction LightingUp::predict(const model::Tuning& factors) const {
  boiler::RaiseInput input = input_with(factors);
  input.working = beyond_every_boiler;
  input.give_up = until_;
  input.points_per_step = points_per_step;
  const boiler::Raise run = boiler::raise(input);
  refuse_made_heat(input.boiler.heat_factor, run);
  return {input, run, probe_lag_};
}
std::optional<Duration> LightingUp::time_to(GaugePressure gauge, const model::Tuning& factors) const {
  boiler::RaiseInput input = input_with(factors);
  input.working = gauge;
  const boiler::Raise run = boiler::raise(input);
  refuse_made_heat(input.boiler.heat_factor, run);
  return run.time_of(boiler::RaiseEventKind::working);
}
}  // namespace lumwright::tune
