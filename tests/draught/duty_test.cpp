#include "draught/duty.hpp"
#include "draught/mass_balance.hpp"
#include "draught/openings.hpp"
#include "draught/orifice.hpp"
#include "matter/air.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include "random_path.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <numbers>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::draught;

namespace {
FanPoint at(double litres_per_second, double pascal) {
  return {.flow = litres_per_second * litre_per_s, .pressure = pascal * Pa};
}
RunningFan fan_through(const std::vector<FanPoint>& points, data::FanKind kind = data::FanKind::axial) {
  return running({kind, 5000.0 * rpm, points, test_basis()}, 5000.0 * rpm);
}
/// One tube of 13.5 mm and no length, so that only constant loss factors act: a square inlet 0.5, the free exit 1, and
/// the rest to `k` as fittings.
GasPath constant_loss(double k) {
  GasPath path;
  path.adapter = Adapter{
      .tube = {.bore = 13.5 * mm, .length = 1e-18 * m, .roughness = 0.0 * mm},
      .inlet = {.kind = Inlet::square, .bore = 13.5 * mm, .wall = 0.0 * mm, .projection = 0.0 * mm, .radius = 0.0 * mm},
      .fittings = k - 1.5,
      .rise = 0.0 * mm,
      .wall = std::nullopt};
  return path;
}
/// Room air of exactly 1.2 kg/m3: T = p / (1.2 R).
const Ambient standard_room{.temperature = kelvin(101325.0 / (287.05 * 1.2)), .pressure = atmosphere};
FixedTemperatures fire_of(double bed, double exit) {
  return FixedTemperatures({.bed_mean = degC(bed),
                            .firebox = degC(exit),
                            .tube_mean = degC(exit),
                            .tube_exit = degC(exit),
                            .fuel_per_air = 0.0});
}
Duty solve(const GasPath& path, const TemperatureSource& source, const RunningFan& fan) {
  return solve_duty(GasNetwork(path, room), source, fan);
}
bool all_finite(const Duty& d) {
  const PathFlow& f = d.flow;
  for (const MassFlow& m :
       {f.bed, f.past_bed, f.engine, f.fuel, f.tubes, f.smokebox_leak, f.annulus, f.chimney, f.bleed, f.fan})
    if (!is_finite(m)) return false;
  for (const Pressure& p : {f.ash_pan_suction, f.firebox_suction, f.smokebox_suction, f.box_suction, f.fan_suction,
                            f.natural_draught, d.static_pressure})
    if (!is_finite(p)) return false;
  for (const Pressure& p : f.loss)
    if (!is_finite(p)) return false;
  for (const Temperature& t :
       {f.bed_gas, f.firebox_gas, f.tube_exit_gas, f.smokebox_gas, f.adapter_exit_gas, f.fan_gas})
    if (!is_finite(t)) return false;
  return is_finite(f.fan_volume) && is_finite(f.fan_density) && std::isfinite(d.free_air_share);
}
}  // namespace

TEST_CASE("closed form: a straight fan curve against one constant loss factor") {
  // hand: A = pi/4 0.0135^2 = 1.431388e-4 m2; a = K rho / (2 A^2) = 5.856881e7; b = 40/0.01109 = 3606.853;
  // Q = (-b + sqrt(b^2 + 160 a)) / 2a = 0.796194 L/s; m = 0.955433 g/s; p = 37.1282 Pa
  const GasNetwork network(constant_loss(2.0), standard_room);
  const Duty d = solve_duty(network, unlit(standard_room), fan_through({at(0, 40), at(11.09, 0)}));
  CHECK(d.flow.fan_volume == near(0.796194 * litre_per_s, 1e-5));
  CHECK(d.flow.fan == near(0.955433 * g_per_s, 1e-5));
  CHECK(d.static_pressure == near(37.1282 * Pa, 1e-5));
  CHECK(d.free_air_share == near(0.796194 / 11.09, 1e-5));
  CHECK(d.crossings.size() == 1);
  CHECK_FALSE(d.several);
}

