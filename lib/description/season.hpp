// season.yaml beside a description: every lighting-up of one engine, one behind the other.
#pragma once
#include "description/log.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::description {
struct Season {
  std::string file{};  // where it was read from
  Text name;
  Given<Duration> probe_lag;
  std::vector<Log> lighting_ups;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"name", "what you call this season", "first season of the fan"}, self.name, nullptr);
    v({"probe_lag", "time by which the thermometer is behind the water, where a lighting-up does not say", "25 s"},
      self.probe_lag, Limits{"0 s", "10 min"});
    v.list({"lighting_ups", "each lighting-up, in the order in which they were written down",
            "[ {day: 2026-05-03, readings: [ {time: 4 min, water: 58 degC} ]} ]"},
           self.lighting_ups);
  }
};
inline constexpr std::size_t most_season_bytes = 1024 * 1024;

/// Reads a season, in the order of its days. Throws InputError that holds every fault: those of each log, days that are
/// missing or no dates, a day that stands there twice, lighting-ups of which nothing is told.
Season read_season(const input::Source& source);
/// The log of a lighting-up that is to go into a season: its day is a date, and it may hold remarks or the charge put
/// back in place of readings. Throws InputError.
Log read_lighting_up(const input::Source& source);
/// The case of one.
Season season_of(const Log& log);

/// The lighting-up of the same day and number; null where there is none.
const Log* same_lighting_up(const Season& season, const Log& log);
/// The text of the season with this lighting-up behind all others; what stood there stays byte for byte. Without a
/// season it is begun. Throws InputError where the season has faults or nothing can be put behind its last lighting-up,
/// std::logic_error for a lighting-up that is in it already.
std::string with_lighting_up(const std::optional<input::Source>& season, const Log& log);
}  // namespace lumwright::description
