#include "model/solved_light_ups.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include "plan/report_data.hpp"
#include "matter/water.hpp"
#include "plan/detail/curve_bands.hpp"
#include <algorithm>

namespace lumwright::plan {
namespace {
constexpr std::size_t most_light_ups = 60;

/// What became of a part of the model, told of something that is made from it.
template <class To, class From, class F>
model::Outcome<To> made_from(const model::Outcome<From>& part, F&& make) {
  model::Outcome<To> made;
  made.missing = part.missing;
  made.impossible = part.impossible;
  if (!part) return made;
  try {
    made.value = model::Part<To>::holding(make(*part));
  } catch (const ModelError& e) {
    made.impossible = e.what();
  }
  return made;
}
RaiseMarks marks(const description::Build& build, const model::SolvedRaise& raise) {
  return {.own_blower = raise.input.own_blower,
          .working = raise.input.working,
          .fan_gas_limit = raise.input.fan_gas_limit,
          .wanted = raise.within,
          .wish_written = static_cast<bool>(build.want.steam_within)};
}
}  // namespace

RepeatedLightUps repeated_light_ups(const model::SolvedSupply& s, const model::SolvedLightUps& lived) {
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
  power::Sample begins = s.run.start;
  Duration from;
  for (const Duration& ending : lived.ends) {
    if (out.first.size() == most_light_ups) break;
    const Duration to = std::min(ending, s.run.runtime);
    const power::Sample ends = to < s.run.runtime ? power::state_after(s.pack, s.feed, s.stop_at, to) : s.run.end;
    out.first.push_back({.from = from, .to = to, .begins = begins, .ends = ends});
    begins = ends;
    from = to;
  }
  return out;
}

HeatBalance heat_balance(const model::SolvedRaise& solved) {
  const boiler::Raise& raise = solved.raise;
  const boiler::RaiseEvent* reached = raise.find(boiler::RaiseEventKind::own_blower);
  if (reached == nullptr && !solved.input.own_blower) reached = raise.find(boiler::RaiseEventKind::working);
  const boiler::RaiseAccount& account = reached != nullptr ? reached->account : raise.account;
  const boiler::RaiseInstant& last = reached != nullptr ? reached->at : raise.series.back();
  const Energy held = account.absorbed - account.outside;
  const Energy water = solved.input.boiler.water * boiler::heat_to(solved.input.water, last.water);
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

ReportData report_data(const description::Build& build, const ReportAsked& asked) {
  return report_data(solved_to_judge(build, asked.units, asked.tuning, asked.samples), asked.tuning, asked.samples);
}

ReportData report_data(const model::Solved& solved, const model::Tuning* tuning, const SamplesAsked& samples) {
  ReportData data{
      .assessment = judged(solved, tuning, samples),
      .units = solved.page,
      .draught = made_from<DraughtCurves>(solved.draught,
                                          [&](const model::SolvedDraught& d) {
                                            DraughtCurves curves = draught_curves(d, solved.fan);
                                            add_curve_bands(curves, solved.build, tuning, samples);
                                            return curves;
                                          }),
      .raise = made_from<RaiseMarks>(solved.raise, [&](const model::SolvedRaise& r) { return marks(solved.build, r); }),
      .heat = made_from<HeatBalance>(solved.raise, heat_balance),
      .supply = made_from<RepeatedLightUps>(
          solved.supply, [&](const model::SolvedSupply& s) { return repeated_light_ups(s, *solved.light_ups); }),
      .fit = solved.fit,
      .unit = solved.unit,
      .build = solved.build};
  return data;
}
}  // namespace lumwright::plan