TEST_CASE("closed form: a burning bed, hot gas at the fan, and a straight fan curve") {
  // Ergun, 1952: p = alpha m + beta m^2 with alpha = 150 mu (1-e)^2 L / (e^3 d^2 rho A),
  // beta = 1.75 (1-e) L / (e^3 d rho A^2); the fan holds (rho_f / 1.2) (p0 - p0 m / (rho_f Q0)). hand: a quadratic in
  // m.
  const double e = 0.45, d = 0.7 * 6e-3, depth = 0.03, area = 2e-3, p0 = 60.0, q0 = 6e-3;
  GasPath path;
  path.bed = Bed{.particle = 6.0 * mm, .sphericity = 0.7, .voidage = e, .depth = depth * m, .grate = area * m2};
  const Temperature bed = degC(800.0), exit = degC(200.0);
  const double rho = in(air_density(bed, atmosphere), kg_per_m3), mu = in(air_viscosity(bed), Pa_s);
  const double rho_fan = in(air_density(exit, atmosphere), kg_per_m3);
  const double alpha = 150.0 * mu * (1 - e) * (1 - e) * depth / (e * e * e * d * d * rho * area);
  const double beta = 1.75 * (1 - e) * depth / (e * e * e * d * rho * area * area);
  const double draught = 9.80665 * depth * (in(air_density(room.temperature, atmosphere), kg_per_m3) - rho);
  const double slope = alpha + p0 / (1.2 * q0), shut = p0 * rho_fan / 1.2 + draught;
  const double flow = (-slope + std::sqrt(slope * slope + 4.0 * beta * shut)) / (2.0 * beta);

  const Duty duty = solve(path, fire_of(800.0, 200.0), fan_through({at(0, p0), at(6, 0)}));
  CHECK(duty.flow.bed == near(flow * kg_per_s, 1e-10));
  CHECK(duty.flow.fan_volume == near(flow / rho_fan * m3_per_s, 1e-10));
}

TEST_CASE("closed form: a bleed hole beside a constant loss, both roots of the suction") {
  // hand: m = (A1 / sqrt K + Cd A2) sqrt(2 rho p) and p = p0 (1 - m / (rho Q0)), a quadratic in sqrt p
  const double rho = 1.2, p0 = 60.0, q0 = 6e-3, a1 = std::numbers::pi / 4 * 0.0135 * 0.0135, a2 = 78.5e-6;
  const double c = (a1 / std::sqrt(2.0) + 0.61 * a2) * std::sqrt(2.0 * rho), b = p0 * c / (rho * q0);
  const double root_p = 0.5 * (-b + std::sqrt(b * b + 4.0 * p0));
  GasPath path = constant_loss(2.0);
  path.bleed = Hole{.area = a2 * m2, .discharge = 0.61};
  const Duty duty =
      solve_duty(GasNetwork(path, standard_room), unlit(standard_room), fan_through({at(0, p0), at(6, 0)}));
  CHECK(duty.flow.box_suction == near(root_p * root_p * Pa, 1e-8));
  CHECK(duty.flow.bleed == near(0.61 * a2 * std::sqrt(2.0 * rho) * root_p * kg_per_s, 1e-8));
  CHECK(duty.flow.fan == near(c * root_p * kg_per_s, 1e-8));
}

TEST_CASE("fan and path balance to rounding, and every node closes, over 200 paths") {
  Dice dice(2);
  int solved = 0;
  for (int i = 0; i < 200; ++i) {
    CAPTURE(i);
    GasPath path = random_path(dice, i % 2 == 0);
    if (i % 3 == 0) path = with_walls(path);
    const FixedTemperatures fire = i % 4 == 0 ? unlit(room) : random_fire(dice);
    const RunningFan fan = random_fan(dice);
    const Duty d = solve(path, fire, fan);
    ++solved;
    CHECK(d.flow.fan_suction == near(d.static_pressure, 1e-9));
    CHECK(d.static_pressure ==
          near(fan.static_pressure(d.flow.fan_volume) * (d.flow.fan_density / standard_fan_air), 1e-12));
    for (const NodeBalance& node : mass_balance(d.flow)) CHECK(std::abs(node.residual / d.flow.fan) < 1e-9);
    CHECK(d.free_air_share > 0.0);
    CHECK(d.free_air_share < 1.0);
    CHECK(d.crossings.size() % 2 == 1);
    CHECK(d.crossings.back().stable);
    CHECK(d.crossings.back().bed == d.flow.bed);
    CHECK(all_finite(d));
  }
  CHECK(solved == 200);
}

