#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_raise.hpp"
#include "plan/detail/bleed.hpp"
#include "draught/orifice.hpp"
#include "numeric/root.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <functional>
#include <numbers>
#include <stdexcept>

namespace lumwright::plan {
namespace {
constexpr int root_bits = 18;         // to 1e-5
constexpr double slowest_fan = 0.35;  // of its speed: slower, a small fan may stall

const model::SolvedDraught& draught_with_fan(const model::Solved& solved) {
  if (!solved.draught || !solved.draught->hot || !solved.fan) throw std::logic_error("no solved draught with a fan");
  return *solved.draught;
}
double excess(const DraughtTrial& trial, const DraughtChange& change, Temperature hold) {
  return in(trial.alight(change).fan_gas - hold, K);
}
}  // namespace

DraughtChange unchanged(const model::Solved& solved) { return {draught_with_fan(solved).path, 1.0}; }

DraughtChange with_bleed(DraughtChange change, Area area) {
  require_not_negative("area of the bleed holes", area);
  change.path.bleed = std::nullopt;
  if (area > 0.0 * mm2) change.path.bleed = draught::Hole{area, draught::discharge_coefficient("sharp hole").value};
  return change;
}

Area bleed_area(const DraughtChange& change) { return change.path.bleed ? change.path.bleed->area : 0.0 * mm2; }

DraughtTrial::DraughtTrial(const model::Solved& solved) : solved_(solved) { draught_with_fan(solved); }

draught::PathFlow DraughtTrial::alight(const DraughtChange& change) const {
  const model::SolvedDraught& d = *solved_.draught;
  const draught::GasNetwork network(change.path, d.ambient);
  const boiler::FiredBoiler source(*d.fire, *d.boiler, {.lit = 1.0, .wanted_by_bed = 0.0 * W, .water = d.water});
  return draught::solve_duty(network, source, draught::running(solved_.fan->curve, change.fan_speed * d.fan_speed))
      .flow;
}

std::optional<Duration> DraughtTrial::to_own_blower(const DraughtChange& change) const {
  if (!solved_.raise || !solved_.raise->input.own_blower) return std::nullopt;
  boiler::RaiseInput input = solved_.raise->input;
  input.path = draught::GasNetwork(change.path, solved_.draught->ambient);
  input.working = std::nullopt;
  input.points_per_step = 1;
  std::get<boiler::FanDraught>(input.draught).fan = [curve = solved_.fan->curve,
                                                     share = change.fan_speed](Rotation speed) {
    return draught::running(curve, share * speed);
  };
  return boiler::raise(input).time_of(boiler::RaiseEventKind::own_blower);
}

Area most_bleed(const draught::GasPath& path) {
  if (path.box && path.box->wall) return 0.5 * std::numbers::pi * path.box->bore * path.box->wall->height;
  if (path.adapter) return 4.0 * circle(path.adapter->tube.bore);
  throw std::logic_error("a bleed without box or adapter");
}

std::optional<Area> bleed_to_hold(const DraughtTrial& trial, const DraughtChange& change, Temperature hold) {
  const auto too_hot = [&](double area) { return excess(trial, with_bleed(change, area * mm2), hold); };
  if (too_hot(0.0) <= 0.0) return 0.0 * mm2;
  // From the tube's own section upwards: holes that hold a fan are seldom far from it, and small brackets are quick.
  const double most = in(most_bleed(change.path), mm2);
  double low = 0.0, high = std::min(most, in(circle(change.path.adapter->tube.bore), mm2));
  while (too_hot(high) > 0.0) {
    if (high == most) return std::nullopt;
    low = high;
    high = std::min(most, 3.0 * high);
  }
  double area = numeric::bracketed_root(too_hot, low, high, "area of the bleed holes", root_bits);
  while (too_hot(area) > 0.01) area = std::min(high, area * (1.0 + 1e-5));
  return area * mm2;
}

Holes holes_for(Area area, std::optional<Length> drill) {
  require_above_zero("area of the bleed holes", area);
  const double each = std::max(2.0, std::ceil(std::sqrt(in(area, mm2) / (8.0 * 0.25 * std::numbers::pi))));
  const Length diameter = drill.value_or(each * mm);
  require_above_zero("diameter of a bleed hole", diameter);
  return {static_cast<int>(std::ceil(area / circle(diameter) * (1.0 - 1e-9))), diameter};
}

namespace {
struct Idea {
  std::string words;
  std::function<bool(DraughtChange&)> apply;  // false where there is nothing to change
};
bool fan_outside(const model::Solved& solved, DraughtChange& change) {
  const auto thickness = solved.fan->label.thickness;
  if (!solved.fan->inside || !change.path.box || !thickness) return false;
  change.path.box->depth.distance += *thickness;
  change.path.box->rise += *thickness;
  return true;
}
bool blacken(const model::Solved& solved, DraughtChange& change) {
  const model::Input* bright = solved.inputs.find("gas.tin_emissivity");
  if (!bright || !change.path.box || !change.path.box->wall) return false;
  change.path.box->wall->emissivity = std::max(bright->high, change.path.box->wall->emissivity);
  return true;
}
bool enlarge(DraughtChange& change) {
  if (!change.path.box || !change.path.box->wall) return false;
  draught::Box& box = *change.path.box;
  box.bore *= 1.5;
  box.depth.distance *= 1.5;
  box.rise *= 1.5;
  box.wall->height *= 1.5;
  box.wall->area *= 2.25;
  return true;
}
bool lengthen(DraughtChange& change) {
  if (!change.path.adapter || !change.path.adapter->wall) return false;
  draught::Adapter& adapter = *change.path.adapter;
  adapter.wall->length += adapter.tube.length;  // what is added stands in the open
  adapter.tube.length *= 2.0;
  adapter.rise *= 2.0;
  return true;
}
// The speed at which the holes that are there hold the gas: less flow leaves the tubes cooler, and cools more after.
std::optional<double> slower(const DraughtTrial& trial, const DraughtChange& change, Temperature hold) {
  const auto at = [&](double share) { return excess(trial, {change.path, share}, hold); };
  if (at(1.0) <= 0.0) return 1.0;
  if (at(slowest_fan) > 0.0) return std::nullopt;
  return numeric::bracketed_root(at, slowest_fan, 1.0, "speed of the fan", root_bits);
}
bool soon_enough(const model::Solved& solved, std::optional<Duration> time, std::optional<Duration> within) {
  const bool judged = within && solved.raise && solved.raise->raise.time_of(boiler::RaiseEventKind::own_blower);
  return !judged || (time && *time <= *within);
}
}  // namespace

std::optional<Remedy> other_remedy(const model::Solved& solved, const DraughtTrial& trial, Temperature hold,
                                   std::optional<Duration> within) {
  const std::vector<Idea> ideas = {
      {"mount the fan outside the box", [&](DraughtChange& c) { return fan_outside(solved, c); }},
      {"paint the box matt black", [&](DraughtChange& c) { return blacken(solved, c); }},
      {"make the box half as large again each way", [](DraughtChange& c) { return enlarge(c); }},
      {"make the adapter tube twice as long", [](DraughtChange& c) { return lengthen(c); }}};
  for (const Idea& idea : ideas) {
    DraughtChange change = unchanged(solved);
    if (!idea.apply(change)) continue;
    const auto area = bleed_to_hold(trial, change, hold);
    if (!area) continue;
    const Area holes = std::max(*area, bleed_area(change));
    const auto time = trial.to_own_blower(with_bleed(change, holes));
    if (soon_enough(solved, time, within)) return Remedy{idea.words, holes, time};
  }
  DraughtChange change = unchanged(solved);
  const auto share = slower(trial, change, hold);
  if (!share) return std::nullopt;
  change.fan_speed = *share;
  const auto time = trial.to_own_blower(change);
  if (!soon_enough(solved, time, within)) return std::nullopt;
  return Remedy{fmt::format("run the fan at {} of its speed", percent(*share, 2)), bleed_area(change), time};
}
}  // namespace lumwright::plan
