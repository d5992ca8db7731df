// What one engine has taught, for a club to pool: its class and its factors, no names and no days.
#pragma once
#include "description/given.hpp"
#include "description/words.hpp"
#include "input/source.hpp"
#include <string>

namespace lumwright::description {
// Limits leave room for spreads, which may reach below zero; the reader wants the values themselves above it.
/// A spread is two standard deviations.
struct PriorRecord {
  std::string file{};  // where it was read from
  Text fuel, fan;
  Count fires;
  Given<double> heat, fan_pressure, smokebox_leak;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"fuel", "what was burnt", "lump charcoal"}, self.fuel, &fuel_words);
    v({"fan", "the kind of fan", "axial"}, self.fan, &fan_words);
    v({"fires", "from how many lighting-ups", "11"}, self.fires, 1, 200);
    v({"heat", "heat that reaches the water over what the model says", "0.86 +- 0.05"}, self.heat, Limits{"-10", "20"});
    v({"fan_pressure", "pressure of the fan over its curve", "0.93 +- 0.06"}, self.fan_pressure, Limits{"-10", "20"});
    v({"smokebox_leak", "share of the chimney gas that leaks in at the smokebox", "7 % +- 3 %"}, self.smokebox_leak,
      Limits{"-100 %", "200 %"});
  }
};
/// Throws InputError that holds every fault; also for a record without its class, or in which nothing is told, or a
/// value without a spread.
PriorRecord read_prior_record(const input::Source& source);
/// Reads back to the same values.
std::string write_prior_record(const PriorRecord& record);
}  // namespace lumwright::description