TEST_CASE("a wider tube never passes less and a longer or deeper way never more") {
  Dice dice(3);
  for (int i = 0; i < 80; ++i) {
    CAPTURE(i);
    const GasPath path = random_path(dice, i % 2 == 0);
    const FixedTemperatures fire = i % 4 == 0 ? unlit(room) : random_fire(dice);
    const RunningFan fan = random_fan(dice);
    const MassFlow base = solve(path, fire, fan).flow.engine;
    const auto changed = [&](auto change) {
      GasPath other = path;
      change(other);
      return solve(other, fire, fan).flow.engine;
    };
    CHECK(changed([](GasPath& p) { p.adapter->tube.bore *= 1.1; }) >= base * (1.0 - 1e-12));
    CHECK(changed([](GasPath& p) { p.tubes->each.bore *= 1.1; }) >= base * (1.0 - 1e-12));
    CHECK(changed([](GasPath& p) { p.tubes->count += 1; }) >= base * (1.0 - 1e-12));
    CHECK(changed([](GasPath& p) { p.tubes->each.length *= 1.2; }) <= base * (1.0 + 1e-12));
    CHECK(changed([](GasPath& p) { p.adapter->tube.length *= 1.2; }) <= base * (1.0 + 1e-12));
    CHECK(changed([](GasPath& p) { p.adapter->fittings += 0.5; }) <= base * (1.0 + 1e-12));
    // Coarser fuel burns more of the air, so that fuel takes the place of leaked air: look at what the tubes pass.
    GasPath coarse = path;
    coarse.bed->particle *= 1.1;
    CHECK(solve(coarse, fire, fan).flow.tubes >= solve(path, fire, fan).flow.tubes * (1.0 - 1e-12));
    // A deeper bed also draws a little more by itself, and makes more suction for a leak behind it: look at the bed's
    // air, cold.
    GasPath deep = path;
    deep.bed->depth *= 1.2;
    CHECK(solve(deep, unlit(room), fan).flow.bed <= solve(path, unlit(room), fan).flow.bed * (1.0 + 1e-12));
  }
}

TEST_CASE("a wider bore has a diminishing return, because the boiler then holds the flow back") {
  Dice dice(8);
  GasPath path = random_path(dice, true);
  path.bleed = std::nullopt;
  const RunningFan fan = fan_through({at(0, 60), at(2, 48), at(4, 36), at(10, 0)});
  std::vector<double> flows;
  for (const double bore : {8.0, 12.0, 16.0, 20.0, 24.0}) {
    path.adapter->tube.bore = bore * mm;
    path.box->bore = 80.0 * mm;
    flows.push_back(in(solve(path, fire_of(800.0, 250.0), fan).flow.engine, kg_per_s));
  }
  for (std::size_t i = 1; i < flows.size(); ++i) CHECK(flows[i] > flows[i - 1]);
  for (std::size_t i = 2; i < flows.size(); ++i) CHECK(flows[i] - flows[i - 1] < flows[i - 1] - flows[i - 2]);
}

TEST_CASE("the hot fire passes less mass than the cold test with the same openings") {
  Dice dice(4);
  int compared = 0;
  for (int i = 0; i < 60; ++i) {
    CAPTURE(i);
    const GasPath path = random_path(dice, true);
    const RunningFan fan = random_fan(dice);
    const GasNetwork network(path, room);
    const Duty hot = solve_duty(network, random_fire(dice), fan);
    if (!(hot.flow.firebox_suction > 0.0 * Pa)) continue;
    const Duty cold = solve(with_openings(path, openings(network, hot.flow)), unlit(room), fan);
    CHECK(hot.flow.bed < cold.flow.bed);
    CHECK(hot.flow.engine < cold.flow.engine);
    ++compared;
  }
  CHECK(compared > 30);
}

