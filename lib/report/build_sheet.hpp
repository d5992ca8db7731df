// The build sheet: what to measure, cut, drill, tap and screw, and in which order, with the cautions where they bite.
#pragma once
#include "model/fan_unit.hpp"
#include "model/solved.hpp"
#include "report/no_answer.hpp"
#include "report/page.hpp"
#include <string>

namespace lumwright::report {
/// The description gives no part of the unit to make; what() names the keys.
struct NothingToMake : NoAnswer {
  using NoAnswer::NoAnswer;
};
/// Throws NothingToMake where tube, flange, box and fan are all missing.
std::string build_sheet(const plan::Assessment& assessment, const model::Solved& solved, const TextStyle& style);

/// A hole to drill or to cut, for the list in order of size.
struct Drilling {
  Length diameter;
  int count;
  std::string where;  // "flange, for the screws"
  std::string how;    // "2.40 mm drill", "pilot 3 mm, step drill 4-6-8 mm, file 0.3 mm"
};
/// Thinnest first; those of one size and way together. With drills of a set, "metric" or "inch", where those are as
/// good.
std::vector<Drilling> drillings(const model::FanUnit& unit, std::string_view set = "");
}  // namespace lumwright::report
