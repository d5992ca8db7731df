#include "boiler/raise.hpp"
#include "boiler/detail/raising.hpp"
#include "boiler/fill.hpp"
#include "matter/water.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include "quantity/sound.hpp"
#include <algorithm>
#include <limits>

namespace lumwright::boiler {
namespace {
constexpr double tolerance = 1e-5;
// In one step: keeps trial states near the solution, and the series fine enough.
constexpr TemperatureRise most_rise = 60.0 * K;
constexpr double first_step = 15.0;  // s

const RaiseInstant& sound_instant(const RaiseInstant& now) {
  const std::initializer_list<Operand> inputs = {{"time", now.time}, {"water", now.water}, {"share alight", now.lit}};
  sound(now.time, Sound::not_negative, "raise", "time", inputs);
  sound(now.water, Sound::positive, "boiler", "water temperature", inputs);
  sound(now.gauge, Sound::not_negative, "boiler", "gauge pressure", inputs);
  sound(now.air, Sound::finite, "raise", "air flow", inputs);
  sound(now.burning.chemical, Sound::not_negative, "fire", "heat set free", inputs);
  sound(now.heat.absorbed, Sound::finite, "boiler", "heat taken up", inputs);
  if (now.supply) {
    sound(now.supply->pack, Sound::not_negative, "pack", "voltage", inputs);
    sound(now.supply->current, Sound::not_negative, "pack", "current", inputs);
  }
  return now;
}
}  // namespace

Raising::Raising(const RaiseInput& input)
    : input_(input),
      solver_(input),
      steps_([this](const State& x, State& rate, double t) { rates(x, rate, t); }, tolerance, {water, charge}),
      phase_{.fully_lit = false, .smouldering = false, .venting = false},
      water_left_(input.boiler.water),
      boiling_(matter::saturation_temperature(input.ambient.pressure)),
      kindled_(in(input.fire.input().kindling.duration, s)),
      out_{.end = RaiseEnd::out_of_time, .supply_end = {}, .events = {}, .series = {}, .account = {}, .effort = {}} {
  check_input();
  set_goals();
  phase_.fully_lit = !(kindled_ > 0.0) || input.fire.input().kindling.lit_at_start == 1.0;
}

void Raising::check_input() const {
  check(input_.boiler);
  require_within("water temperature at the start", input_.water, {273.16, 573.0});
  require_above_zero("time after which to give up", input_.give_up);
  require_not_negative("steam let out to drive out the air", input_.purge);
  if (input_.boiler.water <= input_.purge)
    throw ModelError(
        "the water is boiled away before the air is driven out of the boiler: too little water for what it holds");
  if (input_.points_per_step < 1) throw ModelError("points for each step of the series are below 1");
  if (input_.ambient.temperature != input_.fire.input().air)
    throw ModelError("the fire's air is not as warm as that of the place");
}

void Raising::set_goals() {
  const auto goal = [&](const std::optional<GaugePressure>& gauge, RaiseEventKind kind) {
    if (!gauge) return;
    require_above_zero("gauge pressure to raise", gauge->above_barometer);
    goals_.push_back({matter::saturation_temperature(gauge->above_barometer + input_.ambient.pressure), kind, false});
  };
  goal(input_.own_blower, RaiseEventKind::own_blower);
  goal(input_.working, RaiseEventKind::working);
  if (goals_.empty()) throw ModelError("no pressure to raise is given");
  const Goal top =
      *std::max_element(goals_.begin(), goals_.end(), [](const Goal& a, const Goal& b) { return a.water < b.water; });
  require_within("water temperature at the highest pressure", top.water, {273.16, 530.0});
  if (!(input_.water < top.water))
    throw ModelError("water of " + format(input_.water, "degC") + " at the start is no colder than at the end, " +
                     format(top.water, "degC"));
  last_goal_ = top.kind;
  goals_.push_back({boiling_, RaiseEventKind::boils, false});
  if (input_.inside && input_.own_blower) {
    const double share = in(input_.boiler.water / matter::saturation(input_.water).water_density, *input_.inside);
    const Fill fill{.water_share = share, .cold = input_.water, .barometer = input_.ambient.pressure};
    goals_.push_back({false_reading(fill, *input_.own_blower), RaiseEventKind::false_own_blower, false});
  }
  for (Goal& g : goals_) g.passed = !(input_.water < g.water);
}

RaiseInstant Raising::instant(double t, const State& x, const Phase& phase) {
  const fire::Fire& fire = input_.fire;
  const double lit = phase.fully_lit ? 1.0 : fire::lit_share(fire.input().kindling, t * s);
  const Power kindling = phase.fully_lit ? 0.0 * W : fire.kindling_heat();
  const Power wanted = phase.smouldering ? std::numeric_limits<double>::max() * W : kindling;
  return solver_.solve({.time = t * s,
                        .condition = {.lit = lit, .wanted_by_bed = wanted, .water = water_of(x)},
                        .drawn = input_.battery ? x[charge] * input_.battery->pack.full : Charge(),
                        // kindling goes with the time, the rest with the water's temperature
                        .along = phase.fully_lit ? x[water] : lit});
}

void Raising::rates(const State& x, State& rate, double t) {
  newest_ = instant(t, x);
  const RaiseInstant& now = *newest_;
  const Power net = now.heat.absorbed - now.heat.outside;
  rate = {};
  if (phase_.venting) {
    const matter::Saturation boil = matter::saturation(boiling_);
    rate[steam] = in(net / (boil.steam_enthalpy - boil.water_energy), mass_scale / s);
  } else {
    rate[water] = in(net / (water_left_ * water_capacity(now.water) + input_.boiler.metal), water_scale / s);
  }
  if (now.supply) rate[charge] = in(now.supply->drain * s, input_.battery->pack.full);
  rate[fuel] = in(now.burning.fuel, mass_scale / s);
  const auto power = [](Power p) { return in(p, energy_scale / s); };
  rate[chemical] = power(now.burning.chemical);
  rate[monoxide] = power(now.burning.carbon_monoxide);
  rate[bed] = power(now.burning.bed);
  rate[absorbed] = power(now.heat.absorbed);
  rate[stack] = power(now.heat.stack);
  rate[astray] = power(now.heat.astray);
  rate[outside] = power(now.heat.outside);
}

double Raising::limit() const {
  const double end = in(input_.give_up, s);
  return phase_.fully_lit ? end : std::min(end, kindled_);
}

RaiseAccount Raising::account(const State& x) const {
  return {.fuel = x[fuel] * mass_scale,
          .chemical = x[chemical] * energy_scale,
          .carbon_monoxide = x[monoxide] * energy_scale,
          .bed = x[bed] * energy_scale,
          .absorbed = x[absorbed] * energy_scale,
          .stack = x[stack] * energy_scale,
          .astray = x[astray] * energy_scale,
          .outside = x[outside] * energy_scale,
          .steam = x[steam] * mass_scale};
}

void Raising::record_series(double until, const RaiseInstant& last, const Phase& phase) {
  const double from = steps_.from();
  for (int i = 1; i < input_.points_per_step; ++i) {
    const double t = from + (until - from) * i / input_.points_per_step;
    out_.series.push_back(sound_instant(instant(t, steps_.at(t), phase)));
  }
  out_.series.push_back(sound_instant(last));
}

void Raising::begin(double t, const State& x) {
  solver_.corner();
  steps_.start(t, x, t > 0.0 ? std::max(first_step, steps_.next_step()) : first_step);
  before_ = newest_;
}

Raise Raising::run() {
  State x{};
  x[water] = in(above_absolute_zero(input_.water), water_scale);
  if (input_.battery) x[charge] = in(input_.battery->pack.drawn, input_.battery->pack.full);
  begin(0.0, x);
  if (!phase_.fully_lit && before_->burning.chemical - before_->burning.carbon_monoxide < input_.fire.kindling_heat()) {
    phase_.smouldering = true;
    begin(0.0, x);
  }
  out_.series.push_back(sound_instant(*before_));
  while (!done_) {
    const double rise =
        std::abs(steps_.end_rates()[water]) * in(water_scale, most_rise);  // share of the most, a second
    if (rise > 0.0) steps_.limit_next(1.0 / rise);
    steps_.step(limit());
    const RaiseInstant end = *newest_;
    const Phase during = phase_;
    double until = steps_.to();
    RaiseInstant last = end;
    bool corner = false;
    for (const Crossing& crossing : crossings(end)) {
      const State there = steps_.at(crossing.time);
      last = crossing.time < steps_.to() ? instant(crossing.time, there) : end;
      until = crossing.time;
      if ((corner = pass(crossing, last))) break;
      until = steps_.to();
      last = end;
    }
    record_series(until, last, during);
    const State there = steps_.at(until);
    out_.account = account(there);
    if (!done_ && until >= in(input_.give_up, s)) done_ = true;
    if (done_) break;
    if (corner) begin(until, there);
    before_ = corner ? newest_ : std::optional(end);
  }
  out_.effort = {.rates = steps_.rates_called(),
                 .instants = solver_.solved(),
                 .paths_followed = solver_.paths_followed(),
                 .full_searches = solver_.full_searches(),
                 .steps = steps_.steps(),
                 .rejected = steps_.rejected()};
  return std::move(out_);
}

const RaiseEvent* Raise::find(RaiseEventKind kind) const {
  for (const RaiseEvent& event : events)
    if (event.kind == kind) return &event;
  return nullptr;
}

std::optional<Duration> Raise::time_of(RaiseEventKind kind) const {
  const RaiseEvent* event = find(kind);
  return event ? std::optional(event->at.time) : std::nullopt;
}

Raise raise(const RaiseInput& input) { return Raising(input).run(); }

MassFlow evaporation(const RaiseInstant& at) {
  const matter::Saturation now = matter::saturation(at.water);
  return (at.heat.absorbed - at.heat.outside) / (now.steam_enthalpy - now.water_enthalpy);
}
}  // namespace lumwright::boiler