TEST_CASE("the hot duty does not change when its shares are turned into openings") {
  Dice dice(9);
  for (int i = 0; i < 40; ++i) {
    CAPTURE(i);
    const GasPath path = random_path(dice, true);
    const FixedTemperatures fire = random_fire(dice);
    const RunningFan fan = random_fan(dice);
    const GasNetwork network(path, room);
    const Duty hot = solve_duty(network, fire, fan);
    if (!(hot.flow.firebox_suction > 0.0 * Pa)) continue;
    const Duty again = solve(with_openings(path, openings(network, hot.flow)), fire, fan);
    bool found = false;  // among several crossings the rightmost may be another one
    for (const Crossing& c : again.crossings) found = found || c.bed == near(hot.flow.bed, 1e-9);
    CHECK(found);
  }
}

TEST_CASE("a stall dip below the system line gives three crossings, and the rightmost is taken") {
  // hand: p = a Q^2 with a = 2.25 Pa/(L/s)^2: 9 Pa at 2 L/s where the fan holds 8, 36 Pa at 4 L/s where it holds 40.
  const Length bore = 40.0 * mm;
  const double area = in(circle(bore), m2), a = 2.25e6;  // Pa s2/m6
  GasPath path = constant_loss(a * 2.0 * area * area / 1.2);
  path.adapter->tube.bore = bore;
  const RunningFan fan = fan_through({at(0, 60), at(2, 8), at(4, 40), at(6, 20), at(8, 0)});
  const GasNetwork network(path, standard_room);
  const Duty d = solve_duty(network, unlit(standard_room), fan);
  REQUIRE(d.crossings.size() == 3);
  CHECK(d.several);
  for (const Crossing& c : d.crossings) {
    const double q = in(c.fan_volume, m3_per_s);
    CHECK(c.static_pressure == near(a * q * q * Pa, 1e-9));
    CHECK(fan.static_pressure(c.fan_volume) == near(a * q * q * Pa, 1e-9));
  }
  CHECK(d.crossings[0].stable);
  CHECK_FALSE(d.crossings[1].stable);
  CHECK(d.crossings[2].stable);
  CHECK(d.crossings[0].fan_volume < 2.0 * litre_per_s);
  CHECK(d.crossings[1].fan_volume > 2.0 * litre_per_s);
  CHECK(d.crossings[2].fan_volume > 4.0 * litre_per_s);
  CHECK(d.flow.fan_volume == d.crossings[2].fan_volume);
}

TEST_CASE("the stall zone of an axial fan is told, a blower has none") {
  // Eck, Fans (1973), from memory: the knee lies at 0.3 to 0.6 of the free-air flow.
  const GasNetwork network(constant_loss(2.0), standard_room);
  const auto zone = [&](double free_air, data::FanKind kind) {
    return solve_duty(network, unlit(standard_room), fan_through({at(0, 40), at(free_air, 0)}, kind)).stall;
  };
  CHECK(zone(11.09, data::FanKind::axial) == StallZone::stalled);  // 7 % of free air
  CHECK(zone(1.5, data::FanKind::axial) == StallZone::unsteady);
  CHECK(zone(0.3, data::FanKind::axial) == StallZone::clear);
  CHECK(zone(11.09, data::FanKind::centrifugal) == StallZone::clear);
}

TEST_CASE("near shut-off two fans in series help, two in parallel hardly do") {
  // Common practice for duties at a few per cent of free air; with p ~ Q^2 series approaches a factor of sqrt 2.
  const RunningFan one = fan_through({at(0, 40), at(11.09, 0)});
  RunningFan series = one, parallel = one;
  series.static_pressure = [one](VolumeFlow q) { return 2.0 * one.static_pressure(q); };
  series.highest = 2.0 * one.highest;
  parallel.static_pressure = [one](VolumeFlow q) { return one.static_pressure(0.5 * q); };
  parallel.free_air = 2.0 * one.free_air;
  const GasNetwork network(constant_loss(2.0), standard_room);
  const auto flow = [&](const RunningFan& fan) { return solve_duty(network, unlit(standard_room), fan).flow.fan; };
  const double in_series = flow(series) / flow(one), in_parallel = flow(parallel) / flow(one);
  CHECK(in_series > 1.35);
  CHECK(in_series < std::numbers::sqrt2);
  CHECK(in_parallel > 1.0);
  CHECK(in_parallel < 1.03);
}

