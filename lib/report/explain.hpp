// How one check came to its verdict: the formula, every number in it and where each came from.
#pragma once
#include "plan/assessment.hpp"
#include "report/page.hpp"
#include <stdexcept>
#include <string>
#include <string_view>

namespace lumwright::report {
/// The assessment has no check of the id that was asked for. what() names the nearest and lists them all, or says that
/// the check does not apply to this build.
struct UnknownCheck : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// Ends with a line feed. Throws UnknownCheck.
std::string explain_report(const plan::Assessment& assessment, std::string_view id, const TextStyle& style);
}  // namespace lumwright::report
