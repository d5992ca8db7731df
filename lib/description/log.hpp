// The log of one measured lighting-up: what was read, when, and how sure each reading is.
#pragma once
#include "description/build.hpp"
#include "description/day.hpp"
#include "description/given.hpp"
#include "input/source.hpp"
#include <string>
#include <vector>

namespace lumwright::description::part {
/// What was read at one time; any of it, at least one thing.
struct Reading {
  Given<Duration> time;
  Given<Temperature> water;
  Given<GaugePressure> gauge;
  Given<Pressure> smokebox;
  Given<Current> fan_current;
  Given<Voltage> pack_voltage;
  Given<Mass> fuel;
  input::Position at{};
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"time", "since the fan was started", "4 min"}, self.time, Limits{"0 s", "12 h"});
    v({"water", "temperature of the water", "58 degC +- 2 K"}, self.water, Limits{"0 degC", "250 degC"});
    v({"gauge", "what the pressure gauge shows, the air let out", "1.2 bar"}, self.gauge, Limits{"0 bar", "15 bar"});
    v({"smokebox", "depression in the smokebox, by U-tube", "8 mmH2O"}, self.smokebox, Limits{"0 Pa", "5 kPa"});
    v({"fan_current", "current through the fan", "0.16 A"}, self.fan_current, Limits{"1 mA", "20 A"});
    v({"pack_voltage", "voltage of the pack at work, where its leads end", "7.2 V"}, self.pack_voltage,
      Limits{"0.3 V", "80 V"});
    v({"fuel", "fuel burnt so far, weighed", "11 g"}, self.fuel, Limits{"0.1 g", "50 kg"});
  }
};
/// The fire of that day, where it was not as the description has it.
struct LogFuel {
  Text kind, started_on;
  Given<Length> lump, bed;
  Given<Mass> bed_mass;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"kind", "what was burnt", "lump charcoal"}, self.kind, &fuel_words);
    v({"started_on", "what it was lit on", "soaked charcoal"}, self.started_on, &start_words);
    v({"lump", "size of the pieces", "8 mm"}, self.lump, Limits{"0.5 mm", "100 mm"});
    v({"bed", "depth of the fire", "30 mm"}, self.bed, Limits{"2 mm", "500 mm"});
    v({"bed_mass", "fuel put on the grate, weighed", "20 g"}, self.bed_mass, Limits{"0.5 g", "50 kg"});
  }
};
struct LogPack {
  Given<double> charged;
  Given<Charge> put_back;
  Text ran_flat;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"charged", "how full it was at the start", "100 %"}, self.charged, Limits{"1 %", "100 %"});
    v({"put_back", "charge that the charger put back afterwards, as it tells", "640 mAh"}, self.put_back,
      Limits{"1 mAh", "500 Ah"});
    v({"ran_flat", "it was run until it stopped, since it was last full", "no"}, self.ran_flat, &yes_words);
  }
};
/// What was done since the lighting-up before.
struct LogDone {
  Text swept, new_cells, reseated;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"swept", "the tubes were swept", "no"}, self.swept, &yes_words);
    v({"new_cells", "the pack got new cells", "no"}, self.new_cells, &yes_words);
    v({"reseated", "smokebox door and lid of the box were reseated or sealed anew", "no"}, self.reseated, &yes_words);
  }
};
inline bool says_yes(const Text& text) { return text && *text == "yes"; }
}  // namespace lumwright::description::part

namespace lumwright::description {
/// A spread behind a reading is its uncertainty, taken as two standard deviations.
struct Log {
  std::string file{};  // where it was read from
  Text name, day;
  Count number;
  part::Place place;  // on that day; where it is silent, that of the description
  Given<Volume> water;
  Given<Temperature> started_at;
  Given<Duration> probe_lag;
  part::LogFuel fuel;
  part::LogPack pack;
  part::LogDone done;
  std::vector<part::Reading> readings;
  Text remarks;
  input::Position at{};  // in a season
  /// Nothing where the day is told in other words than a date.
  std::optional<std::chrono::sys_days> date() const { return day ? day_of(*day) : std::nullopt; }
  int which() const { return number ? *number : 1; }
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"name", "what you call this lighting-up", "first of May"}, self.name, nullptr);
    v({"day", "when it was; in a season a date, with any words behind it", "2026-05-03, dry, no wind"}, self.day,
      nullptr);
    v({"number", "which lighting-up of that day, where there was more than one", "1"}, self.number, 1, 20);
    v.section({"place", "the air on that day", ""}, self.place);
    v({"water", "water put in, weighed", "428 ml"}, self.water, Limits{"5 ml", "200 l"});
    v({"started_at", "temperature of the water when the fan was started", "14 degC"}, self.started_at,
      Limits{"0.1 degC", "150 degC"});
    v({"probe_lag", "time by which the thermometer is behind the water", "25 s"}, self.probe_lag,
      Limits{"0 s", "10 min"});
    v.section({"fuel", "the fire, where it was another than the description has", ""}, self.fuel);
    v.section({"pack", "the battery on that day", ""}, self.pack);
    v.section({"done", "what was done since the lighting-up before", ""}, self.done);
    v.list({"readings", "what was read, in the order of time", "[ {time: 4 min, water: 58 degC} ]"}, self.readings);
    v({"remarks", "anything worth knowing later", "fire was slow on the left"}, self.remarks, nullptr);
  }
};

/// Reads a log. Throws InputError that holds every fault, as read_build does for descriptions; also for readings out
/// of order, without a time or without a value, fuel that becomes less, a spread of nothing.
Log read_log(const input::Source& source);
/// A log with every key, its meaning and an example behind `#`.
std::string new_log();
}  // namespace lumwright::description