TEST_CASE("a faster fan passes more") {
  Dice dice(10);
  const GasPath path = random_path(dice, true);
  const FanCurve curve(data::FanKind::axial, 5000.0 * rpm, {at(0, 60), at(2, 45), at(5, 25), at(8, 0)}, test_basis());
  MassFlow before = 0.0 * g_per_s;
  for (const double n : {50.0, 500.0, 2000.0, 4000.0, 6000.0}) {
    const MassFlow now = solve(path, unlit(room), running(curve, n * rpm)).flow.engine;
    CHECK(now > before);
    before = now;
  }
}

TEST_CASE("what cannot balance is refused with a sentence") {
  const RunningFan fan = fan_through({at(0, 40), at(11.09, 0)});
  GasPath down = constant_loss(2.0);
  down.adapter->rise = -20.0 * m;
  CHECK_THROWS_WITH_AS(solve(down, fire_of(800.0, 400.0), fan),
                       doctest::Contains("no flow: with the gas at rest the fan is"), ModelError);
  RunningFan endless = fan;
  endless.static_pressure = [](VolumeFlow) { return 10.0 * Pa; };
  CHECK_THROWS_WITH_AS(solve({}, unlit(room), endless), "the gas path holds back no flow that this fan can move",
                       ModelError);
  RunningFan broken = fan;
  broken.static_pressure = [](VolumeFlow) { return std::nan("") * Pa; };
  CHECK_THROWS_AS(solve(constant_loss(2.0), unlit(room), broken), ModelError);
  RunningFan still = fan;
  still.free_air = 0.0 * m3_per_s;
  CHECK_THROWS_AS(solve(constant_loss(2.0), unlit(room), still), ModelError);
  still = fan;
  still.highest = 0.0 * Pa;
  CHECK_THROWS_AS(solve(constant_loss(2.0), unlit(room), still), ModelError);
}

TEST_CASE("far out of reason a path is solved or refused, and never answers with NaN") {
  Dice dice(12);
  int solved = 0, refused = 0;
  for (int i = 0; i < 1500; ++i) {
    CAPTURE(i);
    GasPath path = random_path(dice, dice.chance(0.5));
    const auto wild = [&] { return dice.decade(1e-4, 1e4); };
    path.bed->particle *= wild();
    path.bed->depth *= wild();
    path.bed->voidage = dice.between(0.01, 0.99);
    path.bed->grate *= wild();
    path.tubes->each.bore *= wild();
    path.tubes->each.length *= wild();
    path.tubes->each.roughness = 0.01 * path.tubes->each.bore;
    path.tubes->firebox =
        dice.decade(1.01, 1e4) * static_cast<double>(path.tubes->count) * circle(path.tubes->each.bore);
    path.adapter->tube.bore *= wild();
    path.adapter->tube.roughness = 0.0 * mm;
    path.adapter->tube.length *= wild();
    path.adapter->rise *= dice.between(-30.0, 30.0);
    path.box->bore = dice.decade(1.0, 1e4) * path.adapter->tube.bore;
    if (path.bleed) path.bleed->area *= wild();
    if (path.annulus) path.annulus->radial_gap *= dice.decade(1e-2, 1e2);
    if (dice.chance(0.3)) path.past_bed = LeakShare{dice.between(0.0, 0.9999)};
    RunningFan fan = random_fan(dice);
    if (dice.chance(0.3))
      fan = running({data::FanKind::axial, 1.0 * rpm, {at(0, wild()), at(wild(), 0)}, test_basis()}, 1.0 * rpm);
    try {
      const Duty d = solve(path, dice.chance(0.3) ? unlit(room) : random_fire(dice), fan);
      CHECK(all_finite(d));
      for (const NodeBalance& node : mass_balance(d.flow)) CHECK(std::abs(node.residual / d.flow.fan) < 1e-9);
      ++solved;
    } catch (const ModelError& e) {
      CHECK(std::string(e.what()).size() > 10);
      ++refused;
    }
  }
  CHECK(solved > 300);
  CHECK(refused > 50);
}
