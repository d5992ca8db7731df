// A season told day by day: what was to be expected of each lighting-up, what it was, and what is due.
#pragma once
#include "tune/tune.hpp"

namespace lumwright::tune {
struct DayStory {
  std::size_t log;  // which of the season, from 0
  std::optional<Span>
      expected{};             // seconds to the pressure: by the lighting-ups before it, in the air and water of the day
  std::optional<Span> was{};  // by what was read on that day
  double heat = 0.0;          // heat that reached the water on that day, over what the model says
  Span heat_of_engine{};      // the same of the engine as it was then, days apart
  std::string left_out{};     // why nothing is told of it, or empty
  bool outside() const { return expected && was && (was->value < expected->low || was->value > expected->high); }
};
/// Something that wears, and can be put right.
struct Due {
  enum class What { sweep, reseat, cells };
  What what;
  bool now;
  std::optional<Span> later{};   // lighting-ups, of cells months; 0 and above; high may be infinite
  std::optional<Span> brings{};  // seconds to the pressure at the next lighting-up once it is done
};
struct SeasonStory {
  TuneResult result;
  GaugePressure gauge;  // to which the minutes are told: where the own blower takes over, else working pressure
  std::vector<DayStory> days;
  std::optional<Span> next{};  // seconds
  std::vector<Due> due{};      // none: nothing that can be seen
};
/// Expected bands hold eight of ten: they know the days before, never the day itself. Throws ModelError as `tune` does,
/// and where the description gives no pressure to tell minutes to.
SeasonStory season_story(const description::Build& build, const description::Season& season,
                         const model::Tuning* usual = nullptr);
}  // namespace lumwright::tune
