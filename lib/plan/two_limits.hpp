// The one rule by which a number becomes a verdict: two limits, one between pass and watch, one between watch and fail.
#pragma once
#include "plan/assessment.hpp"
#include <optional>

namespace lumwright {
struct TwoLimits {
  Bound bound;
  AnyQuantity pass;                  // a number on it passes
  std::optional<AnyQuantity> watch;  // a number on it is to be watched; nothing: beyond `pass` it never fails
};
/// Gives a finding its value, its verdict, and the limit that decided: for a failure the one between watch and fail, else
/// the one between pass and watch. The limit is shown in the unit of the value, or in `unit`.
inline void judge_by(Finding& finding, const Measure& value, const TwoLimits& limits, const std::string& unit = "") {
  const auto within = [&](const AnyQuantity& limit) {
    return limits.bound == Bound::at_most ? value.quantity.si <= limit.si : value.quantity.si >= limit.si;
  };
  finding.verdict = within(limits.pass)                       ? Verdict::pass
                    : !limits.watch || within(*limits.watch) ? Verdict::watch
                                                             : Verdict::fail;
  finding.value = value;
  finding.bound = limits.bound;
  finding.limit = Measure{finding.verdict == Verdict::fail ? *limits.watch : limits.pass,
                          unit.empty() ? value.unit : unit};
}
}  // namespace lumwright
