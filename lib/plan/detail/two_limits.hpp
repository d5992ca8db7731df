// The one rule by which a number becomes a verdict: two limits, one between pass and watch, one between watch and fail.
#pragma once
#include "plan/assessment.hpp"
#include <optional>

namespace lumwright::plan {
struct TwoLimits {
  Bound bound;
  AnyQuantity pass;                  // a number on it passes
  std::optional<AnyQuantity> watch;  // a number on it is to be watched; nothing: beyond `pass` it never fails
};
/// Gives a finding its value, its verdict, and the limit that decided: for a failure the one between watch and fail,
/// else the one between pass and watch. The limit is shown in the unit of the value, or in `unit`.
inline void judge_by(Finding& finding, const model::Measure& value, const TwoLimits& limits,
                     const std::string& unit = "") {
  const auto within = [&](const AnyQuantity& limit) {
    return limits.bound == Bound::at_most ? value.quantity.si <= limit.si : value.quantity.si >= limit.si;
  };
  finding.verdict = within(limits.pass)                      ? Verdict::pass
                    : !limits.watch || within(*limits.watch) ? Verdict::watch
                                                             : Verdict::fail;
  finding.value = value;
  finding.bound = limits.bound;
  finding.limit_name = finding.verdict == Verdict::fail ? LimitName::not_to_fail : LimitName::to_pass;
  finding.limit =
      model::Measure{finding.verdict == Verdict::fail ? *limits.watch : limits.pass, unit.empty() ? value.unit : unit};
}
/// Another side of the same question: the graver one is shown, the first of equals. Returns whether this one is.
inline bool and_by(Finding& finding, const model::Measure& value, const TwoLimits& limits,
                   const std::string& unit = "") {
  Finding side;
  judge_by(side, value, limits, unit);
  const bool graver = side.verdict == Verdict::fail
                          ? finding.verdict != Verdict::fail
                          : side.verdict == Verdict::watch && finding.verdict == Verdict::pass;
  if (!graver && (finding.value || side.verdict != finding.verdict)) return false;
  finding.verdict = side.verdict;
  finding.value = side.value;
  finding.limit = side.limit;
  finding.bound = side.bound;
  finding.limit_name = side.limit_name;
  return true;
}
}  // namespace lumwright::plan
