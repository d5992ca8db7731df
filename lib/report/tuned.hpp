// What tuning found, as a page to read: the factors before and after, the readings, and the new time to steam.
#pragma once
#include "report/page.hpp"
#include "tune/tune.hpp"
#include <string>

namespace lumwright::report {
/// `kept_in` is the file the values were written to.
std::string tuned_report(const tune::TuneResult& result, const description::Season& season, const std::string& kept_in,
                         const TextStyle& style);
/// "3 May 2026", or the words that a log has for its day.
std::string day_name(const description::Log& log);
/// "4:24", minutes and seconds.
std::string on_a_clock(Duration time);
/// "1.2 %", of a share.
std::string small_percent(double share);
/// What is said of each reading that is not believed: "3 May 2026, 6 min: water 29.0 degC; 82.1 degC would fit".
std::vector<std::string> unbelieved(const tune::TuneFit& fit, const description::Season& season, UnitSystem units);
/// "The pack holds 1640 mAh (1550 to 1740), by 4 full charges; ..."
std::string pack_words(const tune::PackState& pack);
}  // namespace lumwright::report
