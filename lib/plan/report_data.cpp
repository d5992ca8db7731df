#include "plan/report_data.hpp"
#include "matter/water.hpp"
#include "plan/curve_bands.hpp"
#include <algorithm>

namespace lumwright {
namespace {
constexpr std::size_t most_light_ups = 60;

/// What became of a part of the model, told of something that is made from it.
template <class To, class From, class F>
Outcome<To> made_from(const Outcome<From>& part, F&& make) {
  Outcome<To> made;
  made.missing = part.missing;
  made.impossible = part.impossible;
  if (!part) return made;
  try {
    made.value = make(*part);
  } catch (const ModelError& e) {
    made.impossible = e.what();
  }
  return made;
}
RaiseMarks marks(const Build& build, const SolvedRaise& raise) {
  return {.own_blower = raise.input.own_blower,
          .working = raise.input.working,
          .fan_gas_limit = raise.input.fan_gas_limit,
          .wanted = raise.within,
          .wish_written = static_cast<bool>(build.want.steam_within)};
}
}  // namespace

RepeatedLightUps repeated_light_ups(const SolvedSupply& s, const SolvedLightUps& lived) {
  RepeatedLightUps out{.each = lived.first,
                       .last = lived.last,
                       .whole = lived.count,
                       .ends = lived.ends,
                       .first = {},
                       .series = s.run.series,
                       .reason = s.run.reason,
                       .stop_at = s.stop_at,
                       .least_input = std::nullopt};
  if (s.feed.step_up && s.feed.step_up->input_min > 0.0 * V) out.least_input = s.feed.step_up->input_min;
  Sample begins = s.run.start;
  Duration from;
  for (const Duration& ending : lived.ends) {
    if (out.first.size() == most_light_ups) break;
    const Duration to = std::min(ending, s.run.runtime);
    const Sample ends = to < s.run.runtime ? state_after(s.pack, s.feed, s.stop_at, to) : s.run.end;
    out.first.push_back({.from = from, .to = to, .begins = begins, .ends = ends});
    begins = ends;
    from = to;
  }
  return out;
}

HeatBalance heat_balance(const SolvedRaise& solved) {
  const Raise& raise = solved.raise;
  const RaiseEvent* reached = raise.find(RaiseEventKind::own_blower);
  if (reached == nullptr && !solved.input.own_blower) reached = raise.find(RaiseEventKind::working);
  const RaiseAccount& account = reached != nullptr ? reached->account : raise.account;
  const RaiseInstant& last = reached != nullptr ? reached->at : raise.series.back();
  const Energy held = account.absorbed - account.outside;
  const Energy water = solved.input.boiler.water * heat_to(solved.input.water, last.water);
  const Energy metal = solved.input.boiler.metal * (last.water - solved.input.water);
  const Energy steam = account.steam > 0.0 * g ? std::max(held - water - metal, 0.0 * J) : 0.0 * J;
  const bool warmed = water + metal > 0.0 * J;
  const double fitted = warmed ? in(held - steam, water + metal) : 1.0;  // to the last joule
  return {.until = last.time,
          .reached = reached != nullptr,
          .fuel = account.fuel,
          .chemical = account.chemical,
          .parts = {{"water", fitted * water},
                    {"metal", fitted * metal},
                    {"steam", steam},
                    {"outside", account.outside},
                    {"chimney", account.stack},
                    {"unburnt", account.carbon_monoxide},
                    {"bed", account.bed},
                    {"astray", account.astray}}};
}

ReportData report_data(const Build& build, const ReportAsked& asked) {
  return report_data(solved_to_judge(build, asked.units, asked.tuning, asked.samples), asked.tuning, asked.samples);
}

ReportData report_data(const Solved& solved, const Tuning* tuning, const SamplesAsked& samples) {
  ReportData data{
      .assessment = judged(solved, tuning, samples),
      .units = solved.page,
      .draught = made_from<DraughtCurves>(solved.draught,
                                          [&](const SolvedDraught& d) { return draught_curves(d, solved.fan); }),
      .raise = made_from<RaiseMarks>(solved.raise, [&](const SolvedRaise& r) { return marks(solved.build, r); }),
      .heat = made_from<HeatBalance>(solved.raise, heat_balance),
      .supply = made_from<RepeatedLightUps>(
          solved.supply, [&](const SolvedSupply& s) { return repeated_light_ups(s, *solved.light_ups); }),
      .fit = solved.fit,
      .unit = solved.unit,
      .build = solved.build};
  if (data.draught) add_curve_bands(*data.draught.value, solved.build, tuning, samples);
  return data;
}
}  // namespace lumwright
