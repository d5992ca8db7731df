// What tuning found, as a page to read: the factors before and after, the readings, and the new time to steam.
#pragma once
#include "report/page.hpp"
#include "tune/tune.hpp"
#include <string>

namespace lumwright::report {
/// `kept_in` is the file the values were written to.
std::string tuned_report(const tune::TuneResult& result, const description::Log& log, const std::string& kept_in,
                         const TextStyle& style);
}  // namespace lumwright::report
