// NAME.tuned.yaml: what measured lighting-ups have taught, under the keys that a description has for it.
#pragma once
#include "description/given.hpp"
#include "input/source.hpp"
#include <string>

namespace lumwright::description::part {
// Limits leave room for spreads, which may reach below zero; the reader wants the values themselves above it.
struct TunedModel {
  Given<double> heat, fan_pressure;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"heat", "heat that reaches the water over what the model says", "0.86 +- 0.05"}, self.heat, Limits{"-10", "20"});
    v({"fan_pressure", "pressure of the fan over its curve", "0.93 +- 0.06"}, self.fan_pressure, Limits{"-10", "20"});
  }
};
struct TunedFuel {
  Given<Duration> catches_in;
  Given<double> voidage;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"catches_in", "time until the whole bed burns", "131 s +- 20 s"}, self.catches_in, Limits{"-2 h", "4 h"});
    v({"voidage", "share of the bed that is gaps", "47 % +- 3 %"}, self.voidage, Limits{"-100 %", "200 %"});
  }
};
struct TunedLeakage {
  Given<double> smokebox;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"smokebox", "share of the chimney gas that leaked in at the smokebox", "7 % +- 3 %"}, self.smokebox,
      Limits{"-100 %", "200 %"});
  }
};
struct TunedEngine {
  TunedLeakage leakage;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v.section({"leakage", "air that does not go through the fire", ""}, self.leakage);
  }
};
struct TunedRating {
  Given<Current> current;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"current", "current of the fan at its rated voltage", "0.17 A +- 0.01 A"}, self.current,
      Limits{"-20 A", "40 A"});
  }
};
struct TunedFan {
  TunedRating rated;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v.section({"rated", "what the label says", ""}, self.rated);
  }
};
}  // namespace lumwright::description::part

namespace lumwright::description {
/// The spreads together hold all values with 95 %.
struct TunedFile {
  std::string file{};  // where it was read from
  Text log, day;
  part::TunedModel tuned;
  part::TunedEngine engine;
  part::TunedFuel fuel;
  part::TunedFan fan;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"log", "the log or season it came from", "first-of-may.yaml"}, self.log, nullptr);
    v({"day", "when that was; of a season its last day", "3 May, dry, no wind"}, self.day, nullptr);
    v.section({"tuned", "factors of the model", ""}, self.tuned);
    v.section({"engine", "the engine", ""}, self.engine);
    v.section({"fuel", "the fire", ""}, self.fuel);
    v.section({"fan", "the fan", ""}, self.fan);
  }
};
/// Throws InputError that holds every fault, as read_build does; also for a file that tunes nothing.
TunedFile read_tuned(const input::Source& source);
/// Both read back to the same values; they differ in what they say of themselves at the head.
std::string write_tuned(const TunedFile& tuned);
std::string write_pooled(const TunedFile& usual);
}  // namespace lumwright::description
