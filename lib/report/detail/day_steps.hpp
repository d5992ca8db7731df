// The parts of the card of the day.
#pragma once
#include "report/day.hpp"
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright::report {
struct DayOf {
  const plan::Assessment& assessment;
  const model::Solved& solved;
  const TextStyle& style;
};
/// Of a part that was not solved: why there is no answer, or which keys would give one.
template <class T>
std::string why_unknown(const model::Outcome<T>& part) {
  if (!part.impossible.empty()) return "there are none: " + part.impossible;
  return fmt::format("not known; write {}", fmt::join(part.missing, ", "));
}
std::string weather_of(const DayOf& day);
DaySection before_the_match(const DayOf& day);
DaySection by_the_clock(const DayOf& day);  // from the match until the working pressure
DaySection about_the_pack(const DayOf& day);
DaySection about_the_noise(const DayOf& day);
}  // namespace lumwright::report
