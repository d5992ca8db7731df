#include "report/detail/day_steps.hpp"
#include "data/kindling.hpp"
#include "data/limits.hpp"
#include "fire/burning_bed.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_raise.hpp"
#include "report/answers.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
using boiler::RaiseEventKind;

/// In the figures of the page; `digits` where the page has no such number.
std::string day_figure(const DayOf& day, AnyQuantity quantity, int digits = 2) {
  return in_page_figures(day.assessment, {quantity, ""}, day.style, digits);
}
/// "; eight times of ten 6.6 to 9.2 min", or nothing.
std::string eight_of_ten(const DayOf& day, std::string_view key) {
  const model::Result* result = plan::find_result(day.assessment, key);
  if (!result || !result->low || !result->high) return "";
  const std::string all = answer_text(*result, day.style);
  const auto open = all.find('(');
  return open == std::string::npos ? "" : "; eight times of ten " + all.substr(open + 1, all.size() - open - 2);
}
struct DayStep {
  Duration at;
  std::string when, what;
};
/// Half a bed each time that half of it is gone, from a bright fire on, until the fan comes off.
void add_top_ups(const DayOf& day, Duration until, std::vector<DayStep>& steps) {
  const model::SolvedRaise& r = *day.solved.raise;
  const Mass bed = r.input.fire.input().bed;
  const Duration every = fire::top_up_interval(bed, day.solved.draught->burning->fuel);
  static const double share = data::limit<double>("fire.top_up share");
  const Duration lit = r.raise.time_of(RaiseEventKind::fully_lit).value_or(0.0 * s);
  for (Duration at = lit + every; at < until; at += every)
    steps.push_back(
        {at, day_figure(day, at),
         fmt::format("put on {}, half a bed, a little at a time", day_figure(day, AnyQuantity(share * bed)))});
}
void add_day_events(const DayOf& day, std::vector<DayStep>& steps) {
  const boiler::Raise& raise = day.solved.raise->raise;
  const auto add = [&](RaiseEventKind kind, std::string what) {
    if (const auto at = raise.time_of(kind)) steps.push_back({*at, day_figure(day, *at), std::move(what)});
  };
  add(RaiseEventKind::fully_lit, "the whole fire glows");
  add(RaiseEventKind::boils, "it boils: let it blow off until a steady jet of steam comes, which drives the air out");
  add(RaiseEventKind::fan_too_hot, "the gas grows hotter than the fan stands: open the bleed, or stop the fan");
  add(RaiseEventKind::pack_stops, "the pack gives up");
  const auto gauge = [&](const GaugePressure& p) { return show({AnyQuantity(p), ""}, day.style); };
  if (const auto& own = day.solved.raise->input.own_blower)
    add(RaiseEventKind::own_blower,
        fmt::format("{}: open the engine's own blower, then stop the fan and lift it off with gloves{}", gauge(*own),
                    eight_of_ten(day, "raise.to_own_blower")));
  if (const auto& working = day.solved.raise->input.working)
    add(RaiseEventKind::working,
        fmt::format("working pressure, {}{}", gauge(*working), eight_of_ten(day, "raise.to_working")));
}
std::string grate_words(const DayOf& day) {
  const fire::FireInput& fire = day.solved.raise->input.fire.input();
  const auto& fuel = day.solved.build.fuel;
  const std::string kind = fuel.kind ? *fuel.kind : std::string("lump charcoal");
  const std::string on = fuel.started_on ? *fuel.started_on : data::kindling(kind).on;
  return fmt::format("{} of {} on the grate, {} deep; started on {}, {} of it alight when the fan is put on",
                     day_figure(day, fire.bed, 3), kind, show({AnyQuantity(fire.depth.bed), ""}, day.style), on,
                     percent(fire.kindling.lit_at_start, 2));
}
}  // namespace

std::string weather_of(const DayOf& day) {
  if (!day.solved.draught) return "";
  const draught::Ambient& air = day.solved.draught->ambient;
  return fmt::format("for air of {} and a barometer of {}", show({AnyQuantity(air.temperature), ""}, day.style),
                     show({AnyQuantity(air.pressure), ""}, day.style, 4));
}

DaySection before_the_match(const DayOf& day) {
  DaySection section{"Before the match", {}};
  if (!day.solved.raise) {
    section.rows.push_back({"minutes", why_unknown(day.solved.raise)});
    return section;
  }
  const model::SolvedRaise& r = *day.solved.raise;
  const auto& water = day.solved.build.engine.boiler.water;
  const std::string amount =
      water ? show({AnyQuantity(water.band->value), water.unit}, day.style) : day_figure(day, r.input.boiler.water, 3);
  section.rows.push_back({"water", fmt::format("{}, {} of the boiler; see it in the glass before anything is lit",
                                               amount, percent(r.fill.water_share, 2))});
  section.rows.push_back({"fuel", grate_words(day)});
  if (const boiler::RaiseEvent* over = r.raise.find(RaiseEventKind::own_blower))
    section.rows.push_back({"at hand", fmt::format("{} is burnt until the fan comes off; have as much again beside you",
                                                   day_figure(day, over->account.fuel, 3))});
  return section;
}

DaySection by_the_clock(const DayOf& day) {
  DaySection section{"From the match", {}};
  if (!day.solved.raise || !day.solved.draught) return section;
  std::vector<DayStep> steps{{0.0 * s, "0", "fan on, and only then a light to the fire"}};
  add_day_events(day, steps);
  const boiler::Raise& raise = day.solved.raise->raise;
  const auto over = raise.time_of(RaiseEventKind::own_blower);
  add_top_ups(day, over ? *over : raise.series.back().time, steps);
  std::stable_sort(steps.begin(), steps.end(), [](const DayStep& x, const DayStep& y) { return x.at < y.at; });
  for (DayStep& step : steps) section.rows.push_back({std::move(step.when), std::move(step.what)});
  if (!over && day.solved.raise->input.own_blower)
    section.rows.push_back({"", "it does not come to the pressure of its own blower; the checks say why"});
  return section;
}
}  // namespace lumwright::report
