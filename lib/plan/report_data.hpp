// All that a report shows of one build: the assessment, and what its pictures are drawn from.
#pragma once
#include "model/solved.hpp"
#include "plan/assess.hpp"
#include "plan/curves.hpp"
#include "power/discharge.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::plan {
/// Levels that matter on the way to steam; the way itself is the assessment's series "raise".
struct RaiseMarks {
  std::optional<GaugePressure> own_blower, working;
  std::optional<Temperature> fan_gas_limit;
  Duration wanted;  // that the owner will wait
  bool wish_written;
};

/// The pack over one charge: light-ups, each begun where the last one ended, with no credit for the rest
/// between them (10 to 30 % for alkaline cells).
struct LightUp {
  Duration from, to;  // of the fan's running time
  power::Sample begins, ends;
};
struct RepeatedLightUps {
  Duration each, last;         // how long the first and the last take
  int whole;                   // that one charge gives
  std::vector<Duration> ends;  // of the whole ones, at most 400
  std::vector<LightUp> first;  // of the whole ones, at most 60
  std::vector<power::Sample> series;  // to the stop
  power::StopReason reason;
  std::optional<Voltage> stop_at, least_input;  // least_input: of the step-up
};
/// Throws ModelError as the discharge does.
RepeatedLightUps repeated_light_ups(const model::SolvedSupply& supply, const model::SolvedLightUps& lived);

/// Where the fuel's heat has gone when the fan comes off; the parts add up to `chemical`.
struct HeatPart {
  std::string_view id;  // water, metal, steam, outside, chimney, unburnt, bed, astray
  Energy energy;
};
struct HeatBalance {
  Duration until;
  bool reached;  // own-blower pressure, or working pressure where only that is known
  Mass fuel;
  Energy chemical;
  std::vector<HeatPart> parts;
};
/// Water and metal share what the boiler holds in proportion to what warms them; steam is what was let out at the boil.
HeatBalance heat_balance(const model::SolvedRaise& raise);

struct ReportData {
  Assessment assessment;
  description::PageUnits units;
  model::Outcome<DraughtCurves> draught;
  model::Outcome<RaiseMarks> raise;
  model::Outcome<HeatBalance> heat;
  model::Outcome<RepeatedLightUps> supply;
  model::Outcome<model::SolvedFit> fit;
  model::Outcome<model::FanUnit> unit{};
  std::optional<description::Build> build{};  // as it was read
  std::string program{};         // name and version of what made the report; empty: it does not say
};

struct ReportAsked {
  UnitSystem units = UnitSystem::as_written;
  const model::Tuning* tuning = nullptr;
  SamplesAsked samples{};
};
/// Solves the build once and gathers everything. Throws as `assess` does; a part that has no answer says why.
ReportData report_data(const description::Build& build, const ReportAsked& asked = {});
/// The same of a build that is solved already, as `judged` wants it.
ReportData report_data(const model::Solved& solved, const model::Tuning* tuning, const SamplesAsked& samples);
}  // namespace lumwright::plan
