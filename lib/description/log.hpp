// The log of one measured lighting-up: what was read, when, and how sure each reading is.
#pragma once
#include "description/build.hpp"
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
}  // namespace lumwright::description::part

namespace lumwright::description {
/// A spread behind a reading is its uncertainty, taken as two standard deviations.
struct Log {
  std::string file{};  // where it was read from
  Text name, day;
  part::Place place;  // on that day; where it is silent, that of the description
  Given<Volume> water;
  Given<Temperature> started_at;
  std::vector<part::Reading> readings;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"name", "what you call this lighting-up", "first of May"}, self.name, nullptr);
    v({"day", "when it was", "3 May, dry, no wind"}, self.day, nullptr);
    v.section({"place", "the air on that day", ""}, self.place);
    v({"water", "water put in, weighed", "428 ml"}, self.water, Limits{"5 ml", "200 l"});
    v({"started_at", "temperature of the water when the fan was started", "14 degC"}, self.started_at,
      Limits{"0.1 degC", "150 degC"});
    v.list({"readings", "what was read, in the order of time", "[ {time: 4 min, water: 58 degC} ]"}, self.readings);
  }
};

/// Reads a log. Throws InputError that holds every fault, as read_build does for descriptions; also for readings out
/// of order, without a time or without a value, fuel that becomes less, a spread of nothing.
Log read_log(const input::Source& source);
/// A log with every key, its meaning and an example behind `#`.
std::string new_log();
}  // namespace lumwright::description
