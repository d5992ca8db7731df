#include "data/limits.hpp"
#include "description/stock_name.hpp"
#include "draught/cooling.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_raise.hpp"
#include "plan/check.hpp"
#include "plan/detail/bleed.hpp"
#include "plan/detail/two_limits.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
TemperatureRise margin() {
  static const TemperatureRise kept = data::limit<TemperatureRise>("heat.fan_gas kept");
  return kept;
}

/// What the judging needs, worked out once.
struct Case {
  const model::Solved& solved;
  DraughtTrial trial;
  DraughtChange now;
  Temperature gas, limit;
  std::optional<Duration> time;    // to own-blower pressure, as described
  std::optional<Duration> within;  // that a remedy may take
};
Case look(const model::Solved& solved) {
  Case c{.solved = solved,
         .trial = DraughtTrial(solved),
         .now = unchanged(solved),
         .gas = solved.draught->hot_flow.fan_gas,
         .limit = solved.fan->gas_limit,
         .time = std::nullopt,
         .within = std::nullopt};
  if (!solved.raise) return c;
  c.time = solved.raise->raise.time_of(boiler::RaiseEventKind::own_blower);
  static const double patience = data::limit<double>("heat.bleed patience");
  if (c.time) c.within = std::max(solved.raise->within, patience * *c.time);
  return c;
}
std::string minutes(const Case& c, Duration time) { return roughly(c.solved, time); }
// "8 holes of 6 mm": as the owner wrote it, else in the units of the page
std::string in_holes(const Case& c, Area area) {
  const auto& each = c.solved.build.adapter.bleed.diameter;
  const Holes holes = holes_for(area, each ? std::optional(*each) : std::nullopt);
  const bool owners = each && c.solved.units == UnitSystem::as_written;
  const AnyQuantity size(holes.diameter);
  const bool inches = choose_unit(size, c.solved.page.of(size), c.solved.units) != "mm";
  return fmt::format("{} hole{} of {}", holes.count, holes.count == 1 ? "" : "s",
                     owners   ? description::as_its_owner(size, each.unit)
                     : inches ? say(c.solved, size)
                              : fmt::format("{:.1f} mm", in(holes.diameter, mm)));
}
// What the holes there are cost against none.
std::string cost_so_far(const Case& c) {
  if (!c.time || !(bleed_area(c.now) > 0.0 * mm2)) return "";
  const auto shut = c.trial.to_own_blower(with_bleed(c.now, 0.0 * mm2));
  return shut ? fmt::format("; the holes that are there cost {}", minutes(c, std::max(*c.time - *shut, 0.0 * s))) : "";
}
std::string instead(const Case& c) {
  const auto other = other_remedy(c.solved, c.trial, c.limit, c.within);
  if (!other)
    return "no single change of box, tube or speed does it: take a fan for hotter gas, or one that moves more";
  std::string text = other->words;
  if (other->bleed > bleed_area(c.now)) text += ", with " + in_holes(c, other->bleed);
  return text + fmt::format(": that holds {}", say(c.solved, c.limit)) +
         (other->time ? " and takes " + minutes(c, *other->time) : "");
}
// What to drill for a gas of `hold`; nothing if there is no room for it or it costs too much, and `why` then says so.
std::optional<std::string> drill(const Case& c, Temperature hold, std::string& why) {
  const auto area = bleed_to_hold(c.trial, c.now, hold);
  if (!area) {
    why += fmt::format("; no holes that the box has room for bring it to {}", say(c.solved, hold));
    return std::nullopt;
  }
  const Area wanted = std::max(*area, bleed_area(c.now));
  const auto then = c.trial.to_own_blower(with_bleed(c.now, wanted));
  const std::string holes = in_holes(c, wanted) + " in all", held = say(c.solved, hold);
  if (!c.time) return fmt::format("drill {}: that holds {}", holes, held);
  if (then && *then <= *c.within)
    return fmt::format("drill {}: that holds {} and costs {}", holes, held,
                       minutes(c, std::max(*then - *c.time, 0.0 * s)));
  why += fmt::format("; {} would hold {}, but steam would {}", holes, held,
                     then ? "take " + minutes(c, *then) : "never be raised");
  return std::nullopt;
}
// Some kelvin in hand if it can be had, else just enough, else something else.
std::string advice(const Case& c, std::string& why) {
  if (const auto ample = drill(c, c.limit - margin(), why)) return *ample;
  if (c.gas <= c.limit)
    return fmt::format("hold a thermometer in the gas beside the fan, and stop when it shows {}",
                       say(c.solved, c.limit));
  if (const auto enough = drill(c, c.limit, why)) return *enough;
  return instead(c);
}
// The gas decides; what is shown are the holes, where so many more or fewer are what puts it right.
void judge_holes(Finding& f, const Case& c, const std::optional<Area>& needed) {
  judge_by(f, measure(c.solved, c.gas), {Bound::at_most, AnyQuantity(c.limit - margin()), AnyQuantity(c.limit)});
  const auto ample = f.verdict == Verdict::fail ? needed : bleed_to_hold(c.trial, c.now, c.limit - margin());
  if (!needed || !ample) return;
  Finding holes = f;
  judge_by(holes, measure(c.solved, bleed_area(c.now)), {Bound::at_least, AnyQuantity(*ample), AnyQuantity(*needed)});
  if (holes.verdict == f.verdict) f = holes;
}
bool blows_out(const model::SolvedDraught& d) { return d.hot_flow.bleed < 0.0 * kg_per_s; }
// A fan too weak for the engine's own draught: the box stands above the room's pressure.
Finding blown_out(const model::Solved& solved, Finding f) {
  const draught::PathFlow& hot = solved.draught->hot_flow;
  judge_by(f, measure(solved, hot.box_suction), {Bound::at_least, AnyQuantity(0.0 * Pa), AnyQuantity(0.0 * Pa)});
  f.why = fmt::format(
      "hot gas of {} blows out of the bleed holes, {} of it with all its carbon monoxide: the fire drives more through "
      "the tube than this fan takes, and the holes do not cool it",
      say(solved, hot.adapter_exit_gas), say(solved, -hot.bleed));
  f.action = "close the bleed holes and take a fan that moves more";
  f.formula = "suction in the box >= 0";
  f.terms = {computed(solved, "p_box", "suction in the box", hot.box_suction),
             computed(solved, "m", "gas through the tube", hot.chimney),
             computed(solved, "m_b", "bleed air, below zero: gas that blows out", hot.bleed),
             computed(solved, "T_t", "gas at the end of the adapter tube", hot.adapter_exit_gas)};
  return f;
}
std::optional<Finding> judge_heat_bleed(const model::Solved& solved) {
  if (!solved.draught || !solved.draught->hot || !solved.fan) return std::nullopt;  // heat.fan_gas says why
  const model::SolvedDraught& d = *solved.draught;
  const Temperature room = d.ambient.temperature, limit = solved.fan->gas_limit;
  const bool hot = d.hot_flow.fan_gas > limit - margin();
  if (!hot && !d.path.bleed) return std::nullopt;
  Finding f;
  f.basis.source = "gas path, fire, fan and the whole raise solved again with other sharp-edged holes";
  f.basis.standing = data::Standing::estimate;
  f.formula = "gas at the fan (bleed area) = limit; bleed = C_d A sqrt(2 rho p_box)";
  if (blows_out(d)) return blown_out(solved, f);
  if (limit <= room + margin()) {
    f.verdict = Verdict::fail;
    f.why = fmt::format("air of {} cannot hold a fan at {}", say(solved, room), say(solved, limit));
    f.action = "wait for a cooler day, or take a fan for hotter gas";
    return f;
  }
  const Case c = look(solved);
  const auto needed = bleed_to_hold(c.trial, c.now, limit);
  judge_holes(f, c, needed);
  f.why = fmt::format("the box has {} of bleed holes and the gas reaches the fan at {}", say(solved, bleed_area(c.now)),
                      say(solved, c.gas));
  if (needed && *needed > 0.0 * mm2)
    f.why +=
        fmt::format("; {} ({}) would hold it at {}", say(solved, *needed), in_holes(c, *needed), say(solved, limit));
  if (needed && *needed == 0.0 * mm2) f.why += "; without any it would stay below " + say(solved, limit);
  f.why += cost_so_far(c);
  if (f.verdict != Verdict::pass) f.action = advice(c, f.why);
  f.terms = {computed(solved, "A", "bleed holes that are there", bleed_area(c.now)),
             computed(solved, "p_box", "suction in the box", d.hot_flow.box_suction),
             computed(solved, "m", "gas through the tube", d.hot_flow.chimney),
             computed(solved, "m_b", "bleed air", d.hot_flow.bleed),
             computed(solved, "T_t", "gas at the end of the adapter tube", d.hot_flow.adapter_exit_gas)};
  if (needed) f.terms.push_back(computed(solved, "A_0", "holes that hold the limit", *needed));
  if (c.time) f.terms.push_back(computed(solved, "t", "time to own-blower pressure", *c.time));
  return f;
}
bool holds(const model::Solved& solved) {
  if (!solved.draught || !solved.draught->hot || !solved.fan) return true;
  const model::SolvedDraught& d = *solved.draught;
  if (blows_out(d)) return false;
  const Temperature limit = solved.fan->gas_limit;
  const bool asked = d.path.bleed || d.hot_flow.fan_gas > limit - margin();
  return !asked || (limit > d.ambient.temperature + margin() && d.hot_flow.fan_gas <= limit);
}
}  // namespace

Check heat_bleed() {
  return {"heat.bleed", "Bleed holes", "How much cool air must join the gas, and what does that cost?",
          judge_heat_bleed, holds};
}
}  // namespace lumwright::plan
